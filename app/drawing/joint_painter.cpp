#include "app/drawing/joint_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/drawing/joint_legend.h"
#include "app/drawing/joint_marks.h"
#include "app/drawing/joint_room.h"

namespace cw {
namespace {

constexpr std::size_t kMostOnPath = 16;  ///< positions; of more the path shows how it begins
constexpr std::size_t kMovesToBegin = 8;
constexpr std::size_t kMovesShown = 3;  ///< of the path behind the position that is now

class JointPen {
 public:
  JointPen(QPainter& painter, const JointPlan& plan, const JointDrawing& drawing, const JointInk& ink)
      : m_painter(painter), m_plan(plan), m_drawing(drawing), m_ink(ink), m_marks(painter, ink) {}

  void face() {
    m_painter.setPen(QPen(m_ink.line, 1.5 * hair()));
    m_painter.setBrush(m_ink.face);
    if (m_drawing.edge) circle(*m_drawing.edge);
    QPolygonF corners;
    for (const DrawingPoint& corner : m_drawing.outline) corners << m_plan.at(corner);
    if (!corners.isEmpty()) m_painter.drawPolygon(corners);
    m_painter.setPen(QPen(faint(), hair()));
    m_painter.setBrush(Qt::NoBrush);
    for (const DrawingCircle& each : m_drawing.circles) circle(each);
  }

  void path() {
    const std::vector<std::size_t> order = inOrder();
    const auto now = std::find_if(order.begin(), order.end(), [&](std::size_t index) {
      return m_drawing.positions[index].state == PositionState::Now;
    });
    if (now == order.end()) {
      m_painter.setPen(QPen(m_ink.line, 1.2 * hair(), Qt::DotLine));
      const std::size_t shown = order.size() > kMostOnPath ? kMovesToBegin + 1 : order.size();
      for (std::size_t i = 1; i < shown; ++i) move(order[i - 1], order[i], i == 1);
      return;
    }
    const auto at = static_cast<std::size_t>(now - order.begin());
    m_painter.setPen(QPen(m_ink.line, stroke(), Qt::DotLine));
    for (std::size_t i = at > kMovesShown ? at - kMovesShown : 1; i > 0 && i <= at; ++i)
      move(order[i - 1], order[i], false);
    if (at + 1 >= order.size()) return;
    m_painter.setPen(QPen(m_ink.accent, stroke(), Qt::DashLine));
    move(order[at], order[at + 1], true);
  }

  void position(std::size_t index) {
    const DrawnPosition& position = m_drawing.positions[index];
    const PlannedPosition& there = m_plan.positions[index];
    const bool isNow = position.state == PositionState::Now;
    const qreal radius = m_plan.radius * (isNow ? std::min(1.12, m_plan.reach / m_plan.radius / 1.15) : 1);
    m_marks.shape(position.state, there.centre, radius, m_plan.reach * (isNow ? 1.06 : 1));
    if (m_plan.labelsBeside)
      m_marks.sign(position.state, there.centre, radius);
    else
      m_marks.tick(position.state, there.centre, radius, there.outward);
    label(position, there);
  }

  void orderOf(std::size_t index) {
    const QRectF where = m_plan.positions[index].order;
    if (where.isEmpty()) return;
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_ink.face);
    m_painter.drawRoundedRect(where, 2, 2);
    m_painter.setFont(m_plan.orderFont);
    m_painter.setPen(m_ink.ink);
    text(where, QString::number(m_drawing.positions[index].order));
  }

  /// The near edge: a triangle that points at the part, and the words.
  void words(const QString& said) {
    m_painter.setFont(m_ink.font);
    m_painter.setPen(m_ink.ink);
    const QFontMetricsF metrics(m_ink.font);
    const qreal side = metrics.capHeight() * 0.5;
    const QPointF foot(m_plan.words.center().x() - metrics.horizontalAdvance(said) / 2 - side * 0.6,
                       m_plan.words.center().y() + side * 0.8);
    m_painter.drawText(m_plan.words.translated(side, 0), Qt::AlignCenter, said);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_ink.ink);
    m_painter.drawPolygon(
        QPolygonF{{foot + QPointF(-side, 0), foot + QPointF(side, 0), foot + QPointF(0, -side * 1.7)}});
  }

 private:
  QColor faint() const {
    QColor colour = m_ink.line;
    colour.setAlphaF(0.55F);
    return colour;
  }
  /// The thinnest line: a pixel on a screen, as much of the drawing on paper.
  qreal hair() const { return std::max<qreal>(1, m_plan.scale / 250); }
  qreal stroke() const { return std::clamp<qreal>(m_plan.radius / 8, 1.5 * hair(), 4 * hair()); }

  void circle(const DrawingCircle& circle) {
    const qreal radius = circle.radius * m_plan.scale;
    m_painter.drawEllipse(m_plan.at(circle.centre), radius, radius);
  }

  /// Indices of the positions in their order; what is in no order is not on the path.
  std::vector<std::size_t> inOrder() const {
    std::vector<std::size_t> out;
    for (std::size_t i = 0; i < m_drawing.positions.size(); ++i)
      if (m_drawing.positions[i].order > 0) out.push_back(i);
    std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) {
      return m_drawing.positions[a].order < m_drawing.positions[b].order;
    });
    return out;
  }

  /// From rim to rim, with an arrow at its end if wanted.
  void move(std::size_t from, std::size_t to, bool arrow) {
    const QPointF a = m_plan.positions[from].centre, b = m_plan.positions[to].centre;
    const qreal length = std::hypot(b.x() - a.x(), b.y() - a.y());
    const qreal rim = m_plan.reach;
    if (length < 2.2 * rim) return;
    const QPointF along = (b - a) / length, across(-along.y(), along.x());
    const QPointF end = b - along * rim;
    m_painter.drawLine(a + along * rim, end);
    if (!arrow) return;
    const qreal head = std::clamp<qreal>(m_plan.radius * 0.5, 5 * hair(), 14 * hair());
    const QPen dashed = m_painter.pen();
    m_painter.setPen(QPen(dashed.color(), dashed.widthF(), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    m_painter.drawPolyline(
        QPolygonF{{end - along * head + across * head * 0.5, end, end - along * head - across * head * 0.5}});
    m_painter.setPen(dashed);
  }

  void label(const DrawnPosition& position, const PlannedPosition& there) {
    if (there.label.isEmpty()) return;
    QColor colour = m_ink.ink;
    if (!m_plan.labelsBeside) colour = m_marks.onMark(position.state);
    if (m_plan.labelsBeside && position.state == PositionState::Now) {
      m_painter.setPen(Qt::NoPen);
      m_painter.setBrush(m_ink.accent);
      m_painter.drawRoundedRect(there.label.adjusted(-3, -3, 3, 3), 3, 3);
      colour = m_ink.onAccent;
    }
    m_painter.setFont(m_plan.labelFont);
    m_painter.setPen(colour);
    text(there.label, toQt(position.label));
  }

  /// Capitals and figures in the middle, which AlignVCenter misses by the depth of descenders.
  void text(const QRectF& where, const QString& said) {
    const QFontMetricsF metrics(m_painter.font());
    m_painter.drawText(QPointF(where.center().x() - metrics.horizontalAdvance(said) / 2,
                               where.center().y() + metrics.capHeight() / 2),
                       said);
  }

  QPainter& m_painter;
  const JointPlan& m_plan;
  const JointDrawing& m_drawing;
  const JointInk& m_ink;
  JointMarks m_marks;
};

}  // namespace

void paintJoint(QPainter& painter, const QRectF& where, const JointDrawing& drawing, const JointInk& ink,
                const JointDrawingOptions& options) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const JointPlan plan = planJoint(where, drawing, ink.font, options);
  JointPen pen(painter, plan, drawing, ink);
  pen.face();
  if (options.showPath) pen.path();
  for (const bool now : {false, true})  // the one that is now lies on top
    for (std::size_t i = 0; i < drawing.positions.size(); ++i)
      if ((drawing.positions[i].state == PositionState::Now) == now) pen.position(i);
  for (std::size_t i = 0; i < drawing.positions.size(); ++i) pen.orderOf(i);
  if (!options.standHere.isEmpty()) pen.words(options.standHere);
  if (options.showLegend) JointLegend(drawing, ink.font).paint(painter, plan.legend, ink);
  painter.restore();
}

QRectF markOf(const QRectF& where, const JointDrawing& drawing, const QFont& font,
              const JointDrawingOptions& options, std::size_t position) {
  const JointPlan plan = planJoint(where, drawing, font, options);
  return rectAt(plan.positions.at(position).centre, QSizeF(2, 2) * plan.reach);
}

}  // namespace cw
