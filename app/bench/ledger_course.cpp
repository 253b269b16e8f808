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
  const auto signedIn = m_workspace.shop().ledger().isSignedIn(id(), worker().sign);
  if (!signedIn) emit refused(worded(signedIn.error()));
  return signedIn.value_or(false);
}

Draft LedgerCourse::drafted(Body body) const {
  Draft out;
  out.enteredBy = worker().sign;
  out.supervisor = worker().supervisor;
  out.body = std::move(body);
  return out;
}

bool LedgerCourse::enter(const Draft& draft, const Pins& pins) {
  return settled(m_workspace.enter(id(), draft, pins).map([](const Receipt&) {}));
}

bool LedgerCourse::state(Body body) {
  return enter(drafted(std::move(body)));
}

bool LedgerCourse::stateAs(const QString& sign, const QString& pin, Body body) {
  Draft draft;
  draft.enteredBy = fromQt(sign);
  draft.body = std::move(body);
  return enter(draft, {{draft.enteredBy, fromQt(pin)}});
}

bool LedgerCourse::stateAllowed(const GivenWord& word, Body body) {
  Draft draft = drafted(std::move(body));
  if (word.sign.isEmpty()) return enter(draft);
  draft.byPhone = word.byPhone;
  if (word.byPhone) return enter(draft);
  // The author's own word as a lead needs no PIN beside the sign-in.
  const bool isAuthor = fromQt(word.sign) == worker().sign && word.pin.isEmpty();
  return isAuthor ? enter(draft) : enter(draft, {{fromQt(word.sign), fromQt(word.pin)}});
}

bool LedgerCourse::resume(const QString& pin, const QString& supervisorPin, Resumed resumed) {
  Pins pins{{worker().sign, fromQt(pin)}};
  if (!worker().supervisor.empty()) pins[worker().supervisor] = fromQt(supervisorPin);
  const auto signedIn = m_workspace.enter(id(), drafted(SignedIn{}), pins);
  return signedIn ? state(resumed) : settled(fail(signedIn.error()));
}

}  // namespace cw
