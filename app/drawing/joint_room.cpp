#include "app/drawing/joint_room.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/drawing/joint_marks.h"
#include "app/drawing/joint_plan.h"

namespace cw {
namespace {

QPointF unit(const QPointF& direction) {
  const qreal length = std::hypot(direction.x(), direction.y());
  return length > 0 ? direction / length : QPointF(0, -1);
}

std::vector<QPointF> waysFrom(const QPointF& outward, Side side) {
  const qreal s = 0.70710678;
  if (side == Side::Inward) return {-outward};
  if (side == Side::Below) return {{0, 1}};
  return {-outward, {0, 1}, {s, s}, {-s, s}, {1, 0}, {-1, 0}, {0, -1}, {s, -s}, {-s, -s}};
}

}  // namespace

QRectF rectAt(const QPointF& centre, const QSizeF& size) {
  return {centre - QPointF(size.width(), size.height()) / 2, size};
}

qreal distance(const QPointF& point, const QRectF& rect) {
  const qreal x = std::max({rect.left() - point.x(), point.x() - rect.right(), qreal(0)});
  const qreal y = std::max({rect.top() - point.y(), point.y() - rect.bottom(), qreal(0)});
  return std::hypot(x, y);
}

QRectF besideCircle(const QPointF& centre, qreal radius, const QPointF& direction, const QSizeF& size) {
  qreal near = 0, far = radius + size.width() + size.height();
  for (int halving = 0; halving < 16; ++halving) {
    const qreal middle = (near + far) / 2;
    (distance(centre, rectAt(centre + direction * middle, size)) < radius ? near : far) = middle;
  }
  return rectAt(centre + direction * far, size);
}

std::vector<QPointF> outwardOf(const JointDrawing& drawing) {
  QPolygonF points;
  for (const DrawnPosition& position : drawing.positions) points << QPointF(position.at.x, position.at.y);
  const QRectF box = points.boundingRect();
  const qreal across = box.width() / 2, upright = box.height() / 2;
  std::vector<QPointF> out;
  for (const QPointF& point : points) {
    const QPointF from = point - box.center();
    const qreal side = across > 0 ? std::abs(from.x()) / across : 0;
    const qreal top = upright > 0 ? std::abs(from.y()) / upright : 0;
    if (upright < across * 0.15 || across < upright * 0.15)
      out.push_back(upright < across ? QPointF(0, -1) : QPointF(1, 0));
    else if (std::max(side, top) < 0.15)
      out.push_back(unit({0.7, -0.7}));
    else if (top > 0.98 && side < 0.9)
      out.push_back({0, from.y() < 0 ? -1.0 : 1.0});
    else if (side > 0.98 && top < 0.9)
      out.push_back({from.x() < 0 ? -1.0 : 1.0, 0});
    else
      out.push_back(unit(from));
  }
  return out;
}

JointEdge::JointEdge(const JointDrawing& drawing, const QPointF& origin, qreal scale) {
  const auto at = [&](const DrawingPoint& point) { return origin + QPointF(point.x, point.y) * scale; };
  const auto take = [&](const DrawingCircle& circle) {
    m_bounds |= rectAt(at(circle.centre), QSizeF(2, 2) * circle.radius * scale);
  };
  for (const DrawingPoint& corner : drawing.outline) m_corners << at(corner);
  m_bounds = m_corners.boundingRect();
  for (const DrawingCircle& circle : drawing.circles) take(circle);
  if (!drawing.edge) return;
  take(*drawing.edge);
  m_centre = at(drawing.edge->centre);
  m_radius = drawing.edge->radius * scale;
}

bool JointEdge::crosses(const QRectF& rect) const {
  const QRectF wide = rect.adjusted(-2, -2, 2, 2);
  const QPointF corners[] = {wide.topLeft(), wide.topRight(), wide.bottomLeft(), wide.bottomRight()};
  const auto inside = [&](const QPointF& point) {
    return m_centre ? std::hypot(point.x() - m_centre->x(), point.y() - m_centre->y()) < m_radius
                    : m_corners.containsPoint(point, Qt::OddEvenFill);
  };
  if (m_centre && distance(*m_centre, wide) >= m_radius) return false;
  const auto count = std::count_if(std::begin(corners), std::end(corners), inside);
  return m_centre ? count < 4 : count > 0 && count < 4;
}

Obstacles::Obstacles(const JointPlan& plan) {
  for (const PlannedPosition& each : plan.positions) {
    m_marks.push_back({each.centre, plan.radius + 1});
    if (plan.labelsBeside)
      m_taken.push_back(each.label);
    else
      m_marks.push_back({each.centre + each.outward * plan.radius * 1.15, plan.radius * 0.45});
  }
}

bool Obstacles::placeOrders(JointPlan& plan, const JointDrawing& drawing, Side side) {
  const std::size_t before = m_taken.size();
  const QFontMetricsF metrics(plan.orderFont);
  bool all = true;
  for (std::size_t i = 0; i < plan.positions.size(); ++i) {
    PlannedPosition& each = plan.positions[i];
    each.order = {};
    if (drawing.positions[i].order == 0) continue;
    const QSizeF size(metrics.horizontalAdvance(QString::number(drawing.positions[i].order)) + 2,
                      metrics.capHeight() + 3);
    const PositionState state = drawing.positions[i].state;
    const bool isRinged = state != PositionState::ToDo && state != PositionState::Done;
    const qreal clear = (isRinged ? plan.reach : plan.radius * 1.08) + 1.5;
    for (const QPointF& way : waysFrom(each.outward, side)) {
      const QRectF there = besideCircle(each.centre, clear, way, size);
      if (!isFree(there)) continue;
      each.order = there;
      m_taken.push_back(there);
      break;
    }
    all = all && !each.order.isEmpty();
  }
  m_taken.resize(before);
  return all;
}

bool Obstacles::isFree(const QRectF& rect) const {
  const auto meets = [&](const QRectF& taken) { return taken.intersects(rect); };
  const auto covers = [&](const Disc& mark) { return distance(mark.centre, rect) < mark.radius; };
  return std::none_of(m_taken.begin(), m_taken.end(), meets) &&
         std::none_of(m_marks.begin(), m_marks.end(), covers);
}

}  // namespace cw
