#include "app/documents/column_fit.h"

#include <QEvent>
#include <QHeaderView>
#include <QTableView>
#include <algorithm>
#include <numeric>

namespace cw {

/// A cell's text as what it takes to wrap it: the widths of its words, line by line.
struct WordWidths {
  std::vector<std::vector<int>> lines;
  int blank;

  int widest() const {
    int out = 0;
    for (const auto& line : lines)
      for (const int word : line) out = std::max(out, word);
    return out;
  }
  int linesIn(int width) const {
    int out = 0;
    for (const auto& line : lines) {
      int left = 0;
      for (const int word : line) {
        if (left < word) ++out, left = width;
        left -= word + blank;
      }
    }
    return out;
  }
};

namespace {

constexpr int kCellMargin = 16, kMostRowsMeasured = 200;
constexpr qsizetype kMostWordsKept = 5000;
constexpr int kEasyLines = 3;  ///< what a row may have before a column leaves
constexpr int kMostLines = 12;

template <class WidthOf>
WordWidths wordWidthsOf(const QString& text, WidthOf widthOf) {
  WordWidths out{{}, widthOf(QStringLiteral(" "))};
  for (const QString& line : text.split(QLatin1Char('\n'))) {
    out.lines.emplace_back();
    for (const QString& word : line.split(QLatin1Char(' '), Qt::SkipEmptyParts))
      out.lines.back().push_back(widthOf(word));
  }
  return out;
}

/// The least width in which a text takes so many lines at most; in the widest there are as many as it has.
int widthOf(const WordWidths& text, int lines) {
  int least = text.widest(), enough = least;
  while (text.linesIn(enough) > std::max<int>(lines, static_cast<int>(text.lines.size())))
    least = enough, enough += std::max(enough / 2, 1);
  while (enough - least > 1) {
    const int middle = (least + enough) / 2;
    (text.linesIn(middle) > lines ? least : enough) = middle;
  }
  return enough;
}

using Widths = std::vector<int>;

int sumOf(const Widths& widths) {
  return std::accumulate(widths.begin(), widths.end(), 0);
}

void shareOut(int spare, Widths& widths) {
  for (std::size_t i = 0; i < widths.size(); ++i) {
    const int share = std::max(0, spare) / static_cast<int>(widths.size() - i);
    widths[i] += share;
    spare -= share;
  }
}

}  // namespace

ColumnFit::ColumnFit(QTableView& list) : QObject(&list), m_list(list) {
  list.horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  list.viewport()->installEventFilter(this);
  list.horizontalHeader()->installEventFilter(this);
  connect(list.model(), &QAbstractItemModel::modelReset, this, &ColumnFit::fit);
}

bool ColumnFit::eventFilter(QObject* watched, QEvent* event) {
  const bool outgrown = event->type() == QEvent::Resize || event->type() == QEvent::FontChange;
  if (outgrown) fit();
  return QObject::eventFilter(watched, event);
}

/// What decides a column's width, measured once for all the widths that are tried.
struct ColumnFit::Measured {
  int heading;
  std::vector<WordWidths> cells;

  /// The width in which no row takes more lines.
  int widthFor(int lines) const {
    int out = heading;
    for (const WordWidths& cell : cells) out = std::max(out, widthOf(cell, lines));
    return out + kCellMargin;
  }
};

/// The words of a list come again in its next rows, and in the next list while somebody types.
int ColumnFit::widthOfWord(const QString& word) {
  const auto known = m_wordWidths.constFind(word);
  if (known != m_wordWidths.constEnd()) return *known;
  return *m_wordWidths.insert(word, m_list.fontMetrics().horizontalAdvance(word));
}

ColumnFit::Measured ColumnFit::measured(int column) {
  const QAbstractItemModel& model = *m_list.model();
  // The heading's sign of sorting takes a letter's room.
  Measured out{m_list.horizontalHeader()->fontMetrics().horizontalAdvance(
                   model.headerData(column, Qt::Horizontal).toString()) +
                   kCellMargin,
               {}};
  for (int row = 0; row < std::min(model.rowCount(), kMostRowsMeasured); ++row)
    out.cells.push_back(wordWidthsOf(model.index(row, column).data().toString(),
                                     [this](const QString& word) { return widthOfWord(word); }));
  return out;
}

void ColumnFit::fit() {
  const int count = m_list.model()->columnCount(), room = m_list.viewport()->width();
  if (count == 0) return;
  if (m_list.font() != m_measuredIn || m_wordWidths.size() > kMostWordsKept) m_wordWidths.clear();
  m_measuredIn = m_list.font();
  std::vector<Measured> columns;
  std::vector<int> shown;
  for (int column = 0; column < count; ++column) columns.push_back(measured(column)), shown.push_back(column);
  Widths widths;
  for (int lines = 1;; ++lines) {
    widths.clear();
    for (const int column : shown)
      widths.push_back(columns[static_cast<std::size_t>(column)].widthFor(lines));
    if (sumOf(widths) <= room || lines == kMostLines) break;
    if (lines < kEasyLines || shown.size() <= 2) continue;
    shown.erase(shown.end() - 2);
    lines = 0;
  }
  shareOut(room - sumOf(widths), widths);
  for (int column = 0; column < count; ++column)
    m_list.setColumnHidden(column, std::find(shown.begin(), shown.end(), column) == shown.end());
  for (std::size_t i = 0; i < shown.size(); ++i) m_list.setColumnWidth(shown[i], widths[i]);
}

}  // namespace cw
