#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/base/finding.h"
#include "core/record/job.h"
#include "core/record/key.h"
#include "core/record/seal.h"

namespace cw {

/// What verifying a record found. It is good only if `problems` is empty.
struct Verification {
  Findings problems;
  std::optional<int> firstBadEntry;  ///< sequence, where the chain or the rules first break
  int count = 0;                     ///< entries found
  std::string head;                  ///< hash of the last, as the file says
  std::string keyId;                 ///< the key that the file says it was signed with

  bool good() const { return problems.empty(); }
};

/// A record as read back, whether or not it verifies.
struct SealedRecord {
  std::string shopName, program;
  Moment sealed;
  Job job;
  std::vector<Person> people;  ///< without PIN hashes
  std::vector<TorqueTool> tools;
  std::string keyId, signature;
};

/// Judges a record by nothing but its bytes and the public key that the reader brings along (never one found
/// in the file): it equals its own canonical form, the signature holds, the chain from the genesis to the
/// head is whole, the sheet is the one named at the start, and every entry was allowed when it was made.
Verification verifyRecord(std::string_view bytes, const PublicKey& key);

/// Reads a record for showing. InvalidInput, NewerVersion or Corrupt with the place; the signature is not
/// judged.
Result<SealedRecord> readRecord(std::string_view bytes);

/// The same for addenda, in their order, against the record they belong to.
Verification verifyAddenda(std::string_view record, const std::vector<std::string>& addenda,
                           const PublicKey& key);

/// Reads one addendum. InvalidInput with the place.
Result<Addendum> readAddendum(std::string_view bytes);

}  // namespace cw
