#pragma once
#include <QObject>

#include "core/record/draft.h"
#include "core/record/tool_offer.h"

namespace cw {

/// How a shop lead gave their word: with the PIN on the spot, or by phone.
struct GivenWord {
  QString sign, pin;
  bool byPhone = false;
};

/// One run of a job and the person who works on it: all that the panels of the run know of where it is kept.
/// Everything that is stated goes through here; what was refused is said in one sentence, and nothing
/// changes.
class Course : public QObject {
  Q_OBJECT

 public:
  Course(Id job, Worker worker, QObject* parent = nullptr);

  const Id& id() const { return m_id; }
  const Worker& worker() const { return m_worker; }

  /// The job as it stands now; nullptr, and `refused`, if it cannot be read.
  virtual const Job* job() = 0;
  virtual ShopFloor floor() = 0;
  virtual Moment now() = 0;
  /// Was this revision of the sheet superseded or withdrawn since the job began?
  virtual bool isOverruled(const Sheet& sheet) = 0;
  /// May this person enter now, without giving the PIN again? Not after a while without an entry.
  virtual bool isSignedIn() = 0;

  /// Enters what this person states. True once it is durable.
  virtual bool state(Body body) = 0;
  /// The same for a second person who gives name and PIN on the spot.
  virtual bool stateAs(const QString& sign, const QString& pin, Body body) = 0;
  /// The same with the word of a shop lead, whom the body names; of nobody's, where no lead is named.
  virtual bool stateAllowed(const GivenWord& word, Body body) = 0;
  /// Signs in afresh and goes on; with the PIN of whoever supervises this person, if somebody does.
  virtual bool resume(const QString& pin, const QString& supervisorPin, Resumed resumed) = 0;

 signals:
  void changed();  ///< an entry more: look again
  void refused(const QString& sentence);
  void told(const QString& sentence);  ///< of something that was done beside the job

 protected:
  /// Says how it went with what was stated; true if it was taken.
  bool settled(const Result<void>& answer);

 private:
  Id m_id;
  Worker m_worker;
};

}  // namespace cw
