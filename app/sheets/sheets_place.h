#pragma once
#include <QWidget>
#include <optional>

#include "app/common/navigator.h"
#include "app/common/row_model.h"
#include "app/common/workspace.h"
#include "app/print/ask_pdf.h"
#include "app/sheets/kept_sheet.h"

class QComboBox;
class QPushButton;

namespace cw {

class DeskPage;

/// Sheets: every revision with its standing; on the right the sheet to read, its review, and its way from
/// draft to issue.
class SheetsPlace final : public QWidget {
  Q_OBJECT

 public:
  SheetsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent = nullptr);

  DeskPage* page() const { return m_page; }
  /// Asks for name and PIN to take the file in as a draft.
  void importFrom(const QString& path);
  /// The shown revision on paper, with room to write; says in the page what came of it.
  void savePdf(const PdfTarget& target);

 private:
  void makeActions(Navigator& navigator);
  void makeImport();
  void reload();
  void list(std::vector<SheetRow> rows);
  QString whenEmpty() const;
  void show(int row);
  void offerActions();
  void fillJoints();
  void openFigures(Navigator& navigator);
  void askMove(const QString& states, const QString& button, SheetMove way);
  void askIssue();

  Workspace& m_workspace;
  RowModel<SheetRow> m_model;
  DeskPage* m_page;
  QComboBox* m_joint;
  QPushButton *m_figures, *m_submit, *m_issue, *m_sendBack, *m_withdraw, *m_import;
  std::optional<KeptSheet> m_shown;
};

QWidget* makeSheetsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
