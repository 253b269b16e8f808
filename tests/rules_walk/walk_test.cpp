#include "tests/rules_walk/walk.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cstdlib>

namespace cw::test {
namespace {

// A walk of its own: CW_RULES_WALK_SEED, CW_RULES_WALK_STEPS (entries tried in all), CW_RULES_WALK_TRIES (in
// one job). A fault says its seed and number of tries, with which it comes again by itself.
std::uint64_t fromEnvironment(const char* name, std::uint64_t otherwise) {
  const char* said = std::getenv(name);
  return said == nullptr ? otherwise : std::strtoull(said, nullptr, 10);
}

/// The same seed with fewer tries fails earlier or not at all.
Walked shortened(std::uint64_t seed, int tries, Walked found) {
  for (int fewer = tries / 8; fewer > 0 && fewer < tries; fewer += tries / 8) {
    Walked again = walk(seed, fewer);
    if (again.fault.empty()) continue;
    found = std::move(again);
    tries = fewer;
    break;
  }
  found.fault +=
      fmt::format("\nCW_RULES_WALK_SEED={} CW_RULES_WALK_TRIES={} CW_RULES_WALK_STEPS=1", seed, tries);
  return found;
}

TEST(RulesWalk, WhateverIsTriedTheRulesHold) {
  const std::uint64_t first = fromEnvironment("CW_RULES_WALK_SEED", 1);
  const std::uint64_t steps = fromEnvironment("CW_RULES_WALK_STEPS", 100'000);
  const auto tries = static_cast<int>(fromEnvironment("CW_RULES_WALK_TRIES", 150));
  std::uint64_t tried = 0, taken = 0, forged = 0, jobs = 0, complete = 0;
  int faults = 0;
  for (std::uint64_t seed = first; tried < steps && faults < 5; ++seed) {
    Walked walked = walk(seed, tries);
    tried += static_cast<std::uint64_t>(walked.tried + walked.forged);
    taken += static_cast<std::uint64_t>(walked.taken), forged += static_cast<std::uint64_t>(walked.forged);
    ++jobs, complete += walked.complete ? 1 : 0;
    if (walked.fault.empty()) continue;
    ++faults;
    const Walked least = shortened(seed, tries, std::move(walked));
    ADD_FAILURE() << least.fault << "\n" << (fromEnvironment("CW_RULES_WALK_STORY", 0) ? least.story : "");
  }
  RecordProperty("tried", std::to_string(tried));
  std::printf("%llu tried, %llu of them forged, %llu taken, %llu jobs, %llu complete\n",
              static_cast<unsigned long long>(tried), static_cast<unsigned long long>(forged),
              static_cast<unsigned long long>(taken), static_cast<unsigned long long>(jobs),
              static_cast<unsigned long long>(complete));
  EXPECT_EQ(faults, 0);
  // A walk that never comes through says nothing of what complete means.
  if (jobs >= 100) EXPECT_GT(complete, jobs / 20);
}

}  // namespace
}  // namespace cw::test
