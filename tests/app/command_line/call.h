#pragma once
#include <sstream>
#include <string>
#include <vector>

#include "app/command_line/command_line.h"
#include "core/units/stated.h"

namespace cw {

/// What one call of the program left behind.
struct Call {
  int exit = -1;
  std::string out, err;

  Json json() const { return parseJson(out).value_or(Json()); }
  /// A member of the JSON answer as a number; NaN if there is none.
  double number(std::string_view key) const {
    const Json answer = json();
    const Json* value = answer.find(key);
    const auto* number = value == nullptr ? nullptr : value->number();
    return number == nullptr ? std::numeric_limits<double>::quiet_NaN() : numberOf(number->text);
  }
  std::string word(std::string_view key) const {
    const Json answer = json();
    const Json* value = answer.find(key);
    return value == nullptr || value->string() == nullptr ? "" : *value->string();
  }
};

/// Runs the program in this process with these words behind its name.
inline Call call(std::vector<std::string> words) {
  words.insert(words.begin(), "clampwright");
  std::vector<const char*> pointers;
  for (const std::string& word : words) pointers.push_back(word.c_str());
  std::ostringstream out, err;
  std::istringstream in;
  Call made;
  made.exit = runCommandLine(static_cast<int>(pointers.size()), pointers.data(), {out, err, in});
  made.out = out.str();
  made.err = err.str();
  return made;
}

}  // namespace cw
