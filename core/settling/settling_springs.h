#pragma once
#include <memory>
#include <span>

#include "core/base/result.h"
#include "core/settling/settling_model.h"

namespace cw {

/// The joint in a state: nuts standing somewhere, bolts and gasket loaded accordingly.
///
/// Between two events the joint is linear, so a pull is followed from event to event: a gasket cell starts
/// to be let go, lifts off, touches or is pressed further than before; a bolt goes slack or taut again.
/// Every event changes one spring, which changes the body's flexibility by a matrix of rank one
/// (Sherman & Morrison 1950); there is no iteration to converge. A cell that has lifted keeps a ten
/// millionth of its stiffness, so that the flexibility stays finite.
class SettlingSprings {
 public:
  explicit SettlingSprings(const SettlingModel& model);
  SettlingSprings(const SettlingSprings& other);
  SettlingSprings& operator=(const SettlingSprings& other);
  ~SettlingSprings();

  /// Turns all nuts at once until every bolt carries its load. Only before any other pull.
  Result<void> drawTogether(std::span<const Force> loads);

  /// Turns one nut, tighter or looser, until its bolt carries `load`; the other nuts stand still.
  /// OutOfRange if the joint cannot carry it (the part tips, or the pull does not come to rest).
  Result<void> pull(int bolt, Force load);

  /// Takes one bolt out after its load has been let off.
  Result<void> remove(int bolt);

  int bolts() const;
  bool canTip() const;  ///< some of the gasket lifts off
  Force load(int bolt) const;
  std::vector<Force> loads() const;
  bool started(int bolt) const;  ///< its nut has had its turn and is not removed

  /// How far the faces have come together at a bolt, the squeeze under its head aside.
  Length approach(int bolt) const;

 private:
  class State;
  std::unique_ptr<State> m_state;
};

}  // namespace cw
