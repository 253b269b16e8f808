#include "app/run/bench_session.h"

#include "app/common/wording.h"

namespace cw {

BenchSession::BenchSession(Workspace& workspace, Id job, Worker worker, QObject* parent)
    : QObject(parent), m_workspace(workspace), m_id(std::move(job)), m_worker(std::move(worker)) {}

const Job* BenchSession::job() {
  const auto job = m_workspace.shop().ledger().refresh(m_id);
  if (job) return *job;
  emit refused(worded(job.error()));
  return nullptr;
}

ShopFloor BenchSession::floor() {
  const auto floor = m_workspace.shop().ledger().floor();
  if (floor) return *floor;
  emit refused(worded(floor.error()));
  return {};
}

bool BenchSession::settled(const Result<void>& answer) {
  if (answer) {
    emit changed();
    return true;
  }
  // Somebody else was first: what they entered is shown, and then said.
  if (answer.error().code == ErrorCode::Conflict) emit changed();
  emit refused(worded(answer.error()));
  return false;
}

bool BenchSession::isSignedIn() {
  return m_workspace.shop().ledger().isSignedIn(m_id, m_worker.sign);
}

bool BenchSession::state(Body body) {
  return settled(m_workspace.enter(m_id, toQt(m_worker.sign), std::move(body), toQt(m_worker.supervisor))
                     .map([](const Receipt&) {}));
}

bool BenchSession::stateAs(const QString& sign, const QString& pin, Body body) {
  if (!m_workspace.shop().ledger().isSignedIn(m_id, fromQt(sign))) {
    const auto signedIn = m_workspace.signIn(m_id, sign, pin);
    if (!signedIn) return settled(fail(signedIn.error()));
  }
  return settled(m_workspace.enter(m_id, sign, std::move(body)).map([](const Receipt&) {}));
}

bool BenchSession::stateAllowed(const QString& lead, const QString& pin, Body body) {
  const auto vouched = m_workspace.vouch(m_id, lead, pin);
  return vouched ? state(std::move(body)) : settled(vouched);
}

bool BenchSession::resume(const QString& pin, Resumed resumed) {
  const auto signedIn = m_workspace.signIn(m_id, toQt(m_worker.sign), pin, toQt(m_worker.supervisor));
  return signedIn ? state(resumed) : settled(fail(signedIn.error()));
}

bool BenchSession::seal() {
  return settled(m_workspace.seal(m_id));
}

}  // namespace cw
