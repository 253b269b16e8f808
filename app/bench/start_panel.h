#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cw {

/// Work order, machine, reason, sheet, and who does it.
class StartPanel final : public QWidget {
  Q_OBJECT
 public:
  explicit StartPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present();  ///< empties the form and reads sheets, machines and people anew

 signals:
  void started(const cw::Id& job, const QString& sign);
  void left();

 private:
  QComboBox* addChoice(const QString& label, const QString& objectName);
  QLineEdit* addField(const QString& label, const QString& objectName);
  void place(QWidget* name, QWidget* field);
  void start();
  void refresh();

  Workspace& m_workspace;
  QComboBox *m_sheet, *m_machine, *m_reason, *m_person, *m_supervisor;
  QLineEdit *m_workOrder, *m_parent, *m_hours, *m_pin;
  QGridLayout* m_grid;
  QLabel* m_said;
  QPushButton* m_start;
  std::vector<SheetRow> m_sheets;
};

}  // namespace cw
