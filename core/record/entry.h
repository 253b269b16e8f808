#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/record/body.h"

namespace cw {

/// Who did it, and with which tool (empty: none).
struct Doer {
  std::string person;
  std::string tool;
  bool operator==(const Doer&) const = default;
};

/// One append-only fact of a job.
struct Entry {
  int sequence = 0;            ///< 1, 2, 3 … without gaps; order is by this, never by time
  Id id;                       ///< the caller's, so that a replay doubles nothing
  Moment time;                 ///< when it was entered
  std::optional<Moment> done;  ///< when it was done, if that was earlier: a late entry
  std::string enteredBy;       ///< sign of the person
  std::vector<Doer> by;        ///< at least one
  std::string supervisor;      ///< for an apprentice
  Body body;
};

inline constexpr int kEntryVersion = 1;

/// The canonical object of an entry: v, seq, id, time, done, entered_by, by, supervisor, kind, body.
Json entryToJson(const Entry& entry);

/// Reads it strictly. InvalidInput for a missing, unknown or wrong field; NewerVersion for a later `v`.
Result<Entry> entryFromJson(const Json& json, const std::string& place);

/// Where the chain of a job begins: SHA-256("clampwright.job.v1\n" ‖ canonical {"job","sheet","shop"}).
Digest genesis(const Id& shop, const Id& job, const Digest& sheet);

/// SHA-256("clampwright.entry.v1\n" ‖ 32 bytes of `previous` ‖ canonical entry).
Digest entryHash(const Digest& previous, std::string_view canonicalEntry);

}  // namespace cw
