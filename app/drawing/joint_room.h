#pragma once
#include <QPolygonF>
#include <QRectF>
#include <optional>
#include <vector>

#include "core/report/drawing.h"

namespace cw {

struct JointPlan;

QRectF rectAt(const QPointF& centre, const QSizeF& size);
qreal distance(const QPointF& point, const QRectF& rect);

/// A rectangle beside a circle, in that direction and touching it.
QRectF besideCircle(const QPointF& centre, qreal radius, const QPointF& direction, const QSizeF& size);

/// For each position the direction away from the middle of the part: square to the side on the edge of a
/// rectangle, square to the row where all stand in one.
std::vector<QPointF> outwardOf(const JointDrawing& drawing);

/// The part's edge and bolt circles on the screen.
class JointEdge {
 public:
  JointEdge(const JointDrawing& drawing, const QPointF& origin, qreal scale);
  /// True if a rectangle lies partly on the part and partly off it.
  bool crosses(const QRectF& rect) const;
  QRectF bounds() const { return m_bounds; }

 private:
  std::optional<QPointF> m_centre;
  qreal m_radius = 0;
  QPolygonF m_corners;
  QRectF m_bounds;
};

/// Where a number stands beside its mark.
enum class Side { Inward, Below, Anywhere };

/// What is taken on a drawing; order numbers go where nothing is.
class Obstacles {
 public:
  explicit Obstacles(const JointPlan& plan);
  /// False, with some numbers left out, if there is not room for all on that side of their marks.
  bool placeOrders(JointPlan& plan, const JointDrawing& drawing, Side side);

 private:
  bool isFree(const QRectF& rect) const;

  struct Disc {
    QPointF centre;
    qreal radius;
  };
  std::vector<Disc> m_marks;
  std::vector<QRectF> m_taken;
};

}  // namespace cw
