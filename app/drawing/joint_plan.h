#pragma once
#include <QFont>
#include <QRectF>
#include <QString>
#include <optional>
#include <vector>

#include "core/report/drawing.h"

namespace cw {

struct JointDrawingOptions {
  bool showPath = true;
  bool showOrder = false;   ///< small order numbers beside the positions
  QString standHere;        ///< words at the near edge; empty for none
  bool showLegend = false;  ///< what the marks that are there mean, below
  /// Pixels of the drawing's middle and of one of its units, where the drawing must not fill its room.
  std::optional<std::pair<QPointF, qreal>> pinned{};
};

struct PlannedPosition {
  QPointF centre;
  QRectF label;            ///< empty where there is no room for every label
  QRectF order;            ///< empty where none is shown
  QPointF outward{0, -1};  ///< unit vector away from the middle of the part
};

/// Where everything of a joint's drawing goes in a rectangle, in pixels. Labels stand in their marks if
/// they are as high there as the font's capitals; else beside them, outside of the part, if they get larger
/// that way. No label lies on another or on a mark; if there is no room even for small ones, every second,
/// third … position is labelled, the one that is now and those in trouble always.
struct JointPlan {
  QPointF origin;  ///< of the drawing's plane
  qreal scale = 1;
  qreal radius = 1;  ///< of a mark
  qreal reach = 1;   ///< how far a mark's rings may go
  bool labelsBeside = false;
  QFont labelFont, orderFont;
  std::vector<PlannedPosition> positions;
  QRectF words, legend;  ///< below the part

  QPointF at(const DrawingPoint& point) const { return origin + QPointF(point.x, point.y) * scale; }
};

JointPlan planJoint(const QRectF& where, const JointDrawing& drawing, const QFont& font,
                    const JointDrawingOptions& options);

}  // namespace cw
