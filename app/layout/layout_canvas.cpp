#include "app/layout/layout_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/drawing/joint_painter.h"
#include "app/layout/layout_grid.h"
#include "app/look/colours.h"
#include "core/pattern/numeral_json.h"

namespace cw {
namespace {

constexpr qreal kReachPixels = 12, kSnapPixels = 1.5, kGridPixels = 28;
constexpr qreal kRoomShare = 0.23;  ///< of half the canvas, around the part; marks may need more

/// Of a mark's radius: its label stands in it, as large as other text.
qreal largestMark(const QWidget& canvas) {
  return canvas.fontMetrics().capHeight() * 1.7;
}

bool isFree(const Pattern& pattern) {
  return std::holds_alternative<FreePoints>(pattern.layout.shape);
}

}  // namespace

LayoutCanvas::LayoutCanvas(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Drawing of the layout"));
  setObjectName(QStringLiteral("layoutCanvas"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void LayoutCanvas::present(const Pattern& pattern) {
  const bool sameShape = pattern.layout.shape.index() == m_pattern.layout.shape.index();
  m_pattern = pattern;
  const Layout& layout = m_pattern.layout;
  m_positions = places(layout).value_or(std::vector<Point>());
  const auto* polygon = layout.outline ? std::get_if<PolygonOutline>(&*layout.outline) : nullptr;
  m_corners = polygon != nullptr ? polygon->corners : std::vector<Point>();
  m_openHoles = layout.leftOut;
  m_open.clear();
  if (const auto all = holes(layout.shape))
    for (const std::size_t hole : layout.leftOut)
      if (hole >= 1 && hole <= all->size()) m_open.push_back((*all)[hole - 1]);
  m_drawing = drawingOf(layout, orderLabels(m_pattern).value_or(std::vector<std::string>()));
  if (m_chosen && *m_chosen >= handles().size()) m_chosen.reset();
  const bool outside = std::any_of(m_positions.begin(), m_positions.end(), [&](const Point& point) {
    return !QRectF(rect()).adjusted(8, 8, -8, -8).contains(at(point));
  });
  if (!isFree(m_pattern) || !sameShape || outside) showAll();
  say();
  update();
}

void LayoutCanvas::setMode(Mode mode) {
  m_mode = mode;
  m_chosen.reset();
  update();
}

void LayoutCanvas::showCorners(const std::vector<Point>& corners) {
  m_corners = corners;
  update();
}

void LayoutCanvas::showAll() {
  if (m_dragging) return;
  Point low{metres(1e9), metres(1e9)}, high{metres(-1e9), metres(-1e9)};
  const auto take = [&](const Point& point) {
    low = {std::min(low.x, point.x), std::min(low.y, point.y)};
    high = {std::max(high.x, point.x), std::max(high.y, point.y)};
  };
  for (const Point& point : m_positions) take(seen(point, m_pattern.layout.view));
  for (const Point& corner : m_corners) take(seen(corner, m_pattern.layout.view));
  const auto* round =
      m_pattern.layout.outline ? std::get_if<RoundOutline>(&*m_pattern.layout.outline) : nullptr;
  if (round != nullptr) {
    take({round->diameter / 2, round->diameter / 2});
    take({-round->diameter / 2, -round->diameter / 2});
  }
  if (low.x > high.x) low = high = {};
  m_middle = {(low.x + high.x) / 2, (low.y + high.y) / 2};
  const Length least = isFree(m_pattern) && m_positions.size() < 3 ? millimetres(120) : millimetres(1);
  m_half = std::max(least * (1 - kRoomShare), std::max(high.x - low.x, high.y - low.y) / 2);
  update();
}

/// In less no label could be as large as other text.
QSize LayoutCanvas::minimumSizeHint() const {
  const int line = fontMetrics().height();
  return {line * 9, line * 21 / 2};
}

/// Above the line that says what the grid is.
QRectF LayoutCanvas::drawn() const {
  return QRectF(rect()).adjusted(0, 0, 0, -fontMetrics().height() - 4);
}

qreal LayoutCanvas::pixelsPerMetre() const {
  const qreal half = std::min(drawn().width(), drawn().height()) / 2;
  return (half - std::max(half * kRoomShare, largestMark(*this) + 2)) / m_half.si();
}

QPointF LayoutCanvas::fromSeen(const Point& seen) const {
  const QPointF away((seen.x - m_middle.x).si(), -(seen.y - m_middle.y).si());
  return drawn().center() + away * pixelsPerMetre();
}

QPointF LayoutCanvas::at(const Point& part) const {
  return fromSeen(seen(part, m_pattern.layout.view));
}

Length LayoutCanvas::step(qreal leastPixels) const {
  const LengthUnit& unit = *m_pattern.layout.unit;
  return quantity(niceAbove(in(unit, Length::si(leastPixels / pixelsPerMetre()))), unit);
}

Point LayoutCanvas::pointAt(const QPointF& pixel) const {
  const QPointF away = (pixel - drawn().center()) / pixelsPerMetre();
  const Point part =
      onPart({m_middle.x + Length::si(away.x()), m_middle.y - Length::si(away.y())}, m_pattern.layout.view);
  const Length grid = step(kSnapPixels);
  const auto snap = [&](Length length) { return grid * std::round(length / grid); };
  return {snap(part.x), snap(part.y)};
}

const std::vector<Point>& LayoutCanvas::handles() const {
  return m_mode == Mode::Outline ? m_corners : m_positions;
}

std::optional<std::size_t> LayoutCanvas::handleAt(const QPointF& pixel) const {
  std::optional<std::size_t> out;
  qreal nearest = kReachPixels;
  for (std::size_t i = 0; i < handles().size(); ++i) {
    const QPointF away = at(handles()[i]) - pixel;
    if (const qreal distance = std::hypot(away.x(), away.y()); distance < nearest) {
      nearest = distance;
      out = i;
    }
  }
  return out;
}

std::optional<std::size_t> LayoutCanvas::leftOutAt(const QPointF& pixel) const {
  for (std::size_t i = 0; i < m_open.size(); ++i)
    if (const QPointF away = at(m_open[i]) - pixel; std::hypot(away.x(), away.y()) < kReachPixels)
      return m_openHoles[i];
  return std::nullopt;
}

void LayoutCanvas::select(std::size_t index) {
  m_chosen = index;
  say();
  update();
}

void LayoutCanvas::say() {
  QString text = tr("%n position(s)", nullptr, static_cast<int>(m_positions.size()));
  if (m_chosen && m_mode != Mode::Outline && *m_chosen < m_drawing.positions.size())
    text += tr(", chosen: %1").arg(toQt(m_drawing.positions[*m_chosen].label));
  setAccessibleDescription(text);
}

void LayoutCanvas::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) press(event->position());
}

void LayoutCanvas::press(const QPointF& pixel) {
  ++m_gesture;
  if (const auto handle = handleAt(pixel)) {
    select(*handle);
    if (m_mode == Mode::Order) return emit picked(*handle);
    m_dragging = true;
    return;
  }
  if (m_mode == Mode::Order) return;
  if (const auto hole = m_mode == Mode::Positions ? leftOutAt(pixel) : std::nullopt)
    return emit restored(*hole);
  const std::size_t before = handles().size();
  emit placed(pointAt(pixel));
  if (handles().size() > before) select(handles().size() - 1);
}

void LayoutCanvas::mouseMoveEvent(QMouseEvent* event) {
  m_hover = event->position();
  if (m_dragging && m_chosen && QRectF(rect()).contains(event->position()))
    emit moved(*m_chosen, pointAt(event->position()), m_gesture);
  update();
}

void LayoutCanvas::mouseReleaseEvent(QMouseEvent*) {
  m_dragging = false;
}

void LayoutCanvas::leaveEvent(QEvent*) {
  m_hover.reset();
  update();
}

void LayoutCanvas::nudge(int right, int up, bool far) {
  if (!m_chosen || m_mode == Mode::Order) return;
  const Length by = step(kSnapPixels) * (far ? 10 : 1);
  Point point = seen(handles()[*m_chosen], m_pattern.layout.view);
  point = {point.x + by * right, point.y + by * up};
  emit moved(*m_chosen, onPart(point, m_pattern.layout.view), ++m_gesture);
}

void LayoutCanvas::keyPressEvent(QKeyEvent* event) {
  const bool far = event->modifiers().testFlag(Qt::ShiftModifier);
  const std::size_t count = handles().size();
  const std::size_t chosen = m_chosen.value_or(count);
  switch (event->key()) {
    case Qt::Key_Left:
      return nudge(-1, 0, far);
    case Qt::Key_Right:
      return nudge(1, 0, far);
    case Qt::Key_Up:
      return nudge(0, 1, far);
    case Qt::Key_Down:
      return nudge(0, -1, far);
    case Qt::Key_PageDown:
      if (count > 0) select(chosen + 1 < count ? chosen + 1 : 0);
      return;
    case Qt::Key_PageUp:
      if (count > 0) select(chosen > 0 && chosen < count ? chosen - 1 : count - 1);
      return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
      if (m_mode == Mode::Order) return emit unpicked();
      if (m_chosen) emit removed(*m_chosen);
      return;
    case Qt::Key_Space:
      if (m_mode == Mode::Order && m_chosen) emit picked(*m_chosen);
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

void LayoutCanvas::paintHandles(QPainter& painter) const {
  painter.setBrush(sheetOf(palette()));
  painter.setPen(QPen(inkOf(palette()), 1.5));
  if (m_mode == Mode::Outline)
    for (const Point& corner : m_corners) painter.drawRect(QRectF(at(corner) - QPointF(4, 4), QSizeF(8, 8)));
  if (m_mode == Mode::Outline && m_corners.size() == 2) painter.drawLine(at(m_corners[0]), at(m_corners[1]));
  for (const Point& hole : m_open) {
    const QPointF centre = at(hole);
    painter.drawLine(centre - QPointF(5, 5), centre + QPointF(5, 5));
    painter.drawLine(centre - QPointF(5, -5), centre + QPointF(5, -5));
  }
  if (!m_chosen || *m_chosen >= handles().size()) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(accentOf(palette()), 3));
  const qreal half = largestMark(*this) * 1.35;
  painter.drawRoundedRect(QRectF(at(handles()[*m_chosen]) - QPointF(half, half), QSizeF(2, 2) * half), 4, 4);
}

/// What one square of the grid is, and where the pointer or the chosen position is.
void LayoutCanvas::paintWhere(QPainter& painter) const {
  const LengthUnit& unit = *m_pattern.layout.unit;
  const QString symbol = toQt(unit.symbol);
  QString text = tr("grid %1 %2").arg(toQt(numeral(step(kGridPixels), unit)), symbol);
  std::optional<Point> where;
  if (m_chosen && *m_chosen < handles().size()) where = handles()[*m_chosen];
  if (m_hover && !m_dragging) where = pointAt(*m_hover);
  if (where)
    text += tr("   x %1  y %2 %3").arg(toQt(numeral(where->x, unit)), toQt(numeral(where->y, unit)), symbol);
  painter.setPen(secondInkOf(palette()));
  painter.setFont(font());
  painter.drawText(rect().adjusted(8, 4, -8, -4), Qt::AlignLeft | Qt::AlignBottom, text);
}

void LayoutCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), sheetOf(palette()));
  paintGrid(painter, rect(), fromSeen({}), step(kGridPixels).si() * pixelsPerMetre(), lineOf(palette()));
  painter.setRenderHint(QPainter::Antialiasing);
  if (!m_drawing.positions.empty()) {
    JointDrawing drawing = m_drawing;
    const qreal scale = drawing.unit.si() * pixelsPerMetre();
    drawing.radius = std::min(0.43 * drawing.pitch, largestMark(*this) / scale);
    JointDrawingOptions options;
    options.showOrder = true;
    options.pinned = std::pair(fromSeen(drawing.middle), scale);
    JointInk ink = JointInk::ofPalette(palette(), font());
    paintJoint(painter, rect(), drawing, ink, options);
  }
  paintHandles(painter);
  paintWhere(painter);
  if (!hasFocus()) return;
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.setPen(QPen(accentOf(palette()), 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

}  // namespace cw
