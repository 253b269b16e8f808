#pragma once
#include <string>

#include "core/record/job.h"
#include "core/record/key.h"

namespace cw {

/// What goes into a record beside the job itself.
struct SealContext {
  std::string shopName;
  std::string program;  ///< version that sealed it
  Voucher by;           ///< who seals, as in the shop now, by PIN or in a session
  Moment now;
};

/// The sealed record of a finished job: canonical JSON with the sheet's exact bytes, every entry and its
/// hash, who sealed, head and count, signed with the shop's key. OutOfTurn if the job is not finished;
/// NotPermitted for a trial version's job, or where the PIN was not given or the person may not seal
/// (technician, service writer, inspector or lead). The format is described in DEVELOPERS.md.
Result<std::string> sealRecord(const Job& job, const SealContext& context, const SecretKey& key);

/// A correction to a sealed record, which itself is never reopened.
struct Addendum {
  int number = 1;    ///< 1, 2, … for one record
  std::string by;    ///< sign
  std::string name;  ///< printed name
  Moment time;
  std::string text;  ///< what turned out, and what it is now
};

/// The sealed addendum to `record`; `previous` is the file of the addendum before it, or the record for the
/// first.
std::string sealAddendum(const Addendum& addendum, std::string_view record, std::string_view previous,
                         const Id& job, const SecretKey& key);

/// The object without its "signature", in canonical form: what the signature covers after its tag line.
std::string signedPart(const Json& sealed);

/// May somebody who stands so in the shop seal? NotPermitted otherwise.
Result<void> maySeal(const Voucher& by);

inline constexpr std::string_view kRecordTag = "clampwright.record.v1\n";
inline constexpr std::string_view kAddendumTag = "clampwright.addendum.v1\n";

}  // namespace cw
