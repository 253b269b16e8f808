#include "app/drawing/joint_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <cmath>

#include "app/common/wording.h"
#include "app/drawing/joint_legend.h"
#include "app/look/colours.h"
#include "app/look/measures.h"

namespace cw {

JointView::JointView(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setAccessibleName(tr("Joint drawing"));
}

void JointView::setDrawing(JointDrawing drawing) {
  m_drawing = std::move(drawing);
  m_cursor = std::min(m_cursor, m_drawing.positions.empty() ? 0 : m_drawing.positions.size() - 1);
  describe();
  update();
}

void JointView::setOptions(JointDrawingOptions options) {
  m_options = std::move(options);
  update();
}

void JointView::setChoosable(bool choosable) {
  m_choosable = choosable;
  setFocusPolicy(choosable ? Qt::StrongFocus : Qt::NoFocus);
  if (!choosable) m_chosen.clear();
  update();
}

void JointView::clearChosen() {
  m_chosen.clear();
  update();
}

void JointView::describe() {
  QStringList parts;
  for (const DrawnPosition& position : m_drawing.positions)
    parts << tr("position %1 %2").arg(toQt(position.label), wordOf(position.state));
  setAccessibleDescription(parts.join(QStringLiteral(", ")));
}

void JointView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  JointDrawing drawing = m_drawing;
  for (DrawnPosition& position : drawing.positions)
    if (m_chosen.contains(position.label)) position.state = PositionState::Trouble;
  paintJoint(painter, rect(), drawing, JointInk::ofPalette(palette(), font()), m_options);
  if (!m_choosable || !hasFocus() || m_drawing.positions.empty()) return;
  painter.setPen(QPen(accentOf(palette()), 3));
  painter.setBrush(Qt::NoBrush);
  painter.drawRoundedRect(markOf(rect(), m_drawing, font(), m_options, m_cursor), 4, 4);
}

void JointView::toggle(std::size_t position) {
  const std::string& label = m_drawing.positions[position].label;
  if (m_chosen.erase(label) == 0) m_chosen.insert(label);
  update();
  emit chosenChanged();
}

std::optional<std::size_t> JointView::positionAt(const QPointF& point) const {
  const JointPlan plan = planJoint(rect(), m_drawing, font(), m_options);
  const qreal near = std::max(plan.reach, pixels(bench::kTarget / 2, this));
  std::optional<std::size_t> out;
  qreal least = near;
  for (std::size_t i = 0; i < plan.positions.size(); ++i) {
    const QPointF away = plan.positions[i].centre - point;
    const qreal here = plan.positions[i].label.contains(point) ? 0 : std::hypot(away.x(), away.y());
    if (here > least) continue;
    least = here;
    out = i;
  }
  return out;
}

void JointView::mouseReleaseEvent(QMouseEvent* event) {
  if (!m_choosable) return QWidget::mouseReleaseEvent(event);
  if (const auto touched = positionAt(event->position())) toggle(m_cursor = *touched);
}

void JointView::keyPressEvent(QKeyEvent* event) {
  const std::size_t count = m_drawing.positions.size();
  if (!m_choosable || count == 0) return QWidget::keyPressEvent(event);
  switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Down:
      m_cursor = (m_cursor + 1) % count;
      break;
    case Qt::Key_Left:
    case Qt::Key_Up:
      m_cursor = (m_cursor + count - 1) % count;
      break;
    case Qt::Key_Space:
      if (!event->isAutoRepeat()) toggle(m_cursor);
      break;
    default:
      return QWidget::keyPressEvent(event);
  }
  update();
}

}  // namespace cw
