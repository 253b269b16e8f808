#pragma once
#include <QWidget>

#include "app/common/navigator.h"
#include "app/common/row_model.h"
#include "app/common/workspace.h"

class QPushButton;

namespace cw {

class DeskPage;
struct SignQuestion;

/// Tool crib: every torque tool with what it may be used for today; on the right its calibrations and what
/// happened to it.
class CribPlace final : public QWidget {
  Q_OBJECT

 public:
  explicit CribPlace(Workspace& workspace, QWidget* parent = nullptr);

  DeskPage* page() const { return m_page; }
  /// Asks for name and PIN of a lead to add what the register file holds.
  void importFrom(const QString& path);

 private:
  void makeActions();
  void makeImport();
  void reload();
  void list(std::vector<TorqueTool> tools);
  QString whenEmpty() const;
  void show(int row);
  void showTool(const TorqueTool& tool);
  void ask(const SignQuestion& question, ToolDeed deed);
  QString tool() const;  ///< id of the chosen one
  std::chrono::year_month_day today() const;

  Workspace& m_workspace;
  RowModel<TorqueTool> m_model;
  DeskPage* m_page;
  QPushButton *m_drop, *m_quarantine, *m_release, *m_import;
};

QWidget* makeCribPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
