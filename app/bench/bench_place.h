#pragma once
#include <QStackedWidget>

#include "app/common/navigator.h"
#include "app/common/workspace.h"

namespace cw {

class FinishedPanel;
class JobList;
class QuickPanel;
class RunPanel;
class SignPanel;
class StartPanel;
class TrialPanel;
struct Worker;

/// The bench: the list of jobs, the start of one, a quick joint, the run, and the finished job. Each page but
/// the list is made when it is first wanted, so that the window opens quickly.
class BenchPlace final : public QStackedWidget {
  Q_OBJECT
 public:
  BenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

  RunPanel* run();
  StartPanel* start();
  QuickPanel* quick();

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fitText();
  SignPanel* signPanel();
  FinishedPanel* finished();
  void showList();
  void askWho(const Id& job);
  void runJob(const Id& job, const Worker& worker);
  void showFinished(const Id& job);
  void showTrial(const Id& job);
  void showCalledOff(const Id& job);

  Workspace& m_workspace;
  Navigator& m_navigator;
  JobList* m_list;
  StartPanel* m_start = nullptr;
  QuickPanel* m_quick = nullptr;
  SignPanel* m_sign = nullptr;
  RunPanel* m_run = nullptr;
  FinishedPanel* m_finished = nullptr;
  TrialPanel* m_trial = nullptr;
};

QWidget* makeBenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
