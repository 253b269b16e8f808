#include "core/pattern/order.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "core/pattern/balance.h"
#include "core/pattern/published_orders.h"
#include "core/pattern/ring.h"
#include "core/pattern/ring_order.h"

namespace cw {
namespace {

constexpr std::size_t kUsualGroup = 4;

Order orderOf(const std::vector<std::size_t>& indices, Provenance provenance) {
  Order order{indices, std::move(provenance)};
  for (std::size_t& position : order.positions) ++position;
  return order;
}

Seats seatsOf(OrderRule rule, std::size_t n) {
  switch (rule) {
    case OrderRule::StarLater:
      return laterStarSeats(n);
    case OrderRule::StarGrouped:
      return groupedStarSeats(n, publishedGroupSize(n) > 1 ? publishedGroupSize(n) : kUsualGroup);
    case OrderRule::Quadrant:
      return quadrantSeats(n);
    case OrderRule::CircularAfterFour:
      return circularAfterFourSeats(n);
    case OrderRule::Wheel:
      return wheelSeats(n);
    case OrderRule::WheelPairs:
      return pairSeats(n);
    case OrderRule::ArmyCircle:
      return publishedException(OrderRule::ArmyCircle, n).value();
    default:
      return starSeats(n);
  }
}

/// Each ring by the rule, skipping the holes that are left out.
Order overRings(const std::vector<Ring>& rings, OrderRule rule) {
  std::vector<std::size_t> indices;
  for (const Ring& ring : rings)
    for (const std::size_t seat : seatsOf(rule, ring.size()))
      if (ring[seat]) indices.push_back(*ring[seat]);
  const bool isPrinted = rings.size() == 1 && indices.size() == rings.front().size();
  return orderOf(
      indices, isPrinted ? publishedSource(rule, indices.size())
                         : Provenance{"no published order for this layout: each circle by the rule", false});
}

Result<void> checkArmyCircle(const std::vector<Ring>& rings) {
  for (const Ring& ring : rings)
    if (!publishedException(OrderRule::ArmyCircle, ring.size()))
      return fail(
          ErrorCode::OutOfRange, "order", std::to_string(ring.size()),
          {"the Army circle is published for 12 positions, not for %1", {std::to_string(ring.size())}},
          "use the rule star");
  return {};
}

/// The star over the layout's own groups of neighbours, in the order they are listed.
Order overGroups(const std::vector<std::vector<std::size_t>>& groups) {
  Order order{{}, publishedSource(OrderRule::StarGrouped, 0)};
  for (const std::size_t group : starSeats(groups.size()))
    order.positions.insert(order.positions.end(), groups[group].begin(), groups[group].end());
  return order;
}

Provenance outwardSource(const std::vector<Place>& places) {
  if (places.size() == 9 && std::isinf(axesOf(places).aspect))
    return {"US Army TM 5-3805-298-23-2, WP 0176, straight line", true};
  return publishedSource(OrderRule::CentreOut, places.size());
}

Result<Order> ringOrder(const Layout& layout, OrderRule rule) {
  CW_TRY(found, rings(layout));
  if (rule == OrderRule::ArmyCircle) CW_CHECK(checkArmyCircle(found));
  return overRings(found, rule);
}

Order freeOrder(const std::vector<Place>& places, OrderRule rule) {
  if (rule == OrderRule::Circular) return orderOf(goingRound(places), publishedSource(rule, places.size()));
  const bool isOutward = rule == OrderRule::CentreOut;
  return orderOf(isOutward ? centreOutOrder(places) : balancedOrder(places), outwardSource(places));
}

struct NamedRule {
  OrderRule rule;
  std::string_view name;
};
constexpr NamedRule kNames[] = {
    {OrderRule::Star, "star"},
    {OrderRule::StarLater, "star-later"},
    {OrderRule::StarGrouped, "star-grouped"},
    {OrderRule::Quadrant, "quadrant"},
    {OrderRule::Circular, "circular"},
    {OrderRule::CircularAfterFour, "circular-after-four"},
    {OrderRule::CentreOut, "centre-out"},
    {OrderRule::Wheel, "wheel"},
    {OrderRule::WheelPairs, "wheel-pairs"},
    {OrderRule::ArmyCircle, "army-circle"},
    {OrderRule::Balanced, "balanced"},
};

std::string listOfNames() {
  std::string out;
  for (const NamedRule& named : kNames) out += (out.empty() ? "" : ", ") + std::string(named.name);
  return out;
}

}  // namespace

std::string_view name(OrderRule rule) {
  return std::find_if(std::begin(kNames), std::end(kNames), [&](const auto& n) { return n.rule == rule; })
      ->name;
}

Result<OrderRule> orderRule(std::string_view name) {
  for (const NamedRule& named : kNames)
    if (named.name == name) return named.rule;
  return fail(ErrorCode::InvalidInput, "rule", name, {"there is no order “%1”", {shown(name)}},
              {"use one of %1", {listOfNames()}});
}

Result<Order> tighteningOrder(const Layout& layout, OrderRule rule) {
  CW_TRY(points, places(layout));
  switch (rule) {
    case OrderRule::Circular:
    case OrderRule::CentreOut:
      return freeOrder(aboutMiddle(points), rule);
    case OrderRule::Balanced:
      if (layout.leftOut.empty())
        if (const auto found = rings(layout)) return overRings(*found, OrderRule::Star);
      return freeOrder(aboutMiddle(points), rule);
    case OrderRule::StarGrouped:
      if (!layout.groups.empty()) return overGroups(layout.groups);
      return ringOrder(layout, rule);
    default:
      return ringOrder(layout, rule);
  }
}

OrderRule usualRule(const Layout& layout) {
  return std::holds_alternative<Circle>(layout.shape) ? OrderRule::Star : OrderRule::Balanced;
}

Findings reviewOrder(std::span<const std::string> order, std::span<const std::string> labels) {
  Findings findings;
  std::map<std::string, std::size_t> times;
  for (const std::string& label : labels) times[label] = 0;
  for (std::size_t i = 0; i < order.size(); ++i) {
    const std::string place = "order[" + std::to_string(i) + "]";
    const auto known = times.find(order[i]);
    if (known == times.end())
      findings.push_back(blocking("order-unknown", place, {"there is no position %1", {shown(order[i])}},
                                  "name the labels of this layout"));
    else if (++known->second > 1)
      findings.push_back(blocking("order-repeat", place, {"position %1 comes again", {order[i]}},
                                  "name each position once"));
  }
  for (const std::string& label : labels)
    if (times[label] == 0)
      findings.push_back(
          blocking("order-gap", "order", {"position %1 is missing", {label}}, "name each position once"));
  return findings;
}

Findings reviewOrder(std::span<const std::size_t> order, std::size_t count) {
  std::vector<std::string> named, labels;
  for (const std::size_t position : order) named.push_back(std::to_string(position));
  for (std::size_t i = 1; i <= count; ++i) labels.push_back(std::to_string(i));
  return reviewOrder(named, labels);
}

}  // namespace cw
