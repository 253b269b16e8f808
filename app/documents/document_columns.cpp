#include "app/documents/document_columns.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <numeric>

#include "app/common/wording.h"
#include "app/documents/document_objects.h"

namespace cw {
namespace {

constexpr std::size_t kRowsThatCount = 300;
constexpr qreal kLabelShare = 0.26;

qreal widestWordOf(const std::string& text, const QFontMetricsF& metrics) {
  qreal out = 0;
  for (const QString& line : breakable(text).split(QLatin1Char(' ')))
    for (const QString& word : line.split(kMayBreak)) out = std::max(out, metrics.horizontalAdvance(word));
  return std::ceil(out) + 1;
}

qreal widestWordOf(const Cell& cell, const QFontMetricsF& metrics) {
  if (cell.gauge) return gaugeSize(metrics).width();
  return std::max(widestWordOf(cell.text, metrics), widestWordOf(cell.note, metrics));
}

}  // namespace

QString breakable(const std::string& text) {
  constexpr int kLongest = 24, kPiece = 16;
  QStringList words = toQt(text).split(QLatin1Char(' '));
  for (QString& word : words)
    if (word.size() > kLongest)
      for (qsizetype at = (word.size() - 1) / kPiece * kPiece; at > 0; at -= kPiece)
        word.insert(at, kMayBreak);
  return words.join(QLatin1Char(' '));
}

DocumentColumns columnsOf(const Table& table, const QFont& font) {
  QFont bold = font;
  bold.setBold(true);
  const QFontMetricsF metrics(font), heading(bold);
  DocumentColumns out;
  for (const Column& column : table.columns) {
    out.least.push_back(widestWordOf(column.heading, heading));
    out.shares.push_back(column.width);
  }
  for (std::size_t row = 0; row < std::min(table.rows.size(), kRowsThatCount); ++row)
    for (std::size_t c = 0; c < table.rows[row].size(); ++c)
      out.least[c] = std::max(out.least[c], widestWordOf(table.rows[row][c], metrics));
  for (qreal& width : out.least) width += 2 * kCellPadding;
  return out;
}

DocumentColumns columnsOf(const Facts& facts, const QFont& font) {
  const QFontMetricsF metrics(font);
  DocumentColumns out{{0, 0}, {kLabelShare, 1 - kLabelShare}};
  for (const Fact& fact : facts.rows) {
    out.least[0] = std::max(out.least[0], widestWordOf(fact.label, metrics) + 2 * kCellPadding);
    out.least[1] = std::max(out.least[1], widestWordOf(fact.value, metrics) + 2 * kCellPadding);
  }
  return out;
}

std::vector<qreal> DocumentColumns::in(qreal room) const {
  const auto sum = [](const std::vector<qreal>& of) { return std::accumulate(of.begin(), of.end(), 0.0); };
  const qreal spare = room - sum(least);
  if (spare < 0) return {};
  std::vector<qreal> lack;
  for (std::size_t i = 0; i < least.size(); ++i)
    lack.push_back(std::max(0.0, room * shares[i] / sum(shares) - least[i]));
  std::vector<qreal> out = least;
  for (std::size_t i = 0; i < out.size(); ++i) out[i] += sum(lack) > 0 ? spare * lack[i] / sum(lack) : 0;
  return out;
}

}  // namespace cw
