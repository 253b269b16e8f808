#include "core/store/storage_error.h"

#include <QSqlError>
#include <filesystem>

namespace cw {
namespace {

// Primary result codes of SQLite, and one extended one (sqlite.org/rescode.html).
enum Code {
  kBusy = 5,
  kLocked = 6,
  kReadOnly = 8,
  kIoError = 10,
  kCorrupt = 11,
  kFull = 13,
  kCannotOpen = 14,
  kConstraint = 19,
  kNotADatabase = 26
};

Error error(ErrorCode code, const std::string& file, Message problem, Message expected) {
  return {code, file, "", std::move(problem), std::move(expected)};
}

/// A trigger's own words are the schema's sentence; other constraints speak of columns.
Error constraintError(const std::string& words, const std::string& file) {
  const bool unique = words.find("UNIQUE constraint") != std::string::npos;
  if (unique)
    return error(ErrorCode::Conflict, file, {"it is there already (%1)", {words}}, "nothing was changed");
  const bool schema = words.find("constraint failed") != std::string::npos;
  if (schema)
    return error(ErrorCode::InvalidInput, file, {"the shop file does not take this (%1)", {words}},
                 "nothing was changed");
  return error(ErrorCode::NotPermitted, file, {"%1", {words}}, "nothing was changed");
}

Error diskFull(const std::string& file) {
  return error(ErrorCode::DiskFull, file, "there is no room left on the disk",
               "make room and enter it again; nothing was saved");
}

/// SQLite reports a write-ahead log that found no room as a broken read or write.
bool noRoomBeside(const std::string& file) {
  constexpr std::uintmax_t kLogNeeds = 64 * 1024;
  std::error_code failed;
  const auto space = std::filesystem::space(std::filesystem::absolute(file, failed).parent_path(), failed);
  return !failed && space.available < kLogNeeds;
}

}  // namespace

Error storageError(const QSqlError& reported, const std::string& file) {
  const int code = reported.nativeErrorCode().toInt() & 0xff;
  const std::string words = reported.databaseText().toStdString();
  switch (code) {
    case kBusy:
    case kLocked:
      return error(ErrorCode::Locked, file, "another program is using the shop file",
                   "wait until it has finished, or close it");
    case kReadOnly:
      return error(ErrorCode::ReadOnly, file, "the shop file cannot be written",
                   "ask for the right to write the file and its folder");
    case kFull:
      return diskFull(file);
    case kCorrupt:
      return error(ErrorCode::Corrupt, file, "the shop file is damaged", "put back a backup");
    case kNotADatabase:
      return error(ErrorCode::Corrupt, file, "this is no shop file",
                   "name a file that Clampwright made as a shop file");
    case kConstraint:
      return constraintError(words, file);
    default:
      if ((code == kIoError || code == kCannotOpen) && noRoomBeside(file)) return diskFull(file);
      return error(ErrorCode::Storage, file, {"the shop file cannot be used: %1", {words}},
                   "check disk and folder");
  }
}

}  // namespace cw
