#include "core/pattern/pattern.h"

#include <algorithm>
#include <cmath>

#include "core/pattern/loosening.h"

namespace cw {
namespace {

Result<std::vector<std::string>> labelsOf(const Layout& layout) {
  CW_TRY(all, positions(layout));
  std::vector<std::string> out;
  for (const Position& position : all) out.push_back(position.label);
  return out;
}

/// As tightened: before a loosening turns it round.
Result<Order> writtenOrder(const Pattern& pattern) {
  if (pattern.byHand.empty()) return tighteningOrder(pattern.layout, pattern.rule);
  CW_TRY(labels, labelsOf(pattern.layout));
  for (const Finding& finding : reviewOrder(pattern.byHand, labels))
    return fail(ErrorCode::InvalidInput, "order", "", finding.problem, finding.cure);
  Order out{{}, {"written by hand", true, {}}};
  for (const std::string& label : pattern.byHand)
    out.positions.push_back(
        static_cast<std::size_t>(std::find(labels.begin(), labels.end(), label) - labels.begin()) + 1);
  return out;
}

}  // namespace

Result<Order> orderOf(const Pattern& pattern) {
  CW_TRY(order, writtenOrder(pattern));
  return pattern.loosens ? looseningOrder(order) : order;
}

Result<std::vector<std::string>> orderLabels(const Pattern& pattern) {
  CW_TRY(labels, labelsOf(pattern.layout));
  if (!pattern.byHand.empty()) {
    std::vector<std::string> out = pattern.byHand;
    if (pattern.loosens) std::reverse(out.begin(), out.end());
    return out;
  }
  CW_TRY(order, orderOf(pattern));
  std::vector<std::string> out;
  for (const std::size_t position : order.positions) out.push_back(labels[position - 1]);
  return out;
}

Point onPart(const Point& seen, const View& view) {
  const Point turned = cw::seen(seen, {false, -view.rotation});
  return {view.mirrored ? -turned.x : turned.x, turned.y};
}

std::vector<std::size_t> keptHoles(const Layout& layout) {
  std::vector<std::size_t> out;
  const auto all = holes(layout.shape);
  for (std::size_t hole = 1; all && hole <= all->size(); ++hole)
    if (std::find(layout.leftOut.begin(), layout.leftOut.end(), hole) == layout.leftOut.end())
      out.push_back(hole);
  return out;
}

Result<Layout> freed(const Layout& layout) {
  CW_TRY(points, places(layout));
  CW_TRY(labels, labelsOf(layout));
  Layout out = layout;
  out.shape = FreePoints{std::move(points)};
  out.leftOut.clear();
  if (layout.labels.style == LabelStyle::Own) out.labels.own = std::move(labels);
  return out;
}

Layout withoutPosition(const Layout& layout, std::size_t index) {
  Layout out = layout;
  const std::vector<std::size_t> kept = keptHoles(layout);
  if (index >= kept.size()) return out;
  const auto at = static_cast<std::ptrdiff_t>(index);
  if (auto* free = std::get_if<FreePoints>(&out.shape); free != nullptr && layout.leftOut.empty())
    free->points.erase(free->points.begin() + at);
  else
    out.leftOut.push_back(kept[index]);
  if (index < out.labels.own.size()) out.labels.own.erase(out.labels.own.begin() + at);
  out.groups.clear();
  return out;
}

std::vector<std::string> ownLabelsFor(const Layout& layout, std::size_t count) {
  std::vector<std::string> out = layout.labels.own;
  out.resize(std::min(out.size(), count));
  for (std::size_t number = 1; out.size() < count; ++number)
    if (const std::string label = std::to_string(number);
        std::find(out.begin(), out.end(), label) == out.end())
      out.push_back(label);
  return out;
}

RoundOutline usualOutline(const Layout& layout) {
  Length farthest = millimetres(10);
  if (const auto points = places(layout))
    for (const Point& point : *points)
      farthest = std::max(farthest, Length::si(std::hypot(point.x.si(), point.y.si())));
  return {Length::si(std::ceil(farthest.si() * 2.4e3) / 1e3)};
}

}  // namespace cw
