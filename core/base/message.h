#pragma once
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace cw {

/// A sentence with places (%1 … %9) kept apart from what fills them, so that the window can
/// translate the template and the command line can print it as it stands. Templates are English
/// literals written where they arise; translations look them up by that text in context "core".
struct Message {
  std::string text;
  std::vector<std::string> arguments;

  Message() = default;
  Message(std::string_view literal, std::initializer_list<std::string> filled = {})
      : text(literal), arguments(filled) {}
  Message(const char* literal, std::initializer_list<std::string> filled = {})
      : Message(std::string_view(literal), filled) {}

  bool empty() const { return text.empty(); }
  bool operator==(const Message&) const = default;
};

/// Puts `arguments[n-1]` where the template says %n. A place without an argument stays as it is.
std::string fill(std::string_view text, const std::vector<std::string>& arguments);

/// The English text.
std::string plain(const Message& message);

/// "place: problem; remedy." in English, on one line; a part that is empty leaves no trace.
std::string sentence(const std::string& place, const Message& problem, const Message& remedy);

}  // namespace cw
