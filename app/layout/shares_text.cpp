#include "app/layout/shares_text.h"

#include "app/common/wording.h"
#include "core/units/decimal.h"
#include "core/units/format.h"

namespace cw {

QString sharesText(const std::vector<double>& shares) {
  QStringList out;
  for (const double share : shares) out << toQt(significant(share * 100, 4));
  return out.join(QLatin1Char(' '));
}

Result<std::vector<double>> sharesIn(const std::string& text, DecimalMark mark) {
  std::vector<double> out;
  for (const QString& word : toQt(text).simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
    CW_TRY(digits, parseNumber(fromQt(QString(word).remove(QLatin1Char('%'))), mark));
    out.push_back(numberOf(digits) / 100);
  }
  return out;
}

}  // namespace cw
