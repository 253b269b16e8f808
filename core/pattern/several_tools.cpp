#include "core/pattern/several_tools.h"

#include <algorithm>
#include <numeric>
#include <string>

#include "core/pattern/balance.h"

namespace cw {
namespace {

/// One tool's positions, as indices, in the order they lie along its stretch.
using Stretch = std::vector<std::size_t>;

Result<void> checkTools(std::size_t tools, std::size_t count) {
  const std::string number = std::to_string(tools);
  if (tools < 1 || tools > kMostTools)
    return fail(ErrorCode::OutOfRange, "tools", number, {"%1 tools cannot work together", {number}},
                "use 1 to 4");
  if (tools > count)
    return fail(ErrorCode::OutOfRange, "tools", number,
                {"%1 tools are more than the %2 positions", {number, std::to_string(count)}},
                {"use %1 or fewer", {std::to_string(count)}});
  return {};
}

Result<void> checkComplete(const Order& order, std::size_t count) {
  const Findings findings = reviewOrder(order.positions, count);
  if (findings.empty()) return {};
  const Finding& first = findings.front();
  return fail(Error{ErrorCode::InvalidInput, first.place, "", first.problem, first.cure});
}

std::vector<std::size_t> fromEndToEnd(const std::vector<Place>& places) {
  const Place axis = axesOf(places).along;
  std::vector<std::size_t> out(places.size());
  std::iota(out.begin(), out.end(), 0u);
  std::stable_sort(out.begin(), out.end(),
                   [&](auto a, auto b) { return on(axis, places[a]) < on(axis, places[b]); });
  return out;
}

/// `indices` cut into stretches of nearly one length, the first being one of the longest.
std::vector<Stretch> cut(const std::vector<std::size_t>& indices, std::size_t tools) {
  const auto start = [&](std::size_t tool) {
    return indices.begin() + static_cast<std::ptrdiff_t>((tool * indices.size() + tools - 1) / tools);
  };
  std::vector<Stretch> out;
  for (std::size_t tool = 0; tool < tools; ++tool) out.emplace_back(start(tool), start(tool + 1));
  return out;
}

/// When each index comes in the order.
std::vector<std::size_t> turnsOf(const Order& order) {
  std::vector<std::size_t> turns(order.positions.size());
  for (std::size_t i = 0; i < order.positions.size(); ++i) turns[order.positions[i] - 1] = i;
  return turns;
}

/// The offsets into the stretch in the order in which its positions come.
std::vector<std::size_t> offsetsByTurn(const Stretch& stretch, const std::vector<std::size_t>& turns) {
  std::vector<std::size_t> offsets(stretch.size());
  std::iota(offsets.begin(), offsets.end(), 0u);
  std::sort(offsets.begin(), offsets.end(),
            [&](auto a, auto b) { return turns[stretch[a]] < turns[stretch[b]]; });
  return offsets;
}

}  // namespace

Result<std::vector<ToolStep>> shareAmongTools(const Layout& layout, const Order& order, std::size_t tools) {
  CW_TRY(points, places(layout));
  CW_CHECK(checkTools(tools, points.size()));
  CW_CHECK(checkComplete(order, points.size()));
  const auto around = aboutMiddle(points);
  const auto turns = turnsOf(order);
  const bool isLong = isLongLayout(around);
  const auto stretches = cut(isLong ? fromEndToEnd(around) : goingRound(around), tools);
  const auto shared = offsetsByTurn(stretches.front(), turns);
  std::vector<ToolStep> steps(shared.size(), ToolStep(tools));
  for (std::size_t tool = 0; tool < tools; ++tool) {
    const Stretch& stretch = stretches[tool];
    const auto offsets = isLong ? offsetsByTurn(stretch, turns) : shared;
    for (std::size_t step = 0; step < offsets.size(); ++step)
      if (offsets[step] < stretch.size()) steps[step][tool] = stretch[offsets[step]] + 1;
  }
  return steps;
}

}  // namespace cw
