#pragma once
#include <cstddef>
#include <cstdint>
#include <random>

namespace cw::test {

/// Chance from a seed, the same on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : m_source(seed) {}

  /// 0 … most - 1; 0 where there is nothing to choose from.
  std::size_t below(std::size_t most) { return most == 0 ? 0 : m_source() % most; }
  int between(int low, int high) {
    return low + static_cast<int>(below(static_cast<std::size_t>(high - low + 1)));
  }
  bool inHundred(int percent) { return static_cast<int>(below(100)) < percent; }
  template <class List>
  const typename List::value_type& of(const List& list) {
    return list[below(list.size())];
  }
  template <class List>
  void shuffle(List& list) {
    for (std::size_t left = list.size(); left > 1; --left) std::swap(list[left - 1], list[below(left)]);
  }

 private:
  std::mt19937_64 m_source;
};

}  // namespace cw::test
