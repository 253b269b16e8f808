#include "core/base/file_format.h"

namespace cw {

Result<void> checkFormat(JsonReader& file, std::string_view format, std::int64_t version) {
  CW_TRY(found, file.text("format"));
  if (found != format)
    return fail(ErrorCode::InvalidInput, file.placeOf("format"), found,
                {"this file is of another format, “%1”", {shown(found)}},
                {"it must say “%1” here", {std::string(format)}});
  CW_TRY(number, file.integer("version", 1, std::int64_t{1} << 53));
  if (number <= version) return {};
  return fail(ErrorCode::NewerVersion, file.placeOf("version"), std::to_string(number),
              {"version %1 is newer than this program", {std::to_string(number)}},
              {"open it with a newer program, or write it as version %1", {std::to_string(version)}});
}

}  // namespace cw
