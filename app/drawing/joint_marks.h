#pragma once
#include <QPointF>

#include "app/drawing/joint_ink.h"
#include "core/report/drawing.h"

class QPainter;

namespace cw {

/// How far a mark reaches, in its radius: the diamond of trouble, the rings of now and of done again.
inline constexpr qreal kMarkReach = 1.5;

/// How far from the middle of a mark its tick reaches when the label has the middle, in its radius.
inline constexpr qreal kTickReach = 1.6;

/// The mark of one position. State is shape first: to do an outline, done filled with a tick, now filled
/// accent in a dashed ring, done again filled with a double ring, trouble a diamond.
class JointMarks {
 public:
  JointMarks(QPainter& painter, const JointInk& ink) : m_painter(painter), m_ink(ink) {}

  /// The shape alone. `reach` is how far rings may go without touching a neighbour.
  void shape(PositionState state, const QPointF& centre, qreal radius, qreal reach);
  /// What stands in the middle of a mark whose label is beside it: a tick, a dot, an exclamation mark.
  void sign(PositionState state, const QPointF& centre, qreal radius);
  /// A tick on the mark's rim, towards `side`, where the label has the middle.
  void tick(PositionState state, const QPointF& centre, qreal radius, const QPointF& side);
  /// What reads on the mark.
  QColor onMark(PositionState state) const;

 private:
  qreal stroke(qreal radius) const;
  void tickLine(const QPointF& centre, qreal size);

  QPainter& m_painter;
  const JointInk& m_ink;
};

}  // namespace cw
