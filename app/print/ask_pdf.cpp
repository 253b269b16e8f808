#include "app/print/ask_pdf.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QLocale>

#include "app/common/wording.h"

namespace cw {

std::optional<PdfTarget> askPdf(QWidget* parent, const QString& what, const QString& proposedName) {
  const QString a4 = QCoreApplication::translate("print", "PDF on A4 (*.pdf)");
  const QString letter = QCoreApplication::translate("print", "PDF on Letter (*.pdf)");
  const bool inInches = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
  QString chosen = inInches ? letter : a4;
  const QString kinds = inInches ? letter + QLatin1String(";;") + a4 : a4 + QLatin1String(";;") + letter;
  const QString path =
      QFileDialog::getSaveFileName(parent, what, proposedName + QLatin1String(".pdf"), kinds, &chosen);
  if (path.isEmpty()) return std::nullopt;
  return PdfTarget{fromQt(path), chosen == letter ? PageSize::Letter : PageSize::A4};
}

}  // namespace cw
