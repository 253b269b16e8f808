#pragma once
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/record/body.h"
#include "core/record/vouch.h"

namespace cw {

/// Who did it, and with which tool (empty: none).
struct Doer {
  PersonSign person;
  ToolId tool;
  bool operator==(const Doer&) const = default;
};

/// The version of entries written now. 1 was a trial: what it holds is read, and its rules are not judged.
inline constexpr int kEntryVersion = 2;
inline constexpr int kTrialVersion = 1;

/// One append-only fact of a job.
struct Entry {
  int version = kEntryVersion;
  int sequence = 0;            ///< 1, 2, 3 … without gaps; order is by this, never by time
  Id id;                       ///< the caller's, so that a replay doubles nothing
  Moment time;                 ///< when it was entered
  std::optional<Moment> done;  ///< when it was done, if that was earlier: a late entry
  PersonSign enteredBy;
  std::vector<Doer> by;           ///< at least one
  PersonSign supervisor;          ///< for an apprentice
  std::vector<Voucher> vouchers;  ///< one for each person named, in the order of their signs
  Body body;

  /// When it was done: what a calibration or an expiry is judged by.
  const Moment& doneAt() const { return done ? *done : time; }
  /// nullptr if nobody of that sign vouches.
  const Voucher* voucher(std::string_view sign) const;
};

/// Everybody and every tool that an entry names.
struct Named {
  std::set<std::string> people, tools;

  void add(Named more) { people.merge(more.people), tools.merge(more.tools); }
};
Named namedIn(const Entry& entry);
/// The same of a body alone.
Named namedIn(const Body& body);

/// The canonical object of an entry: v, seq, id, time, done, entered_by, by, supervisor, vouched, kind, body.
Json entryToJson(const Entry& entry);

/// Reads it strictly. InvalidInput for a missing, unknown or wrong field; NewerVersion for a later `v`.
Result<Entry> entryFromJson(const Json& json, const std::string& place);

/// Where the chain of a job begins: SHA-256("clampwright.job.v1\n" ‖ canonical {"job","sheet","shop"}).
Digest genesis(const Id& shop, const Id& job, const Digest& sheet);

/// SHA-256("clampwright.entry.v1\n" ‖ 32 bytes of `previous` ‖ canonical entry).
Digest entryHash(const Digest& previous, std::string_view canonicalEntry);

}  // namespace cw
