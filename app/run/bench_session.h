#pragma once
#include <QObject>

#include "app/common/workspace.h"
#include "core/record/draft.h"
#include "core/record/tool_offer.h"

namespace cw {

/// One job at the bench and the person who works on it. Everything that is stated goes through here; what was
/// refused is said in one sentence, and nothing changes.
class BenchSession final : public QObject {
  Q_OBJECT

 public:
  BenchSession(Workspace& workspace, Id job, Worker worker, QObject* parent = nullptr);

  const Id& id() const { return m_id; }
  const Worker& worker() const { return m_worker; }
  Workspace& workspace() { return m_workspace; }

  /// The job as it stands in the file now; nullptr, and `refused`, if it cannot be read.
  const Job* job();
  ShopFloor floor();
  Moment now() { return m_workspace.clock().now(); }

  /// May this person enter now, without giving the PIN again? Not after a while without an entry.
  bool isSignedIn();

  /// Enters what this person states. True once it is durable.
  bool state(Body body);
  /// The same for a second person who gives name and PIN on the spot.
  bool stateAs(const QString& sign, const QString& pin, Body body);
  /// The same with the word of a shop lead, who gives name and PIN on the spot.
  bool stateAllowed(const QString& lead, const QString& pin, Body body);
  /// Signs in afresh and goes on.
  bool resume(const QString& pin, Resumed resumed);
  bool seal();

 signals:
  void changed();  ///< an entry more: look again
  void refused(const QString& sentence);
  void told(const QString& sentence);  ///< of something that was done beside the job

 private:
  bool settled(const Result<void>& answer);

  Workspace& m_workspace;
  Id m_id;
  Worker m_worker;
};

}  // namespace cw
