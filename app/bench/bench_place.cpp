#include "app/bench/bench_place.h"

#include <QEvent>

#include "app/bench/finished_panel.h"
#include "app/bench/in_hand.h"
#include "app/bench/job_list.h"
#include "app/bench/ledger_course.h"
#include "app/bench/quick_panel.h"
#include "app/bench/sign_panel.h"
#include "app/bench/start_panel.h"
#include "app/bench/trial_panel.h"
#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/look/measures.h"
#include "app/run/run_panel.h"

namespace cw {

BenchPlace::BenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent)
    : QStackedWidget(parent), m_workspace(workspace), m_navigator(navigator), m_list(new JobList(workspace)) {
  // What is not shown takes no keys.
  connect(this, &QStackedWidget::currentChanged, this, [this] { passFocusOn(*this, *currentWidget()); });
  addWidget(m_list);
  connect(m_list, &JobList::jobChosen, this, &BenchPlace::askWho);
  connect(m_list, &JobList::startWanted, this, [this] {
    start()->present();
    setCurrentWidget(m_start);
  });
  connect(m_list, &JobList::quickWanted, this, [this] {
    quick()->present();
    setCurrentWidget(m_quick);
  });
  connect(&navigator, &Navigator::jobWanted, this, &BenchPlace::askWho);
  connect(&workspace, &Workspace::shopChanged, this, &BenchPlace::showList);
  showList();
}

StartPanel* BenchPlace::start() {
  if (m_start != nullptr) return m_start;
  m_start = new StartPanel(m_workspace);
  addWidget(m_start);
  connect(m_start, &StartPanel::started, this, &BenchPlace::runJob);
  connect(m_start, &StartPanel::left, this, &BenchPlace::showList);
  return m_start;
}

QuickPanel* BenchPlace::quick() {
  if (m_quick != nullptr) return m_quick;
  m_quick = new QuickPanel(m_workspace);
  addWidget(m_quick);
  connect(m_quick, &QuickPanel::started, this, &BenchPlace::runJob);
  connect(m_quick, &QuickPanel::left, this, &BenchPlace::showList);
  return m_quick;
}

SignPanel* BenchPlace::signPanel() {
  if (m_sign != nullptr) return m_sign;
  m_sign = new SignPanel(m_workspace);
  addWidget(m_sign);
  connect(m_sign, &SignPanel::signedIn, this, &BenchPlace::runJob);
  connect(m_sign, &SignPanel::left, this, &BenchPlace::showList);
  return m_sign;
}

RunPanel* BenchPlace::run() {
  if (m_run != nullptr) return m_run;
  m_run = new RunPanel;
  addWidget(m_run);
  connect(m_run, &RunPanel::signInWanted, this, &BenchPlace::askWho);
  connect(m_run, &RunPanel::jobLeft, this, &BenchPlace::showList);
  connect(m_run, &RunPanel::jobFinished, this, &BenchPlace::showFinished);
  connect(m_run, &RunPanel::jobCalledOff, this, &BenchPlace::showCalledOff);
  return m_run;
}

FinishedPanel* BenchPlace::finished() {
  if (m_finished != nullptr) return m_finished;
  m_finished = new FinishedPanel(m_workspace);
  addWidget(m_finished);
  connect(m_finished, &FinishedPanel::left, this, &BenchPlace::showList);
  connect(m_finished, &FinishedPanel::recordWanted, this, [this](const Id& job) {
    showList();
    m_navigator.openRecord(job);
  });
  return m_finished;
}

void BenchPlace::resizeEvent(QResizeEvent* event) {
  QStackedWidget::resizeEvent(event);
  fitText();
}

void BenchPlace::changeEvent(QEvent* event) {
  QStackedWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitText();
}

/// Larger text where the user wants it and the window has room.
void BenchPlace::fitText() {
  setBenchScale(*this, benchScaleIn(*window()));
}

void BenchPlace::showList() {
  m_list->refresh();
  setCurrentWidget(m_list);
  m_list->setFocus();
}

void BenchPlace::askWho(const Id& job) {
  const auto found = m_workspace.shop().ledger().refresh(job);
  if (found && (*found)->finished) return showFinished(job);
  if (found && (*found)->calledOff) return showCalledOff(job);
  if (found && (*found)->isTrial()) return showTrial(job);
  signPanel()->present(job);
  setCurrentWidget(m_sign);
}

void BenchPlace::runJob(const Id& job, const Worker& worker) {
  setCurrentWidget(run());
  m_run->open(std::make_unique<LedgerCourse>(m_workspace, job, worker));
}

void BenchPlace::showFinished(const Id& job) {
  finished()->present(job);
  setCurrentWidget(m_finished);
}

void BenchPlace::showTrial(const Id& job) {
  if (m_trial == nullptr) {
    m_trial = new TrialPanel(m_workspace);
    addWidget(m_trial);
    connect(m_trial, &TrialPanel::left, this, &BenchPlace::showList);
    connect(m_trial, &TrialPanel::calledOff, this, &BenchPlace::showCalledOff);
  }
  m_trial->present(job);
  setCurrentWidget(m_trial);
}

void BenchPlace::showCalledOff(const Id& job) {
  showList();
  if (const auto found = m_workspace.shop().ledger().job(job); found)
    m_list->say(tr("%1, %2, is called off; it stands in Records.")
                    .arg(toQt((*found)->start.workOrder), toQt((*found)->start.machine)));
}

QWidget* makeBenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent) {
  auto* place = new BenchPlace(workspace, navigator, parent);
  offerInHand(*place, navigator);
  return place;
}

}  // namespace cw
