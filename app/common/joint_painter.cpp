#include "app/common/joint_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/common/colours.h"
#include "app/common/wording.h"

namespace cw {
namespace {

/// Room below the joint for the words at its near edge.
qreal wordsHeight(const QFont& font, const JointDrawingOptions& options) {
  return options.standHere.isEmpty() ? 0 : QFontMetricsF(font).height();
}

/// From the drawing's -1 … 1 to the device, keeping its shape, with room for marks and words at the edge.
class Frame {
 public:
  Frame(const QRectF& where, const JointDrawing& drawing, qreal words) {
    const qreal reach = 1 + drawing.radius * 1.6;
    m_scale = std::max<qreal>(1, std::min(where.width(), where.height() - words) / (2 * reach));
    m_centre = QPointF(where.center().x(), where.center().y() - words / 2);
  }
  QPointF at(const DrawingPoint& point) const { return m_centre + QPointF(point.x, point.y) * m_scale; }
  qreal length(double share) const { return share * m_scale; }

 private:
  QPointF m_centre;
  qreal m_scale = 1;
};

class Pen {
 public:
  Pen(QPainter& painter, const Frame& frame, const JointDrawing& drawing, const JointInk& ink)
      : m_painter(painter), m_frame(frame), m_drawing(drawing), m_ink(ink) {}

  void face() {
    m_painter.setPen(QPen(m_ink.line, stroke()));
    m_painter.setBrush(m_ink.face);
    for (const DrawingCircle& circle : m_drawing.circles) {
      const qreal radius = m_frame.length(circle.radius);
      m_painter.drawEllipse(m_frame.at(circle.centre), radius, radius);
      m_painter.setBrush(Qt::NoBrush);
    }
    QPolygonF corners;
    for (const DrawingPoint& corner : m_drawing.outline) corners << m_frame.at(corner);
    m_painter.setBrush(m_ink.face);
    if (!corners.isEmpty()) m_painter.drawPolygon(corners);
  }

  void path() {
    QPolygonF line;
    for (const DrawingPoint& point : m_drawing.path) line << m_frame.at(point);
    m_painter.setPen(QPen(m_ink.line, stroke(), Qt::DotLine));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolyline(line);
  }

  void position(const DrawnPosition& position) {
    const bool now = position.state == PositionState::Now;
    const QPointF centre = m_frame.at(position.at);
    const qreal radius = m_frame.length(m_drawing.radius) * (now ? 1.2 : 1);
    mark(position, centre, radius);
    label(position, centre, radius);
    if (position.state == PositionState::Done || position.state == PositionState::Redone)
      tick(position, centre, radius);
  }

  void orderOf(const DrawnPosition& position) {
    const QPointF centre = m_frame.at(position.at);
    const qreal radius = m_frame.length(m_drawing.radius);
    m_painter.setFont(sized(radius * 0.8));
    m_painter.setPen(m_ink.ink);
    const QPointF beside = centre + besideMark(position) * radius * 2.1;
    m_painter.drawText(QRectF(beside - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius)),
                       Qt::AlignCenter, QString::number(position.order));
  }

  void words(const QString& text, const QRectF& where) {
    m_painter.setFont(m_ink.font);
    m_painter.setPen(m_ink.ink);
    m_painter.drawText(where, Qt::AlignHCenter | Qt::AlignBottom, text);
  }

 private:
  /// Where there is room beside a mark: towards the middle of a round part, below elsewhere.
  QPointF besideMark(const DrawnPosition& position) const {
    const qreal distance = std::hypot(position.at.x, position.at.y);
    if (m_drawing.circles.empty() || distance < 0.2) return {0, 1};
    return {-position.at.x / distance, -position.at.y / distance};
  }

  /// Unit vector to the tick: outward on a round part, to the upper right elsewhere; never where the order's
  /// number stands.
  QPointF tickSide(const DrawnPosition& position) const {
    const QPointF beside = besideMark(position);
    return beside == QPointF(0, 1) ? QPointF(0.7, -0.7) : -beside;
  }

  qreal stroke() const { return std::max<qreal>(1, m_frame.length(m_drawing.radius) / 12); }

  QFont sized(qreal pixels) const {
    QFont font(m_ink.font);
    font.setPixelSize(std::max(1, qRound(pixels)));
    return font;
  }

  void mark(const DrawnPosition& position, const QPointF& centre, qreal radius) {
    const bool filled = position.state != PositionState::ToDo && position.state != PositionState::Trouble;
    const QColor fill = position.state == PositionState::Now ? m_ink.accent : m_ink.ink;
    m_painter.setPen(QPen(position.state == PositionState::Trouble ? m_ink.warning : fill, stroke() * 1.4));
    m_painter.setBrush(filled ? fill : m_ink.face);
    if (position.state == PositionState::Trouble) {
      const qreal reach = radius * 1.25;
      m_painter.drawPolygon(QPolygonF{{centre + QPointF(0, -reach), centre + QPointF(reach, 0),
                                       centre + QPointF(0, reach), centre + QPointF(-reach, 0)}});
      return;
    }
    m_painter.drawEllipse(centre, radius, radius);
    m_painter.setBrush(Qt::NoBrush);
    if (position.state == PositionState::Redone) m_painter.drawEllipse(centre, radius * 1.28, radius * 1.28);
    if (position.state == PositionState::Now) {
      m_painter.setPen(QPen(m_ink.accent, stroke() * 1.4, Qt::DashLine));
      m_painter.drawEllipse(centre, radius * 1.35, radius * 1.35);
    }
  }

  void label(const DrawnPosition& position, const QPointF& centre, qreal radius) {
    const bool now = position.state == PositionState::Now;
    const bool onDark =
        now || position.state == PositionState::Done || position.state == PositionState::Redone;
    const QString text = toQt(position.label);
    QFont font = sized(radius * (text.size() > 2 ? 0.72 : 1.0));
    font.setWeight(QFont::Bold);
    m_painter.setFont(font);
    m_painter.setPen(now ? m_ink.onAccent : onDark ? m_ink.face : m_ink.ink);
    m_painter.drawText(QRectF(centre - QPointF(radius * 1.2, radius), QSizeF(radius * 2.4, radius * 2)),
                       Qt::AlignCenter, text);
  }

  void tick(const DrawnPosition& position, const QPointF& centre, qreal radius) {
    const QPointF at = centre + tickSide(position) * radius * 1.2;
    const qreal small = radius * 0.42;
    m_painter.setPen(QPen(m_ink.ink, stroke()));
    m_painter.setBrush(m_ink.face);
    m_painter.drawEllipse(at, small, small);
    m_painter.drawPolyline(QPolygonF{
        {at + QPointF(-0.5, 0) * small, at + QPointF(-0.1, 0.4) * small, at + QPointF(0.55, -0.45) * small}});
  }

  QPainter& m_painter;
  const Frame& m_frame;
  const JointDrawing& m_drawing;
  const JointInk& m_ink;
};

}  // namespace

JointInk JointInk::ofPalette(const QPalette& palette, const QFont& font) {
  return {sheetOf(palette),
          inkOf(palette),
          lineOf(palette),
          accentOf(palette),
          onAccentOf(palette),
          warningOf(palette),
          font};
}

JointInk JointInk::ofPaper(const QFont& font) {
  return {Qt::white, Qt::black, QColor(90, 90, 90), Qt::black, Qt::white, Qt::black, font};
}

void paintJoint(QPainter& painter, const QRectF& where, const JointDrawing& drawing, const JointInk& ink,
                const JointDrawingOptions& options) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const Frame frame(where, drawing, wordsHeight(ink.font, options));
  Pen pen(painter, frame, drawing, ink);
  pen.face();
  if (options.showPath) pen.path();
  for (const DrawnPosition& position : drawing.positions) pen.position(position);
  if (options.showOrder)
    for (const DrawnPosition& position : drawing.positions) pen.orderOf(position);
  if (!options.standHere.isEmpty()) pen.words(options.standHere, where);
  painter.restore();
}

QRectF markOf(const QRectF& where, const JointDrawing& drawing, const QFont& font,
              const JointDrawingOptions& options, std::size_t position) {
  const Frame frame(where, drawing, wordsHeight(font, options));
  const qreal radius = frame.length(drawing.radius) * 1.3;
  return QRectF(frame.at(drawing.positions.at(position).at) - QPointF(radius, radius),
                QSizeF(2 * radius, 2 * radius));
}

}  // namespace cw
