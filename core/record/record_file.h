#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/base/json.h"
#include "core/record/vouch.h"

namespace cw {

/// The version written now. Version 1 was a trial: it brought lists of people and tools of its own, and named
/// nobody who sealed.
inline constexpr int kRecordVersion = 2;

/// The members of a record file, read strictly but not yet believed.
struct RecordFile {
  struct Row {
    Json entry;
    std::string hash;
  };
  int version = kRecordVersion;
  Id shop, job;
  std::string shopName, program, sheet, head, keyId, signature;
  Moment sealed;
  std::optional<Voucher> sealedBy;  ///< nobody in version 1
  int count = 0;
  std::vector<Row> rows;
  std::vector<Person> people;  ///< of version 1: whom its entries name
};

/// InvalidInput for a missing, unknown or wrong member; NewerVersion for a later version.
Result<RecordFile> readRecordFile(const Json& json);

}  // namespace cw
