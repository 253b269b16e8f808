#pragma once
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/base/json.h"
#include "core/shop/person.h"
#include "core/shop/tool.h"

namespace cw {

/// The members of a record file, read strictly but not yet believed.
struct RecordFile {
  struct Row {
    Json entry;
    std::string hash;
  };
  Id shop, job;
  std::string shopName, program, sheet, head, keyId, signature;
  Moment sealed;
  int count = 0;
  std::vector<Row> rows;
  std::vector<Person> people;
  std::vector<TorqueTool> tools;
};

/// InvalidInput for a missing, unknown or wrong member; NewerVersion for a later version.
Result<RecordFile> readRecordFile(const Json& json);

}  // namespace cw
