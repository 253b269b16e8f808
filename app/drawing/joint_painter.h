#pragma once
#include "app/drawing/joint_ink.h"
#include "app/drawing/joint_plan.h"

class QPainter;

namespace cw {

/// Draws the joint into the rectangle, at any size, as vectors where the device takes them; marks as
/// JointMarks, places as JointPlan. While a position is now, the path shows the last moves and the next
/// one; else the whole order, of more than 16 positions its first moves.
void paintJoint(QPainter& painter, const QRectF& where, const JointDrawing& drawing, const JointInk& ink,
                const JointDrawingOptions& options = {});

/// Where a position's mark lies, for touch and for accessibility.
QRectF markOf(const QRectF& where, const JointDrawing& drawing, const QFont& font,
              const JointDrawingOptions& options, std::size_t position);

}  // namespace cw
