#pragma once
#include <vector>

#include "core/pattern/balance.h"

namespace cw {

/// One walk of the balance rule over places around a middle. Comparisons take values closer than a
/// tolerance for equal, so that equal geometry ties and never hangs on rounding.
class BalanceWalk {
 public:
  BalanceWalk(const std::vector<Place>& places, Leader leader);
  std::vector<std::size_t> walk();

 private:
  using Candidates = std::vector<std::size_t>;

  bool inBalance() const;
  void tighten(std::size_t place);
  void setAnchors();
  std::size_t restoring() const;
  std::size_t leading() const;
  Candidates freePlaces() const;
  Candidates freeInSector() const;
  std::size_t firstMet(const Candidates& candidates) const;
  double aroundSector(std::size_t a, std::size_t b) const;

  template <class Score>
  void keepLeast(Candidates& candidates, double tolerance, Score score) const;

  const std::vector<Place>& m_places;
  Leader m_leader;
  double m_tolerance;                ///< of distances and of the first moment
  double m_momentTolerance;          ///< of the second moment
  std::vector<std::size_t> m_rank;   ///< when each place is met going round from the first
  std::vector<double> m_angle;       ///< of each place from the first, going round, 0 to 2π
  std::vector<double> m_room;        ///< distance to the nearest tightened place
  std::vector<double> m_anchorRoom;  ///< distance to the nearest anchor
  std::vector<bool> m_tightened;
  std::vector<std::size_t> m_order;
  Place m_first;   ///< sum of the tightened places
  Place m_second;  ///< sum of their squares
  std::size_t m_lastLeader = 0;
  double m_sectorEnd = 0;  ///< angle of the first anchor met after the start; 0 until anchors are set
};

}  // namespace cw
