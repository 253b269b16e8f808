#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cw {

/// Who goes on with a job that was left open or paused.
class SignPanel final : public QWidget {
  Q_OBJECT
 public:
  explicit SignPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present(const Id& job);

 signals:
  void signedIn(const cw::Id& job, const QString& sign);
  void left();

 private:
  void goOn();
  Workspace& m_workspace;
  Id m_job;
  bool m_paused = false;
  QLabel *m_title, *m_pinName, *m_said;
  QComboBox* m_person;
  QLineEdit* m_pin;
};

}  // namespace cw
