#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/base/finding.h"
#include "core/record/judge.h"
#include "core/record/key.h"
#include "core/record/seal.h"

namespace cw {

/// What verifying a record found. It is good only if `problems` is empty.
struct Verification {
  Findings problems;
  std::optional<int> firstBadEntry;     ///< sequence, where the chain or the rules first break
  std::optional<int> firstBadAddendum;  ///< number
  int count = 0;                        ///< entries found
  std::string head;                     ///< hash of the last, as the file says
  std::string keyId;                    ///< the key that the file says it was signed with
  bool trial = false;  ///< sealed by a trial version: bytes, chain and signature are judged, its rules are not

  bool good() const { return problems.empty(); }
};

/// A record as read back, whether or not it verifies.
struct SealedRecord {
  std::string shopName, program;
  Moment sealed;
  std::optional<Voucher> sealedBy;  ///< nobody in a trial version
  Job job;
  std::vector<Person> people;  ///< whom the entries name, as they stood there last
  std::string keyId, signature;
};

/// Judges a record by nothing but its bytes and the public key that the reader brings along (never one found
/// in the file): it equals its own canonical form, the signature holds, the chain from the genesis to the
/// head is whole, the sheet is the one named at the start, and every entry was allowed when it was made. No shop
/// is asked: what was judged by stands in the entries.
Verification verifyRecord(std::string_view bytes, const PublicKey& key);

/// Reads a record for showing. InvalidInput, NewerVersion or Corrupt with the place; the signature is not
/// judged.
Result<SealedRecord> readRecord(std::string_view bytes);

/// Everybody whom the entries name, as they stood in the shop at their last entry.
std::vector<Person> peopleIn(const Job& job);

/// What stands on screen and paper with a trial version's record.
Message trialNotice();

/// The same for addenda, in their order, against the record they belong to.
Verification verifyAddenda(std::string_view record, const std::vector<std::string>& addenda,
                           const PublicKey& key);

/// One addendum by itself: its seal, and that it belongs to the record. Those before it are not there to be
/// judged; `count` is its number.
Verification verifyAddendum(std::string_view record, std::string_view addendum, const PublicKey& key);

/// A record and its addenda: what is verified before anything of them is given out.
Verification verifySealed(std::string_view record, const std::vector<std::string>& addenda,
                          const PublicKey& key);

/// The one problem to tell where there is room for one: the first bad entry, else the first that was found.
const Finding& firstFault(const Verification& found);

/// Reads one addendum. InvalidInput with the place.
Result<Addendum> readAddendum(std::string_view bytes);

}  // namespace cw
