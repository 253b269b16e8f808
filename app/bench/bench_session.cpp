#include "app/bench/bench_session.h"

#include "app/common/wording.h"

namespace cw {

BenchSession::BenchSession(Workspace& workspace, Id job, QString sign, QObject* parent)
    : QObject(parent), m_workspace(workspace), m_id(std::move(job)), m_sign(std::move(sign)) {}

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
  emit refused(worded(answer.error()));
  // Somebody else was first: show what they entered before anything is said again.
  if (answer.error().code == ErrorCode::Conflict) emit changed();
  return false;
}

bool BenchSession::state(Body body) {
  return settled(m_workspace.enter(m_id, m_sign, std::move(body)).map([](const Receipt&) {}));
}

bool BenchSession::stateAs(const QString& sign, const QString& pin, Body body) {
  if (!m_workspace.shop().ledger().isSignedIn(m_id, fromQt(sign))) {
    const auto signedIn = m_workspace.signIn(m_id, sign, pin);
    if (!signedIn) return settled(fail(signedIn.error()));
  }
  return settled(m_workspace.enter(m_id, sign, std::move(body)).map([](const Receipt&) {}));
}

bool BenchSession::resume(const QString& pin, Resumed resumed) {
  const auto signedIn = m_workspace.signIn(m_id, m_sign, pin);
  return signedIn ? state(resumed) : settled(fail(signedIn.error()));
}

bool BenchSession::seal() {
  return settled(m_workspace.seal(m_id));
}

}  // namespace cw
