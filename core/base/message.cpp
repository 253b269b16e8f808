#include "core/base/message.h"

namespace cw {

std::string fill(std::string_view text, const std::vector<std::string>& arguments) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool place = text[i] == '%' && i + 1 < text.size() && text[i + 1] >= '1' && text[i + 1] <= '9';
    const std::size_t index = place ? static_cast<std::size_t>(text[i + 1] - '1') : 0;
    if (place && index < arguments.size()) {
      out += arguments[index];
      ++i;
    } else {
      out += text[i];
    }
  }
  return out;
}

std::string plain(const Message& message) {
  return fill(message.text, message.arguments);
}

std::string sentence(const std::string& place, const Message& problem, const Message& remedy) {
  std::string out = place.empty() ? "" : place + ": ";
  out += plain(problem);
  if (!remedy.empty()) out += "; " + plain(remedy);
  return out + ".";
}

}  // namespace cw
