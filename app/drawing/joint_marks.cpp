#include "app/drawing/joint_marks.h"

#include <QPainter>
#include <algorithm>

namespace cw {
namespace {

bool isDone(PositionState state) {
  return state == PositionState::Done || state == PositionState::Redone;
}

}  // namespace

qreal JointMarks::stroke(qreal radius) const {
  return std::max<qreal>(1, radius / 9);
}

QColor JointMarks::onMark(PositionState state) const {
  if (state == PositionState::Now) return m_ink.onAccent;
  return isDone(state) ? m_ink.face : m_ink.ink;
}

void JointMarks::shape(PositionState state, const QPointF& centre, qreal radius, qreal reach) {
  const bool isNow = state == PositionState::Now, isTrouble = state == PositionState::Trouble;
  const QColor colour = isNow ? m_ink.accent : isTrouble ? m_ink.warning : m_ink.ink;
  m_painter.setPen(QPen(colour, stroke(radius)));
  m_painter.setBrush(isNow || isDone(state) ? colour : m_ink.face);
  if (isTrouble) {
    const qreal side = std::min(radius * 1.3, reach);
    m_painter.drawPolygon(QPolygonF{{centre + QPointF(0, -side), centre + QPointF(side, 0),
                                     centre + QPointF(0, side), centre + QPointF(-side, 0)}});
    return;
  }
  m_painter.drawEllipse(centre, radius, radius);
  m_painter.setBrush(Qt::NoBrush);
  if (state == PositionState::Redone) {
    const qreal ring = std::min(radius * 1.34, reach - stroke(radius) / 2);
    m_painter.drawEllipse(centre, ring, ring);
  }
  if (isNow) {
    const qreal ring = std::min(radius * 1.4, reach - stroke(radius) / 2);
    m_painter.setPen(QPen(colour, stroke(radius), Qt::CustomDashLine, Qt::FlatCap));
    QPen dashes = m_painter.pen();
    dashes.setDashPattern({2.5, 1.6});
    m_painter.setPen(dashes);
    m_painter.drawEllipse(centre, ring, ring);
  }
}

void JointMarks::sign(PositionState state, const QPointF& centre, qreal radius) {
  m_painter.setPen(QPen(onMark(state), std::max<qreal>(1, radius / 5), Qt::SolidLine, Qt::RoundCap));
  m_painter.setBrush(onMark(state));
  if (isDone(state)) tickLine(centre, radius * 0.72);
  if (state == PositionState::Now) m_painter.drawEllipse(centre, radius * 0.22, radius * 0.22);
  if (state != PositionState::Trouble) return;
  m_painter.drawLine(centre + QPointF(0, -0.6) * radius, centre + QPointF(0, 0.12) * radius);
  m_painter.drawEllipse(centre + QPointF(0, 0.55) * radius, radius * 0.04, radius * 0.04);
}

void JointMarks::tick(PositionState state, const QPointF& centre, qreal radius, const QPointF& side) {
  if (!isDone(state)) return;
  const QPointF at = centre + side * radius * 1.15;
  const qreal small = radius * 0.42;
  m_painter.setPen(QPen(m_ink.ink, stroke(radius) * 0.8));
  m_painter.setBrush(m_ink.face);
  m_painter.drawEllipse(at, small, small);
  tickLine(at, small);
}

void JointMarks::tickLine(const QPointF& centre, qreal size) {
  m_painter.setBrush(Qt::NoBrush);
  m_painter.drawPolyline(
      QPolygonF{{centre + QPointF(-0.55, 0.02) * size, centre + QPointF(-0.14, 0.42) * size,
                 centre + QPointF(0.58, -0.45) * size}});
}

}  // namespace cw
