#include "app/common/column_fit.h"

#include <QEvent>
#include <QHeaderView>
#include <QRegularExpression>
#include <QTableView>
#include <algorithm>
#include <numeric>

namespace cw {
namespace {

constexpr int kCellMargin = 16, kMostRowsMeasured = 200;
constexpr int kHalf = 62;  ///< per cent of a line: words are not halved

int widestWord(const QString& text, const QFontMetrics& metrics) {
  static const QRegularExpression kBreaks(QStringLiteral("[ \\n]+"));
  int out = 0;
  for (const QString& word : text.split(kBreaks, Qt::SkipEmptyParts))
    out = std::max(out, metrics.horizontalAdvance(word));
  return out;
}

/// The columns to show in so much room: the first and last at least.
std::vector<int> columnsIn(int room, const std::vector<int>& least) {
  std::vector<int> shown(least.size());
  std::iota(shown.begin(), shown.end(), 0);
  const auto width = [&] {
    return std::accumulate(shown.begin(), shown.end(), 0, [&](int sum, int column) {
      return sum + least[static_cast<std::size_t>(column)];
    });
  };
  while (shown.size() > 2 && width() > room) shown.erase(shown.end() - 2);
  return shown;
}

/// Room that is left goes first to the columns whose text would wrap, then to all.
void shareOut(int spare, const std::vector<int>& lack, std::vector<int>& width) {
  const int lacking = std::accumulate(lack.begin(), lack.end(), 0);
  const int given = std::clamp(spare, 0, lacking);
  for (std::size_t i = 0; i < width.size(); ++i) {
    const int share = lacking > 0 ? lack[i] * given / lacking : 0;
    width[i] += share;
    spare -= share;
  }
  for (std::size_t i = 0; i < width.size(); ++i) {
    const int share = std::max(0, spare) / static_cast<int>(width.size() - i);
    width[i] += share;
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

int ColumnFit::leastWidth(int column) const {
  const QAbstractItemModel& model = *m_list.model();
  // The heading's sign of sorting takes a letter's room.
  int out = m_list.horizontalHeader()->fontMetrics().horizontalAdvance(
                model.headerData(column, Qt::Horizontal).toString()) +
            kCellMargin;
  const QFontMetrics metrics = m_list.fontMetrics();
  for (int row = 0; row < std::min(model.rowCount(), kMostRowsMeasured); ++row)
    out = std::max(out, widestWord(model.index(row, column).data().toString(), metrics));
  return out + kCellMargin;
}

/// So wide that each of its lines stands in two at most.
int ColumnFit::wantedWidth(int column) const {
  const QAbstractItemModel& model = *m_list.model();
  int out = 0;
  for (int row = 0; row < std::min(model.rowCount(), kMostRowsMeasured); ++row)
    for (const QString& line : model.index(row, column).data().toString().split(QLatin1Char('\n')))
      out = std::max(out, m_list.fontMetrics().horizontalAdvance(line));
  return out * kHalf / 100 + kCellMargin;
}

void ColumnFit::fit() {
  const int count = m_list.model()->columnCount(), room = m_list.viewport()->width();
  if (count == 0) return;
  std::vector<int> least;
  for (int column = 0; column < count; ++column) least.push_back(leastWidth(column));
  const std::vector<int> shown = columnsIn(room, least);
  int spare = room;
  for (const int column : shown) spare -= least[static_cast<std::size_t>(column)];
  for (int column = 0; column < count; ++column)
    m_list.setColumnHidden(column, std::find(shown.begin(), shown.end(), column) == shown.end());
  std::vector<int> width, lack;
  for (const int column : shown) {
    width.push_back(least[static_cast<std::size_t>(column)]);
    lack.push_back(std::max(0, wantedWidth(column) - width.back()));
  }
  shareOut(spare, lack, width);
  for (std::size_t i = 0; i < shown.size(); ++i) m_list.setColumnWidth(shown[i], width[i]);
}

}  // namespace cw
