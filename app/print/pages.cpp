#include "app/print/pages.h"

#include <QPainter>

namespace cw {

void Pages::put(double height, Drawing drawing) {
  m_pages.back().push_back({m_cursor, std::move(drawing)});
  m_cursor += height;
}

void Pages::skip(double height) {
  if (m_cursor > 0) m_cursor += height;
}

void Pages::breakPage() {
  if (m_pages.back().empty()) return;
  m_pages.emplace_back();
  m_cursor = 0;
}

void Pages::need(double height) {
  if (room() < height) breakPage();
}

void Pages::rewind(const Mark& mark) {
  m_pages.resize(mark.pages);
  m_pages.back().resize(mark.pieces);
  m_cursor = mark.cursor;
}

void Pages::paint(QPainter& painter, std::size_t page) const {
  for (const Piece& piece : m_pages[page]) {
    painter.save();
    painter.translate(m_body.left(), m_body.top() + piece.y);
    piece.drawing(painter);
    painter.restore();
  }
}

}  // namespace cw
