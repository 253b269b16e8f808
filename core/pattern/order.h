#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/finding.h"
#include "core/base/provenance.h"
#include "core/pattern/layout.h"

namespace cw {

/// How an order is made. All but CentreOut, Circular and Balanced need a ring: positions equally spaced on
/// a circle, or several such circles around one centre, which are then tightened one after the other, the
/// innermost first.
enum class OrderRule {
  Star,       ///< opposite, a quarter turn, opposite; first published convention (12: 1 7 4 10 2 8 5 11 …)
  StarLater,  ///< the same in the later convention (12: 1 7 4 10 3 9 6 12 …)
  StarGrouped,        ///< the star with groups of neighbours in place of single positions
  Quadrant,           ///< by turns the next free position of each quadrant
  Circular,           ///< one after the other around the part
  CircularAfterFour,  ///< four opposite positions, then around
  CentreOut,          ///< from the middle outward, diagonal partners together
  Wheel,              ///< wheel studs: every second one, or opposite pairs
  WheelPairs,         ///< opposite pairs, working round against the numbering
  ArmyCircle,         ///< a circle of 12 after US Army manuals
  Balanced,           ///< any layout: the published order where there is one, else by balance
};

inline constexpr OrderRule kOrderRules[] = {
    OrderRule::Star,       OrderRule::StarLater,         OrderRule::StarGrouped, OrderRule::Quadrant,
    OrderRule::Circular,   OrderRule::CircularAfterFour, OrderRule::CentreOut,   OrderRule::Wheel,
    OrderRule::WheelPairs, OrderRule::ArmyCircle,        OrderRule::Balanced};

/// The rule's name in files and on the command line: "star", "star-later", "centre-out" …
std::string_view name(OrderRule rule);

/// The rule of that name; InvalidInput listing the names otherwise.
Result<OrderRule> orderRule(std::string_view name);

/// The sequence in which the positions of a layout are tightened, each once, counted from 1.
struct Order {
  std::vector<std::size_t> positions;
  Provenance provenance{};  ///< the publication that prints this very order, or that none does
  bool operator==(const Order&) const = default;
};

/// The order of `rule` for the layout; it begins at position 1 unless it begins in the middle.
/// Holes left out of a circle are skipped. It depends on the part alone: turning or mirroring the view
/// changes nothing. Errors of `places`; OutOfRange if the layout has no ring and the rule needs one, or if
/// the Army circle is asked for another count than 12.
/// Sources: published_orders.h; tests/published/orders_sequences_test.cpp.
Result<Order> tighteningOrder(const Layout& layout, OrderRule rule);

/// Star on a circle, balanced elsewhere.
OrderRule usualRule(const Layout& layout);

/// What is wrong with an order edited by hand, given as labels: gaps, repeats, labels that are on no
/// position ("order-gap", "order-repeat", "order-unknown", all Blocking).
Findings reviewOrder(std::span<const std::string> order, std::span<const std::string> labels);

/// The same for positions counted from 1 to `count`.
Findings reviewOrder(std::span<const std::size_t> order, std::size_t count);

}  // namespace cw
