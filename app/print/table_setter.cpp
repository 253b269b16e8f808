#include "app/print/table_setter.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/print/ink_colours.h"

namespace cw {
namespace {

constexpr double kTextSize = 8, kHeadSize = 7.5;  // points
constexpr double kGap = 9, kPadding = 2.2;        // points
constexpr double kWritingHeight = 8;              // mm

/// A value on its tolerance: a bar from limit to limit, a full dot for a reading, an open one for a setting.
void paintGauge(QPainter& painter, const QRectF& where, const Gauge& gauge, const Paper& paper) {
  const double left = where.left() + where.width() * 0.2, right = where.right() - where.width() * 0.2;
  const double y = where.center().y(), tick = paper.points(2.2), radius = paper.points(1.9);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(kInk, paper.points(0.6)));
  painter.drawLine(QPointF(left, y), QPointF(right, y));
  for (const double x : {left, right}) painter.drawLine(QPointF(x, y - tick), QPointF(x, y + tick));
  const double share = std::clamp(gauge.value, -0.25, 1.25);
  const QPointF centre(left + share * (right - left), y);
  painter.setBrush(gauge.isReading ? kInk : Qt::white);
  const bool outside = gauge.value < 0 || gauge.value > 1;
  if (!outside) {
    painter.drawEllipse(centre, radius, radius);
    return;
  }
  const double reach = radius * 1.5;
  painter.drawPolygon(QPolygonF{{centre + QPointF(0, -reach), centre + QPointF(reach, 0),
                                 centre + QPointF(0, reach), centre + QPointF(-reach, 0)}});
}

QString words(const Cell& cell) {
  const QString text = toQt(cell.text);
  return cell.note.empty() ? text : text + QLatin1Char(' ') + toQt(cell.note);
}

}  // namespace

TableSetter::TableSetter(const Table& table, const Paper& paper, Pages& pages)
    : m_table(table), m_paper(paper), m_pages(pages) {
  double all = 0, left = 0;
  for (const Column& column : table.columns) all += column.width;
  const double gaps = paper.points(kGap) * (static_cast<double>(table.columns.size()) - 1);
  for (const Column& column : table.columns) {
    m_left.push_back(left);
    m_width.push_back((pages.width() - gaps) * column.width / all);
    left += m_width.back() + paper.points(kGap);
  }
}

void TableSetter::set() {
  if (m_table.rows.empty()) return;
  const SetRow first = broken(m_table.rows.front());
  m_pages.need(std::min(first.height + m_paper.points(24), m_pages.height()));
  setHead();
  for (const std::vector<Cell>& cells : m_table.rows) setRow(broken(cells));
}

TextLook TableSetter::lookOf(const Cell& cell, bool numeric) const {
  TextLook look{m_paper.text(kTextSize), cell.ink == Ink::Full ? kInk : kSecondInk,
                numeric ? Qt::AlignRight : Qt::AlignLeft};
  if (cell.ink == Ink::Struck) look.struck = static_cast<int>(toQt(cell.text).size());
  return look;
}

TableSetter::SetRow TableSetter::broken(const std::vector<Cell>& cells) const {
  SetRow row;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    row.cells.emplace_back(words(cells[i]), lookOf(cells[i], m_table.columns[i].numeric), m_width[i],
                           m_paper.device());
    row.gauges.push_back(cells[i].gauge);
    row.height = std::max(row.height, row.cells.back().height() + 2 * m_paper.points(kPadding));
  }
  if (m_table.forHandwriting) row.height = std::max(row.height, m_paper.millimetres(kWritingHeight));
  return row;
}

void TableSetter::setHead() {
  SetRow row;
  for (std::size_t i = 0; i < m_table.columns.size(); ++i) {
    const Column& column = m_table.columns[i];
    const TextLook look{m_paper.text(kHeadSize, QFont::Bold), kSecondInk,
                        column.numeric ? Qt::AlignRight : Qt::AlignLeft};
    row.cells.emplace_back(toQt(column.heading), look, m_width[i], m_paper.device());
    row.height = std::max(row.height, row.cells.back().height() + 2 * m_paper.points(kPadding));
  }
  m_pages.put(row.height, [=, left = m_left, width = m_pages.width(), &paper = m_paper](QPainter& painter) {
    for (std::size_t i = 0; i < row.cells.size(); ++i)
      row.cells[i].draw(painter,
                        QPointF(left[i], row.height - paper.points(kPadding) - row.cells[i].height()));
    painter.setPen(QPen(kInk, paper.points(0.8)));
    painter.drawLine(QPointF(0, row.height), QPointF(width, row.height));
  });
}

void TableSetter::setRow(const SetRow& row) {
  if (row.height > m_pages.room() && row.height <= m_pages.height() - m_paper.points(30)) {
    m_pages.breakPage();
    setHead();
  }
  if (row.height <= m_pages.room()) {
    int lines = 1;
    for (const SetText& cell : row.cells) lines = std::max(lines, cell.lineCount());
    putSlice(row, 0, lines, true);
  } else {
    setSlices(row);
  }
}

/// A row that no page can hold goes on, line by line.
void TableSetter::setSlices(const SetRow& row) {
  int lines = 1;
  for (const SetText& cell : row.cells) lines = std::max(lines, cell.lineCount());
  const double lineHeight = row.cells.front().lineHeight();
  for (int first = 0; first < lines;) {
    const int fits =
        static_cast<int>(std::floor((m_pages.room() - 2 * m_paper.points(kPadding)) / lineHeight));
    if (fits >= 1) {
      putSlice(row, first, fits, first + fits >= lines);
      first += fits;
    }
    if (first < lines) {
      m_pages.breakPage();
      setHead();
    }
  }
}

void TableSetter::putSlice(const SetRow& row, int first, int lines, bool last) {
  const double padding = m_paper.points(kPadding);
  double height = 0;
  for (const SetText& cell : row.cells)
    height = std::max(height, std::clamp(cell.lineCount() - first, 0, lines) * cell.lineHeight());
  height += 2 * padding;
  if (m_table.forHandwriting) height = std::max(height, m_paper.millimetres(kWritingHeight));
  m_pages.put(height, [=, left = m_left, widths = m_width, all = m_pages.width(),
                       handwriting = m_table.forHandwriting, &paper = m_paper](QPainter& painter) {
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
      row.cells[i].draw(painter, QPointF(left[i], padding), first, lines);
      if (row.gauges[i] && first == 0)
        paintGauge(painter, QRectF(left[i], 0, widths[i], height), *row.gauges[i], paper);
    }
    if (!last) return;
    painter.setPen(QPen(kRule, paper.points(0.35)));
    painter.drawLine(QPointF(0, height), QPointF(all, height));
    if (!handwriting) return;
    for (std::size_t i = 1; i < left.size(); ++i)
      painter.drawLine(QPointF(left[i] - paper.points(kGap / 2), 0),
                       QPointF(left[i] - paper.points(kGap / 2), height));
  });
}

}  // namespace cw
