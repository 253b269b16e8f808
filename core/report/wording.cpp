#include "core/report/wording.h"

namespace cw {
namespace {

void append(std::string& out, std::string_view between, const std::string& next) {
  if (!out.empty()) out += between;
  out += next;
}

}  // namespace

std::string say(const std::vector<Message>& sentences, const Wording& wording) {
  std::string out;
  for (const Message& sentence : sentences) append(out, " ", wording(sentence));
  return out;
}

std::string listed(const std::vector<std::string>& items) {
  std::string out;
  for (const std::string& item : items) append(out, ", ", item);
  return out;
}

}  // namespace cw
