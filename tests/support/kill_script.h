#pragma once
#include <fmt/format.h>

#include "tests/support/sample_shop.h"

namespace cw::test {

/// What the killed program says, over and over: the sample job up to its tighten step, then taken apart.
/// Nothing in it can be said twice or left out without being refused, so that a wrong place to resume shows.
inline Draft scriptedDraft(int index) {
  static const std::vector<std::pair<std::string, Body>> round = [] {
    auto all = sampleScript("s5");
    std::erase_if(all, [](const auto& said) { return std::holds_alternative<SignedIn>(said.second); });
    all.emplace_back("mira", TakenApart{"s1", "once more"});
    return all;
  }();
  const auto& [sign, body] = round[static_cast<std::size_t>(index) % round.size()];
  Draft out;
  out.id =
      *Id::parse("01900000-0000-7000-8000-" + hex(sha256(fmt::format("script {}", index))).substr(0, 12));
  out.enteredBy = sign;
  out.body = body;
  return out;
}

}  // namespace cw::test
