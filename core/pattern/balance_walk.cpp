#include "core/pattern/balance_walk.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cw {
namespace {

constexpr double kCentred = 0.15;   // largest first moment of a set in balance
constexpr double kUpright = 0.3;    // largest second moment of a set in balance
constexpr double kCoarsest = 0.04;  // layouts closer to a tie than this are taken as tied

}  // namespace

BalanceWalk::BalanceWalk(const std::vector<Place>& places, Leader leader)
    : m_places(places),
      m_leader(leader),
      m_rank(places.size()),
      m_angle(places.size()),
      m_room(places.size(), std::numeric_limits<double>::infinity()),
      m_anchorRoom(m_room),
      m_tightened(places.size(), false) {
  const double pitch = 2 * kPi / static_cast<double>(places.size());
  m_tolerance = std::min(kCoarsest, pitch / 4);
  m_momentTolerance = std::min(kCoarsest, pitch * pitch * 4 / 3);
  const auto round = goingRound(places);
  for (std::size_t i = 0; i < round.size(); ++i) m_rank[round[i]] = i;
  const double sense = numberingSense(places);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const double angle = -sense * std::arg(places[i] * std::conj(places[0])) / (2 * kPi);
    m_angle[i] = 2 * kPi * (angle - std::floor(angle));
  }
}

std::vector<std::size_t> BalanceWalk::walk() {
  tighten(0);
  while (m_order.size() < m_places.size()) {
    const bool leads = inBalance();
    if (leads && m_sectorEnd == 0) setAnchors();
    const std::size_t next = leads ? leading() : restoring();
    if (leads) m_lastLeader = next;
    tighten(next);
  }
  return m_order;
}

bool BalanceWalk::inBalance() const {
  if (m_leader == Leader::Pairs) return length(m_first) <= kCentred;
  return m_order.size() >= 4 && length(m_first) <= kCentred && length(m_second) <= kUpright;
}

void BalanceWalk::tighten(std::size_t place) {
  m_order.push_back(place);
  m_tightened[place] = true;
  m_first += m_places[place];
  m_second += m_places[place] * m_places[place];
  for (std::size_t i = 0; i < m_places.size(); ++i)
    m_room[i] = std::min(m_room[i], length(m_places[i] - m_places[place]));
}

void BalanceWalk::setAnchors() {
  m_anchorRoom = m_room;
  m_sectorEnd = 2 * kPi;
  for (const std::size_t anchor : m_order)
    if (anchor != m_order.front()) m_sectorEnd = std::min(m_sectorEnd, m_angle[anchor]);
}

std::size_t BalanceWalk::restoring() const {
  Candidates candidates = freePlaces();
  keepLeast(candidates, m_tolerance, [&](std::size_t i) { return length(m_first + m_places[i]); });
  if (m_leader != Leader::Pairs)
    keepLeast(candidates, m_momentTolerance,
              [&](std::size_t i) { return length(m_second + m_places[i] * m_places[i]); });
  keepLeast(candidates, m_tolerance, [&](std::size_t i) { return -m_room[i]; });
  keepLeast(candidates, m_tolerance,
            [&](std::size_t i) { return -length(m_places[i] - m_places[m_order.back()]); });
  return firstMet(candidates);
}

std::size_t BalanceWalk::leading() const {
  Candidates candidates = freeInSector();
  if (m_leader == Leader::Spread) {
    keepLeast(candidates, m_tolerance, [&](std::size_t i) { return -m_room[i]; });
    keepLeast(candidates, m_tolerance, [&](std::size_t i) { return -aroundSector(i, m_lastLeader); });
  } else if (m_leader == Leader::Middle) {
    keepLeast(candidates, m_tolerance, [&](std::size_t i) { return -m_anchorRoom[i]; });
    keepLeast(candidates, m_tolerance,
              [&](std::size_t i) { return -length(m_places[i] - m_places[m_lastLeader]); });
  }
  return firstMet(candidates);
}

BalanceWalk::Candidates BalanceWalk::freePlaces() const {
  Candidates out;
  for (std::size_t i = 0; i < m_places.size(); ++i)
    if (!m_tightened[i]) out.push_back(i);
  return out;
}

BalanceWalk::Candidates BalanceWalk::freeInSector() const {
  const Candidates all = freePlaces();
  Candidates out;
  for (const std::size_t i : all)
    if (m_angle[i] < m_sectorEnd) out.push_back(i);
  return out.empty() ? all : out;
}

std::size_t BalanceWalk::firstMet(const Candidates& candidates) const {
  return *std::min_element(candidates.begin(), candidates.end(),
                           [&](std::size_t a, std::size_t b) { return m_rank[a] < m_rank[b]; });
}

double BalanceWalk::aroundSector(std::size_t a, std::size_t b) const {
  const double apart = std::abs(m_angle[a] - m_angle[b]);
  return std::min(apart, std::abs(m_sectorEnd - apart));
}

template <class Score>
void BalanceWalk::keepLeast(Candidates& candidates, double tolerance, Score score) const {
  std::vector<double> scores;
  for (const std::size_t i : candidates) scores.push_back(score(i));
  const double least = *std::min_element(scores.begin(), scores.end());
  std::size_t kept = 0;
  for (std::size_t i = 0; i < candidates.size(); ++i)
    if (scores[i] <= least + tolerance) candidates[kept++] = candidates[i];
  candidates.resize(kept);
}

}  // namespace cw
