#include "app/drawing/joint_legend.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>

#include "app/drawing/joint_marks.h"

namespace cw {

QString wordOf(PositionState state) {
  switch (state) {
    case PositionState::ToDo:
      return QCoreApplication::translate("joint", "to do");
    case PositionState::Now:
      return QCoreApplication::translate("joint", "now");
    case PositionState::Done:
      return QCoreApplication::translate("joint", "done");
    case PositionState::Redone:
      return QCoreApplication::translate("joint", "done again");
    case PositionState::Trouble:
      return QCoreApplication::translate("joint", "in trouble");
  }
  return {};
}

JointLegend::JointLegend(const JointDrawing& drawing, const QFont& font)
    : m_font(font),
      m_line(QFontMetricsF(font).height() * 1.35),
      m_radius(QFontMetricsF(font).capHeight() * 0.62) {
  for (const PositionState state : {PositionState::Now, PositionState::Done, PositionState::Redone,
                                    PositionState::Trouble, PositionState::ToDo})
    if (std::any_of(drawing.positions.begin(), drawing.positions.end(),
                    [&](const DrawnPosition& position) { return position.state == state; }))
      m_states.push_back(state);
}

std::vector<JointLegend::Entry> JointLegend::arranged(qreal width) const {
  const QFontMetricsF metrics(m_font);
  std::vector<Entry> out;
  QPointF pen(0, m_line / 2);
  for (const PositionState state : m_states) {
    const qreal wide = m_radius * 6 + metrics.horizontalAdvance(wordOf(state));
    if (pen.x() > 0 && pen.x() + wide > width) pen = QPointF(0, pen.y() + m_line);
    out.push_back({state, pen});
    pen.rx() += wide;
  }
  return out;
}

qreal JointLegend::height(qreal width) const {
  const auto entries = arranged(width);
  return entries.empty() ? 0 : entries.back().at.y() + m_line / 2;
}

void JointLegend::paint(QPainter& painter, const QRectF& where, const JointInk& ink) const {
  JointMarks marks(painter, ink);
  for (const Entry& entry : arranged(where.width())) {
    const QPointF centre = where.topLeft() + entry.at + QPointF(m_radius * kMarkReach, 0);
    marks.shape(entry.state, centre, m_radius, m_radius * kMarkReach);
    marks.sign(entry.state, centre, m_radius);
    painter.setPen(ink.ink);
    painter.setFont(m_font);
    painter.drawText(QRectF(centre + QPointF(m_radius * 2.1, -m_line / 2), QSizeF(where.width(), m_line)),
                     Qt::AlignVCenter | Qt::AlignLeft, wordOf(entry.state));
  }
}

}  // namespace cw
