#pragma once
#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>

namespace cw {

using Random = std::mt19937_64;

/// The seed of every random test: CW_SEED from the environment, else always the same one.
inline std::uint64_t sweepSeed() {
  const char* given = std::getenv("CW_SEED");
  return given == nullptr ? 20260304 : std::strtoull(given, nullptr, 10);
}

/// Runs `check(random)` for many rounds from a printed seed and stops at the first round that fails.
template <class Check>
void sweep(int rounds, Check check) {
  const std::uint64_t seed = sweepSeed();
  std::cout << "[   seed   ] CW_SEED=" << seed << ", " << rounds << " rounds\n";
  Random random(seed);
  for (int round = 0; round < rounds && !testing::Test::HasFailure(); ++round) {
    SCOPED_TRACE("CW_SEED=" + std::to_string(seed) + ", round " + std::to_string(round));
    check(random);
  }
}

inline double between(double low, double high, Random& random) {
  return std::uniform_real_distribution<double>(low, high)(random);
}

/// Evenly spread over the orders of magnitude from `low` to `high`, both above zero.
inline double betweenMagnitudes(double low, double high, Random& random) {
  return std::exp(between(std::log(low), std::log(high), random));
}

/// A whole number from `low` to `high`, both included.
inline int wholeBetween(int low, int high, Random& random) {
  return std::uniform_int_distribution<int>(low, high)(random);
}

}  // namespace cw
