#pragma once
#include <QStackedWidget>

#include "app/common/navigator.h"
#include "app/common/workspace.h"

namespace cw {

class FinishedPanel;
class JobList;
class RunPanel;
class SignPanel;
class StartPanel;

/// The bench: the list of jobs, the start of one, the run, and the finished job.
class BenchPlace final : public QStackedWidget {
  Q_OBJECT
 public:
  BenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

  RunPanel* run() const { return m_run; }
  StartPanel* start() const { return m_start; }

 private:
  void showList();
  void askWho(const Id& job);
  void runJob(const Id& job, const QString& sign);
  void showFinished(const Id& job);

  Workspace& m_workspace;
  JobList* m_list;
  StartPanel* m_start;
  SignPanel* m_sign;
  RunPanel* m_run;
  FinishedPanel* m_finished;
};

QWidget* makeBenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
