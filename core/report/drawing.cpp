#include "core/report/drawing.h"

#include "core/record/next.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace cw {
namespace {

constexpr double kLargestMark = 0.14;  ///< share of half the width that a mark takes at most

/// Fits a part's plane into -1 … 1, with room for the marks at the edge.
class Frame {
 public:
  void take(const Point& point) {
    m_low = {std::min(m_low.x, point.x), std::min(m_low.y, point.y)};
    m_high = {std::max(m_high.x, point.x), std::max(m_high.y, point.y)};
  }
  void take(const Point& centre, Length radius) {
    take({centre.x - radius, centre.y - radius});
    take({centre.x + radius, centre.y + radius});
  }
  void fit(double margin) {
    const Length half = std::max({m_high.x - m_low.x, m_high.y - m_low.y, millimetres(1)}) / 2;
    m_scale = half / (1 - margin);
  }
  double share(Length length) const { return length / m_scale; }
  Point middle() const { return {(m_low.x + m_high.x) / 2, (m_low.y + m_high.y) / 2}; }
  Length unit() const { return m_scale; }
  DrawingPoint at(const Point& point) const {
    return {share(point.x - middle().x), -share(point.y - middle().y)};
  }

 private:
  Point m_low{metres(1e9), metres(1e9)}, m_high{metres(-1e9), metres(-1e9)};
  Length m_scale = metres(1);
};

std::vector<Circle> circlesOf(const Shape& shape) {
  if (const auto* circle = std::get_if<Circle>(&shape)) return {*circle};
  if (const auto* several = std::get_if<ConcentricCircles>(&shape)) return several->circles;
  return {};
}

Length roundOutline(const Layout& layout) {
  const auto* round = layout.outline ? std::get_if<RoundOutline>(&*layout.outline) : nullptr;
  return round != nullptr ? round->diameter / 2 : Length{};
}

/// Half the least distance between two positions.
Length halfPitch(const std::vector<Position>& all) {
  double least = 1e9;
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < all.size(); ++j)
      least = std::min(least, std::hypot((all[i].x - all[j].x).si(), (all[i].y - all[j].y).si()));
  return Length::si(least / 2);
}

int placeIn(const std::vector<std::string>& order, const std::string& label) {
  const auto found = std::find(order.begin(), order.end(), label);
  return found == order.end() ? 0 : static_cast<int>(found - order.begin()) + 1;
}

Frame frameOf(const Layout& layout, const std::vector<Position>& all, const std::vector<Point>& corners) {
  Frame frame;
  for (const Position& position : all) frame.take({position.x, position.y});
  for (const Point& corner : corners) frame.take(corner);
  const Length edge = roundOutline(layout);
  if (edge > Length{}) frame.take({}, edge);
  frame.fit(edge > Length{} || !corners.empty() ? 0.01 : kLargestMark * 1.15);
  return frame;
}

/// What the entries say of a tighten step's positions beside their being done.
struct Standing {
  std::set<std::string> tried;       ///< pulled, and not overtaken since
  std::set<std::string> stuck;       ///< would not run by finger
  std::map<std::string, int> pulls;  ///< overtaken ones included
};

Standing standingOf(const Job& job, const std::string& step) {
  Standing out;
  for (const Kept& kept : job.entries) {
    if (stepOf(kept.entry.body) != step) continue;
    if (const auto* started = std::get_if<HandStarted>(&kept.entry.body); started && !kept.overtaken)
      out.stuck = {started->stuck.begin(), started->stuck.end()};
    const auto* pulled = std::get_if<Tightened>(&kept.entry.body);
    if (pulled == nullptr) continue;
    ++out.pulls[pulled->position];
    if (!kept.overtaken) out.tried.insert(pulled->position);
  }
  return out;
}

PositionState stateOf(const Standing& standing, const Tightening& now, const std::string& label) {
  if (now.tightened.contains(label))
    return standing.pulls.at(label) > 1 ? PositionState::Redone : PositionState::Done;
  const bool inTrouble = standing.tried.contains(label) || standing.stuck.contains(label);
  return inTrouble ? PositionState::Trouble : PositionState::ToDo;
}

}  // namespace

JointDrawing drawingOf(const Layout& layout, const std::vector<std::string>& order) {
  JointDrawing out;
  const auto all = positions(layout);
  const auto corners = outlineCorners(layout);
  if (!all || !corners) return out;
  const Frame frame = frameOf(layout, *all, *corners);
  out.middle = frame.middle();
  out.unit = frame.unit();
  if (const Length edge = roundOutline(layout); edge > Length{})
    out.edge = DrawingCircle{frame.at({}), frame.share(edge)};
  for (const Circle& circle : circlesOf(layout.shape))
    out.circles.push_back({frame.at({}), frame.share(circle.diameter / 2)});
  for (const Point& corner : *corners) out.outline.push_back(frame.at(corner));
  for (const Position& position : *all)
    out.positions.push_back(
        {frame.at({position.x, position.y}), position.label, placeIn(order, position.label), {}});
  out.pitch = frame.share(2 * halfPitch(*all));
  out.radius = std::min(kLargestMark, 0.43 * out.pitch);
  return out;
}

JointDrawing drawingOf(const Joint& joint) {
  return drawingOf(joint.layout, joint.order);
}

JointDrawing drawingOf(const Job& job, std::size_t index) {
  const Step& step = job.sheet.steps[index];
  JointDrawing out = drawingOf(*job.sheet.joint(step.joint));
  const Tightening& now = job.steps[index].tightening;
  const Standing standing = standingOf(job, step.id);
  const Next due = next(job);
  for (DrawnPosition& position : out.positions) {
    const bool isNow =
        due.stage == Stage::TightenPosition && due.step == index && due.position == position.label;
    position.state = isNow ? PositionState::Now : stateOf(standing, now, position.label);
  }
  return out;
}

}  // namespace cw
