#pragma once
#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/clock.h"
#include "core/record/draft.h"
#include "core/record/job.h"
#include "core/store/pin_gate.h"
#include "core/store/sessions.h"

namespace cw {

class Connection;
class Database;
class Machines;
class People;
class Sheets;
class ShopLibrary;
class Tools;

/// That an entry is on the disk.
struct Receipt {
  int sequence = 0;
  std::string hash;
  bool already = false;  ///< it was there before: a replay, nothing was doubled
};

/// How a job begins.
struct Beginning {
  Id job;                   ///< the caller's new id
  Id entry;                 ///< id of its first entry, so that a replay starts nothing twice
  std::string sheetDigest;  ///< of an issued revision
  std::string by, pin;
  std::string supervisor{};
  /// `alone`, model and serial as the register has them, and for a quick joint what the guard says are filled
  /// in.
  JobStarted start;
  std::optional<std::string> quickSheet{};  ///< bytes of a quick joint's sheet, in place of the digest
  Pins others{};                            ///< of a supervisor, or of a lead whose word it rests on
  bool byPhone = false;                     ///< that lead gave it by phone
};

/// The append-only books of all jobs. Each job is folded once and kept, so that an entry costs the same
/// however many came before; the file is asked at each append whether that fold is still the newest.
class Ledger {
 public:
  struct Needs {
    Database& database;
    People& people;
    Tools& tools;
    Machines& machines;
    Sheets& sheets;
    ShopLibrary& library;
    Clock& clock;
    Id shop;
    std::chrono::milliseconds idle;  ///< after so long without an entry a person signs in anew
  };
  explicit Ledger(Needs needs);

  /// Starts a job and signs its author in. NotPermitted if the revision is not issued, or if a quick joint's
  /// sheet is one of the shop's revisions or breaks the rules of judgeQuickSheet; AlreadyDone if the job id
  /// is taken; else as `append`.
  Result<Receipt> start(const Beginning& beginning);

  /// Name and PIN: appends a SignedIn entry, after which `sign` may enter for this job in this process.
  /// WrongPin, or NotPermitted while locked out; each attempt is logged.
  Result<Receipt> signIn(const Id& job, const std::string& sign, std::string_view pin, const Id& entry);

  /// Appends one entry. When it answers, the entry is on the disk and was read back from there (by another
  /// connection; unread only where another program has locked the file since). The id decides whether it is a
  /// replay. With `pins`, each name and PIN is checked first. Errors, all without effect:
  /// those of `judge`; NotPermitted if its author has not signed in, or was idle too long (never in the
  /// middle of a pass); Conflict naming who was first if another program appended in between (`job` then
  /// shows it); Locked, DiskFull, ReadOnly, Corrupt, Storage. A clock that ran back is entered first, in the
  /// same transaction; so is, in one of its own, that a wrench in use was dropped or put in quarantine.
  Result<Receipt> append(const Id& job, const Draft& draft, const Pins& pins = {});

  /// The job as of its last append or load. Valid until the next call that names it. NotFound, or Corrupt
  /// naming the first bad entry.
  Result<const Job*> job(const Id& job);
  /// The same after taking in what other programs appended meanwhile.
  Result<const Job*> refresh(const Id& job);

  /// May this person enter for this job without giving the PIN again?
  /// The errors of `job`.
  Result<bool> isSignedIn(const Id& job, const std::string& sign);
  /// Everybody and every tool, to judge a draft with before it is entered.
  Result<ShopFloor> floor();

 private:
  Result<Job*> held(const Id& job);
  Result<std::optional<Receipt>> already(const Id& job, const Id& entry, std::string_view kind);
  Result<void> checkCurrent(Job& job);
  Result<void> checkPins(const Pins& pins, const Id& job, const Moment& now);
  Result<void> checkSignedIn(const Job& job, const Draft& draft, const Present& present) const;
  void renewSessions(const Job& job, const Pins& pins, const Moment& now);
  Present presentFor(const Job& job, const Pins& pins, const Moment& now) const;
  Result<void> noteStoppedTools(Job& job, const Draft& draft, const Present& present, const Moment& now);
  Result<std::vector<Judged>> judged(const Job& job, const Draft& draft, const Present& present,
                                     const Moment& now);
  Result<void> insertJob(const Job& job, const JobStarted& start, const Moment& now);
  Result<void> checkIssued(const Job& job, const JobStarted& start);
  Result<void> keepQuickSheet(const Job& job);
  Result<Draft> firstDraft(const Beginning& beginning);
  Result<void> insert(const Job& job, const std::vector<Judged>& entries);
  Result<Receipt> reread(Job& job, std::vector<Judged> entries);

  Needs m_needs;
  PinGate m_gate;
  Sessions m_sessions;
  std::map<Id, Job> m_jobs;
};

}  // namespace cw
