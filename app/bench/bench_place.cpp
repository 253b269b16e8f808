#include "app/bench/bench_place.h"

#include "app/bench/finished_panel.h"
#include "app/bench/in_hand.h"
#include "app/bench/job_list.h"
#include "app/bench/run_panel.h"
#include "app/bench/sign_panel.h"
#include "app/bench/start_panel.h"

namespace cw {

BenchPlace::BenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent)
    : QStackedWidget(parent),
      m_workspace(workspace),
      m_list(new JobList(workspace)),
      m_start(new StartPanel(workspace)),
      m_sign(new SignPanel(workspace)),
      m_run(new RunPanel),
      m_finished(new FinishedPanel(workspace)) {
  for (QWidget* page : std::initializer_list<QWidget*>{m_list, m_start, m_sign, m_run, m_finished})
    addWidget(page);
  connect(m_list, &JobList::jobChosen, this, &BenchPlace::askWho);
  connect(m_list, &JobList::startWanted, this, [this] {
    m_start->present();
    setCurrentWidget(m_start);
  });
  connect(m_start, &StartPanel::started, this, &BenchPlace::runJob);
  connect(m_start, &StartPanel::left, this, &BenchPlace::showList);
  connect(m_sign, &SignPanel::signedIn, this, &BenchPlace::runJob);
  connect(m_sign, &SignPanel::left, this, &BenchPlace::showList);
  connect(m_run, &RunPanel::jobLeft, this, &BenchPlace::showList);
  connect(m_run, &RunPanel::jobFinished, this, &BenchPlace::showFinished);
  connect(m_finished, &FinishedPanel::left, this, &BenchPlace::showList);
  connect(m_finished, &FinishedPanel::recordWanted, this, [this, &navigator](const Id& job) {
    showList();
    navigator.openRecord(job);
  });
  connect(&navigator, &Navigator::jobWanted, this, &BenchPlace::askWho);
  connect(&workspace, &Workspace::shopChanged, this, &BenchPlace::showList);
  showList();
}

void BenchPlace::showList() {
  m_list->refresh();
  setCurrentWidget(m_list);
  setFocusProxy(m_list);
  m_list->setFocus();
}

void BenchPlace::askWho(const Id& job) {
  const auto found = m_workspace.shop().ledger().refresh(job);
  if (found && (*found)->finished) return showFinished(job);
  m_sign->present(job);
  setCurrentWidget(m_sign);
}

void BenchPlace::runJob(const Id& job, const QString& sign) {
  setCurrentWidget(m_run);
  m_run->open(m_workspace, job, sign);
}

void BenchPlace::showFinished(const Id& job) {
  m_finished->present(job);
  setCurrentWidget(m_finished);
}

QWidget* makeBenchPlace(Workspace& workspace, Navigator& navigator, QWidget* parent) {
  auto* place = new BenchPlace(workspace, navigator, parent);
  offerInHand(*place, navigator);
  return place;
}

}  // namespace cw
