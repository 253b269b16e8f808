#include "core/settling/settling_way.h"

#include <algorithm>

namespace cw {
namespace {

constexpr double kSnugShare = 0.03;

std::vector<int> asBolts(const Order& order) {
  return {order.positions.begin(), order.positions.end()};
}

}  // namespace

Result<Layout> boltLayout(const SettlingJoint& joint) {
  if (const auto* circle = std::get_if<BoltCircle>(&joint.bolts.places);
      circle != nullptr && circle->radius > Length() && circle->count >= 3) {
    // Bolt 1 on the x axis, at three o'clock, and on towards the y axis.
    Circle out{static_cast<std::size_t>(circle->count), 2 * circle->radius, degrees(90)};
    out.direction = Direction::Anticlockwise;
    return Layout{out};
  }
  const std::vector<Point> places = boltPlaces(joint.bolts);
  if (static_cast<int>(places.size()) != boltCount(joint) || places.empty())
    return fail(ErrorCode::InvalidInput, "bolts", "", "the bolts have no places", "give their positions");
  Layout out{FreePoints{places}};
  CW_CHECK(positions(out));
  return out;
}

Result<TighteningPlan> tighteningBy(const SettlingJoint& joint, const SettlingWay& way, Force target) {
  CW_TRY(layout, boltLayout(joint));
  CW_TRY(order, tighteningOrder(layout, way.rule));
  CW_TRY(round, tighteningOrder(layout, OrderRule::Circular));
  TighteningPlan out{{target}, kSnugShare, {}};
  for (const double share : way.shares) out.passes.push_back({share, asBolts(order)});
  for (int i = 0; i < way.rounds; ++i) out.passes.push_back({1, asBolts(round)});
  if (out.passes.empty())
    return fail(ErrorCode::InvalidInput, "passes", "", "there is no pass", "give shares, such as 30 70 100");
  CW_CHECK(checkTightening(out, boltCount(joint)));
  return out;
}

Result<SettlingOutcome> settleBy(const SettlingModel& model, const SettlingJoint& joint,
                                 const SettlingWay& way, Force target) {
  CW_CHECK(tighteningBy(joint, way, target));
  SettlingWay longer = way;
  ++longer.rounds;
  CW_TRY(tightening, tighteningBy(joint, longer, target));
  CW_TRY(course, settle(model, tightening));
  SettlingOutcome out{way, target, std::move(course), {}};
  out.oneMore = std::move(out.course.passes.back());
  out.course.passes.pop_back();
  const int passes = static_cast<int>(out.course.passes.size());
  std::erase_if(out.course.steps, [&](const SettlingStep& step) { return step.pass > passes; });
  return out;
}

}  // namespace cw
