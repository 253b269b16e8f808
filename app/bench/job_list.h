#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QLabel;
class QListWidget;
class QPushButton;

namespace cw {

/// The bench with nothing on it: jobs in progress first, and how to begin one.
class JobList final : public QWidget {
  Q_OBJECT
 public:
  explicit JobList(Workspace& workspace, QWidget* parent = nullptr);
  void refresh();
  void say(const QString& sentence);  ///< until the list is read again

 signals:
  void jobChosen(const cw::Id& job);
  void startWanted();
  void quickWanted();

 private:
  void choose();
  Workspace& m_workspace;
  QLabel *m_empty, *m_said;
  QListWidget* m_list;
  QPushButton *m_open, *m_start, *m_quick;
  std::vector<Id> m_jobs;
};

}  // namespace cw
