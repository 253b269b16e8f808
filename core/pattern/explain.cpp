#include "core/pattern/explain.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

#include "core/pattern/plane.h"

namespace cw {
namespace {

constexpr double kMiddle = 0.05;  // of the farthest distance
constexpr double kAlike = 10;     // degrees within which a turn bears its name

/// Says where each next position lies, from the one before and from those already tightened.
class Walk {
 public:
  explicit Walk(const std::vector<Position>& positions) : m_positions(positions) {
    std::vector<Point> points;
    for (const Position& position : positions) points.push_back({position.x, position.y});
    m_places = aboutMiddle(points);
    m_clockwise.resize(points.size());
    std::iota(m_clockwise.begin(), m_clockwise.end(), 0u);
    std::stable_sort(m_clockwise.begin(), m_clockwise.end(),
                     [&](auto a, auto b) { return std::arg(m_places[a]) > std::arg(m_places[b]); });
    m_rank.resize(points.size());
    for (std::size_t i = 0; i < m_clockwise.size(); ++i) m_rank[m_clockwise[i]] = i;
    m_tightened.resize(points.size(), false);
  }

  Message go(std::size_t to) {
    const Message words = m_last ? wordsFor(*m_last, to) : Message("start at %1", {label(to)});
    m_tightened[to] = true;
    m_last = to;
    return words;
  }

 private:
  Message wordsFor(std::size_t from, std::size_t to) const {
    if (std::abs(m_places[to]) < kMiddle) return {"in the middle: %1", {label(to)}};
    if (std::abs(m_places[from]) < kMiddle) return {"out from the middle: %1", {label(to)}};
    const double turn = -std::arg(m_places[to] * std::conj(m_places[from])) * 180 / kPi;
    if (std::abs(turn) > 180 - kAlike) return opposite(from, to);
    if (std::abs(turn - 90) < kAlike) return {"a quarter turn clockwise: %1", {label(to)}};
    if (std::abs(turn + 90) < kAlike) return {"a quarter turn anticlockwise: %1", {label(to)}};
    return amongNeighbours(from, to);
  }

  Message opposite(std::size_t from, std::size_t to) const {
    const double outward = std::abs(m_places[to]) - std::abs(m_places[from]);
    if (outward > kMiddle) return {"opposite and further out: %1", {label(to)}};
    if (outward < -kMiddle) return {"opposite and further in: %1", {label(to)}};
    return {"opposite: %1", {label(to)}};
  }

  Message amongNeighbours(std::size_t from, std::size_t to) const {
    const std::size_t before = neighbour(to, -1), after = neighbour(to, +1);
    if (before == from) return {"the next one clockwise: %1", {label(to)}};
    if (after == from) return {"the next one anticlockwise: %1", {label(to)}};
    if (m_tightened[before] && !m_tightened[after])
      return {"beside %2, clockwise: %1", {label(to), label(before)}};
    if (m_tightened[after] && !m_tightened[before])
      return {"beside %2, anticlockwise: %1", {label(to), label(after)}};
    return {"between %2 and %3: %1", {label(to), label(tightened(to, -1)), label(tightened(to, +1))}};
  }

  std::size_t neighbour(std::size_t of, int step) const {
    const std::size_t count = m_clockwise.size();
    return m_clockwise[(m_rank[of] + (step > 0 ? 1 : count - 1)) % count];
  }

  /// The first tightened position met from there; there is one.
  std::size_t tightened(std::size_t from, int step) const {
    std::size_t met = neighbour(from, step);
    while (!m_tightened[met]) met = neighbour(met, step);
    return met;
  }

  const std::string& label(std::size_t index) const { return m_positions[index].label; }

  const std::vector<Position>& m_positions;
  std::vector<Place> m_places;
  std::vector<std::size_t> m_clockwise;  ///< indices as one meets them going round
  std::vector<std::size_t> m_rank;       ///< of each index in m_clockwise
  std::vector<bool> m_tightened;
  std::optional<std::size_t> m_last;
};

}  // namespace

Message inWords(OrderRule rule) {
  switch (rule) {
    case OrderRule::Star:
      return "opposite, then a quarter turn, then opposite; each next four as far from the others as they go";
    case OrderRule::StarLater:
      return "opposite, then a quarter turn, then opposite; the next four from the middle of the quadrant "
             "outward";
    case OrderRule::StarGrouped:
      return "a group of neighbours, then the opposite group, then a quarter turn, as in the star";
    case OrderRule::Quadrant:
      return "opposite, then a quarter turn, then opposite; the next four beside the first, all the way "
             "round";
    case OrderRule::Circular:
      return "one after the other around the part";
    case OrderRule::CircularAfterFour:
      return "four opposite positions crosswise, then one after the other around the part";
    case OrderRule::CentreOut:
      return "from the middle outward";
    case OrderRule::Wheel:
      return "every second stud, or opposite ones crosswise";
    case OrderRule::WheelPairs:
      return "opposite pairs, each pair one stud before the last";
    case OrderRule::ArmyCircle:
      return "opposite, then a quarter turn, then opposite; then opposite pairs, by turns on either side";
    case OrderRule::Balanced:
      return "each time the position that brings the tightened ones back into balance";
  }
  return {};
}

std::vector<Message> explainOrder(const std::vector<Position>& positions,
                                  std::span<const std::size_t> order) {
  Walk walk(positions);
  std::vector<Message> words;
  for (const std::size_t position : order)
    if (position >= 1 && position <= positions.size()) words.push_back(walk.go(position - 1));
  return words;
}

}  // namespace cw
