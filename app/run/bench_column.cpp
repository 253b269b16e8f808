#include "app/run/bench_column.h"

#include <QApplication>
#include <QEvent>
#include <QScrollBar>
#include <algorithm>

namespace cw {

BenchColumn::BenchColumn(QWidget* content, QWidget* parent) : QScrollArea(parent) {
  setWidget(content);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
}

void BenchColumn::keepInView(QWidget* part) {
  m_part = part;
  verticalScrollBar()->setValue(0);
  bringIntoView();
}

bool BenchColumn::eventFilter(QObject* watched, QEvent* event) {
  const bool out = QScrollArea::eventFilter(watched, event);
  if (watched == widget() && (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest))
    bringIntoView();
  return out;
}

void BenchColumn::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  bringIntoView();
}

void BenchColumn::bringIntoView() {
  if (m_part != nullptr) {
    const int top = m_part->mapTo(widget(), QPoint()).y();
    const int needed = top + m_part->height() - viewport()->height();
    verticalScrollBar()->setValue(std::clamp(needed, 0, top));
  }
  // Where somebody types stays in view before all else.
  QWidget* typed = QApplication::focusWidget();
  if (typed != nullptr && widget()->isAncestorOf(typed)) ensureWidgetVisible(typed);
}

}  // namespace cw
