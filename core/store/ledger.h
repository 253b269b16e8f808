#pragma once
#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/clock.h"
#include "core/record/draft.h"
#include "core/record/job.h"
#include "core/record/rules.h"
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
  /// Digest, `alone`, what the register knows of the machine, and for a quick joint what the guard says are
  /// filled in.
  JobStarted start;
  std::optional<std::string> quickSheet{};  ///< bytes of a quick joint's sheet, in place of the digest
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

  /// Appends one entry. When it answers, the entry is on the disk and was read back from there. The id
  /// decides whether it is a replay. With `pin`, name and PIN are checked first. Errors, all without effect:
  /// those of `mayAppend`; NotPermitted if its author has not signed in, or was idle too long (never in the
  /// middle of a pass); Conflict naming who was first if another program appended in between (`job` then
  /// shows it); Locked, DiskFull, ReadOnly, Corrupt, Storage. A clock that ran back is entered first, in the
  /// same transaction.
  Result<Receipt> append(const Id& job, const Draft& draft, const std::optional<std::string>& pin = {});

  /// The job as of its last append or load. Valid until the next call that names it. NotFound, or Corrupt
  /// naming the first bad entry.
  Result<const Job*> job(const Id& job);
  /// The same after taking in what other programs appended meanwhile.
  Result<const Job*> refresh(const Id& job);

  /// May this person enter for this job without giving the PIN again?
  bool isSignedIn(const Id& job, const std::string& sign);
  /// Everybody and every tool, to judge a draft with before it is entered.
  Result<ShopFloor> floor();

 private:
  Result<Job*> held(const Id& job);
  Result<std::optional<Receipt>> already(const Id& job, const Id& entry, std::string_view kind);
  Result<void> checkCurrent(Job& job);
  Result<void> checkSignedIn(const Job& job, const Draft& draft, const Moment& now) const;
  Result<std::vector<Entry>> judge(const Job& job, const Draft& draft, const Moment& now);
  Result<void> insertJob(const Job& job, const JobStarted& start, const Moment& now);
  Result<void> checkIssued(const Job& job, const JobStarted& start);
  Result<void> keepQuickSheet(const Job& job);
  Result<Draft> firstDraft(const Beginning& beginning);
  Result<void> insert(const Job& job, const std::vector<Entry>& entries);
  Result<Receipt> reread(Job& job, std::vector<Entry> entries);

  Needs m_needs;
  PinGate m_gate;
  Sessions m_sessions;
  std::map<Id, Job> m_jobs;
};

}  // namespace cw
