#include "app/bench/ledger_course.h"

#include "app/common/wording.h"

namespace cw {

LedgerCourse::LedgerCourse(Workspace& workspace, Id job, Worker worker, QObject* parent)
    : Course(std::move(job), std::move(worker), parent), m_workspace(workspace) {}

const Job* LedgerCourse::job() {
  const auto job = m_workspace.shop().ledger().refresh(id());
  if (job) return *job;
  emit refused(worded(job.error()));
  return nullptr;
}

ShopFloor LedgerCourse::floor() {
  const auto floor = m_workspace.shop().ledger().floor();
  if (floor) return *floor;
  emit refused(worded(floor.error()));
  return {};
}

bool LedgerCourse::isOverruled(const Sheet& sheet) {
  const auto revision = m_workspace.shop().sheets().find(sheet.id, sheet.revision);
  return revision && revision->status != SheetStatus::Issued;
}

bool LedgerCourse::isSignedIn() {
  return m_workspace.shop().ledger().isSignedIn(id(), worker().sign);
}

bool LedgerCourse::state(Body body) {
  return settled(m_workspace.enter(id(), toQt(worker().sign), std::move(body), toQt(worker().supervisor))
                     .map([](const Receipt&) {}));
}

bool LedgerCourse::stateAs(const QString& sign, const QString& pin, Body body) {
  if (!m_workspace.shop().ledger().isSignedIn(id(), fromQt(sign))) {
    const auto signedIn = m_workspace.signIn(id(), sign, pin);
    if (!signedIn) return settled(fail(signedIn.error()));
  }
  return settled(m_workspace.enter(id(), sign, std::move(body)).map([](const Receipt&) {}));
}

bool LedgerCourse::stateAllowed(const QString& lead, const QString& pin, Body body) {
  const auto vouched = m_workspace.vouch(id(), lead, pin);
  return vouched ? state(std::move(body)) : settled(vouched);
}

bool LedgerCourse::resume(const QString& pin, Resumed resumed) {
  const auto signedIn = m_workspace.signIn(id(), toQt(worker().sign), pin, toQt(worker().supervisor));
  return signedIn ? state(resumed) : settled(fail(signedIn.error()));
}

}  // namespace cw
