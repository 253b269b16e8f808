#pragma once
#include <string>
#include <vector>

#include "core/base/message.h"

namespace cw {

/// What kind of trouble, for the caller that acts on it; the words are in the Error's messages.
enum class ErrorCode {
  InvalidInput,  ///< cannot be read as what it should be
  OutOfRange,    ///< readable, but outside what is possible or valid
  NotFound,      ///< names something that does not exist
  NotPermitted,  ///< this person may not
  OutOfTurn,     ///< may not be done now
  AlreadyDone,   ///< was done before; nothing was doubled
  Conflict,      ///< somebody else changed it first
  WrongPin,      ///< name and PIN do not match
  NewerVersion,  ///< written by a newer program
  Corrupt,       ///< damaged or tampered with
  Locked,        ///< another program holds the file
  ReadOnly,      ///< the file or folder cannot be written
  DiskFull,      ///< no room
  Storage,       ///< any other file or storage trouble
};

/// One refusal: where, which value, what is wrong with it, and what would be right.
/// `problem` may show the value as its %1; `expected` is a clause without a full stop.
struct Error {
  ErrorCode code = ErrorCode::InvalidInput;
  std::string place;  ///< "line 3, torque", "--thread", "steps[4].caution"; empty if there is no place
  std::string value;  ///< as given, shortened by `shown()` if long
  Message problem;
  Message expected;

  bool operator==(const Error&) const = default;
};

/// "place: problem; expected." in English, on one line.
std::string sentence(const Error& error);

/// The same error with `outer` put before its place: "joints[0]" + "target" -> "joints[0].target".
Error within(std::string outer, Error error);

/// Process exit code of section "Command line": 2 bad input, 3 file or storage trouble.
int exitCode(ErrorCode code);

/// A value fit to stand in a sentence: invalid UTF-8 and control, zero-width and direction characters escaped
/// byte by byte (\x1b), the rest cut after 60 characters.
std::string shown(std::string_view value);

}  // namespace cw
