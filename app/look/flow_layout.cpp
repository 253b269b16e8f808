#include "app/look/flow_layout.h"

#include <QWidget>

namespace cw {

FlowLayout::FlowLayout(int gap) : m_gap(gap) {
  setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() = default;

QLayoutItem* FlowLayout::itemAt(int index) const {
  return index >= 0 && index < count() ? m_items[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
  if (index < 0 || index >= count()) return nullptr;
  const auto at = m_items.begin() + index;
  QLayoutItem* taken = at->release();
  m_items.erase(at);
  return taken;
}

QSize FlowLayout::minimumSize() const {
  QSize out;
  for (const auto& item : m_items) out = out.expandedTo(item->minimumSize());
  return out;
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  arrange(rect, true);
}

int FlowLayout::arrange(const QRect& rect, bool move) const {
  QPoint at = rect.topLeft();
  int lineHeight = 0;
  for (const auto& item : m_items) {
    if (item->isEmpty()) continue;
    const QSize size = item->sizeHint();
    const bool full = at.x() > rect.left() && at.x() + size.width() > rect.left() + rect.width();
    if (full) at = QPoint(rect.left(), at.y() + lineHeight + m_gap);
    if (full) lineHeight = 0;
    if (move) item->setGeometry(QRect(at, size));
    at.rx() += size.width() + m_gap;
    lineHeight = std::max(lineHeight, size.height());
  }
  return at.y() + lineHeight - rect.top();
}

}  // namespace cw
