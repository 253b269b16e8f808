#include "app/common/document_text.h"

#include <QFontInfo>
#include <QPalette>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>
#include <algorithm>
#include <cmath>

#include "app/common/colours.h"
#include "app/common/document_objects.h"
#include "app/common/wording.h"

namespace cw {
namespace {

constexpr qreal kCellPadding = 5, kLabelShare = 26;

/// A hash or an id has no place where a line may break; in a narrow window it needs one.
QString breakable(const std::string& text) {
  constexpr int kLongest = 24, kPiece = 16;
  QStringList words = toQt(text).split(QLatin1Char(' '));
  for (QString& word : words)
    if (word.size() > kLongest)
      for (qsizetype at = (word.size() - 1) / kPiece * kPiece; at > 0; at -= kPiece)
        word.insert(at, kMayBreak);
  return words.join(QLatin1Char(' '));
}

class TextWriter {
 public:
  TextWriter(QTextDocument& into, const QPalette& palette)
      : m_palette(palette), m_font(into.defaultFont()), m_cursor(&into) {}

  void write(const Document& document) {
    m_cursor.beginEditBlock();
    line(toQt(document.title), inked(inkOf(m_palette), 2, QFont::Bold), 0);
    if (!document.subtitle.empty()) line(toQt(document.subtitle), quiet(), 4);
    if (!document.notice.empty()) band(toQt(document.notice), cautionOf(m_palette), onCautionOf(m_palette));
    for (const Section& section : document.sections) write(section);
    for (const std::string& foot : document.footer) line(breakable(foot), quiet(), 16);
    m_cursor.endEditBlock();
  }

  void operator()(const Paragraph& paragraph) {
    const QString text = toQt(paragraph.text);
    switch (paragraph.tone) {
      case Tone::Plain:
        return line(text, inked(inkOf(m_palette)), 6);
      case Tone::Headline:
        return line(text, inked(inkOf(m_palette), 3, QFont::Bold), 16);
      case Tone::Lead:
        return line(text, inked(inkOf(m_palette), 1), 10);
      case Tone::Strong:
        return line(text, inked(inkOf(m_palette), 0, QFont::Bold), 10);
      case Tone::Quiet:
        return line(text, quiet(), 14);
      case Tone::Caution:
        return band(text, cautionOf(m_palette), onCautionOf(m_palette));
      case Tone::Warning:
        return band(text, warningOf(m_palette), groundOf(m_palette), QFont::Bold);
    }
  }

  void operator()(const Facts& facts) {
    if (facts.rows.empty()) return;
    QTextTable* table = begin(static_cast<int>(facts.rows.size()), {kLabelShare, 100 - kLabelShare}, false);
    for (std::size_t i = 0; i < facts.rows.size(); ++i) {
      const int row = static_cast<int>(i);
      cell(*table, row, 0).insertText(toQt(facts.rows[i].label), quiet());
      cell(*table, row, 1).insertText(breakable(facts.rows[i].value), inked(inkOf(m_palette)));
    }
    leave();
  }

  void operator()(const Table& content) {
    std::vector<qreal> widths;
    for (const Column& column : content.columns) widths.push_back(column.width);
    QTextTable* table = begin(static_cast<int>(content.rows.size()) + 1, widths, true);
    for (std::size_t c = 0; c < content.columns.size(); ++c) {
      QTextCursor at = aligned(*table, 0, static_cast<int>(c), content.columns[c]);
      at.insertText(toQt(content.columns[c].heading), quiet(QFont::Bold));
    }
    for (std::size_t r = 0; r < content.rows.size(); ++r)
      for (std::size_t c = 0; c < content.rows[r].size(); ++c)
        write(content.rows[r][c],
              aligned(*table, static_cast<int>(r) + 1, static_cast<int>(c), content.columns[c]));
    leave();
  }

  void operator()(const JointDrawing& drawing) {
    next(12);
    m_cursor.insertText(QString(QChar::ObjectReplacementCharacter), jointFormat(drawing));
  }

 private:
  void write(const Section& section) {
    if (!section.heading.empty()) line(toQt(section.heading), inked(inkOf(m_palette), 1, QFont::Bold), 28);
    for (const Block& block : section.blocks) std::visit(*this, block);
  }

  void write(const Cell& content, QTextCursor at) const {
    if (content.gauge) {
      at.insertText(QString(QChar::ObjectReplacementCharacter), gaugeFormat(*content.gauge));
      return;
    }
    QTextCharFormat format =
        content.ink == Ink::Full ? inked(inkOf(m_palette)) : inked(secondInkOf(m_palette));
    format.setFontStrikeOut(content.ink == Ink::Struck);
    at.insertText(breakable(content.text), format);
  }

  QTextCharFormat inked(const QColor& colour, int steps = 0, QFont::Weight weight = QFont::Normal) const {
    QTextCharFormat format;
    format.setForeground(colour);
    format.setFontWeight(weight);
    format.setFontPointSize(QFontInfo(m_font).pointSizeF() * std::pow(1.25, steps));
    return format;
  }
  QTextCharFormat quiet(QFont::Weight weight = QFont::Normal) const {
    return inked(secondInkOf(m_palette), 0, weight);
  }

  /// A new paragraph so far below the last.
  void next(qreal above) {
    QTextBlockFormat block;
    block.setTopMargin(above);
    if (m_cursor.atStart())
      m_cursor.setBlockFormat(block);
    else
      m_cursor.insertBlock(block);
  }

  void line(const QString& text, const QTextCharFormat& format, qreal above) {
    next(above);
    m_cursor.insertText(text, format);
  }

  /// Text on a ground of its own.
  void band(const QString& text, const QColor& colour, const QColor& ink,
            QFont::Weight weight = QFont::Normal) {
    QTextTable* table = begin(1, {100}, false);
    QTextTableCellFormat ground;
    ground.setBackground(colour);
    ground.setPadding(8);
    table->cellAt(0, 0).setFormat(ground);
    cell(*table, 0, 0).insertText(text, inked(ink, 0, weight));
    leave();
  }

  QTextTable* begin(int rows, const std::vector<qreal>& widths, bool ruled) {
    qreal sum = 0;
    for (const qreal width : widths) sum += width;
    QTextTableFormat format;
    QList<QTextLength> columns;
    for (const qreal width : widths) columns << QTextLength(QTextLength::PercentageLength, width / sum * 100);
    // The widest gives way where a heading needs more than its share.
    columns[std::max_element(widths.begin(), widths.end()) - widths.begin()] = QTextLength();
    format.setColumnWidthConstraints(columns);
    // The columns' shares are rounded up; a hundred per cent would scroll sideways by a pixel.
    format.setWidth(QTextLength(QTextLength::PercentageLength, 99.8));
    format.setBorder(0);
    format.setCellSpacing(0);
    format.setCellPadding(kCellPadding);
    format.setTopMargin(8);
    format.setHeaderRowCount(ruled ? 1 : 0);
    QTextTable* table = m_cursor.insertTable(rows, static_cast<int>(widths.size()), format);
    if (ruled) rule(*table);
    return table;
  }

  /// A line below each row.
  void rule(QTextTable& table) const {
    QTextTableCellFormat ruled;
    ruled.setBottomBorder(1);
    ruled.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    ruled.setBottomBorderBrush(lineOf(m_palette));
    ruled.setPadding(kCellPadding);
    for (int row = 0; row < table.rows(); ++row)
      for (int column = 0; column < table.columns(); ++column) table.cellAt(row, column).setFormat(ruled);
  }

  static QTextCursor cell(const QTextTable& table, int row, int column) {
    return table.cellAt(row, column).firstCursorPosition();
  }
  static QTextCursor aligned(const QTextTable& table, int row, int column, const Column& of) {
    QTextCursor at = cell(table, row, column);
    if (!of.numeric) return at;
    QTextBlockFormat right;
    right.setAlignment(Qt::AlignRight);
    at.setBlockFormat(right);
    return at;
  }

  void leave() { m_cursor.movePosition(QTextCursor::End); }

  const QPalette& m_palette;
  QFont m_font;
  QTextCursor m_cursor;
};

}  // namespace

void writeDocument(const Document& document, QTextDocument& into, const QPalette& palette) {
  into.setUndoRedoEnabled(false);
  into.clear();
  TextWriter(into, palette).write(document);
}

}  // namespace cw
