#pragma once
#include <functional>
#include <string>
#include <vector>

#include "core/base/message.h"

namespace cw {

/// How a message is said: `plain` for English, or the window's translation of it.
using Wording = std::function<std::string(const Message&)>;

/// The sentences one after the other.
std::string say(const std::vector<Message>& sentences, const Wording& wording);

/// "a, b, c".
std::string listed(const std::vector<std::string>& items);

}  // namespace cw
