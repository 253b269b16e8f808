#include "app/documents/document_text.h"

#include <QFontInfo>
#include <QPalette>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/documents/document_objects.h"
#include "app/look/colours.h"

namespace cw {
namespace {

QList<QTextLength> fixed(const std::vector<qreal>& widths) {
  QList<QTextLength> out;
  for (const qreal width : widths) out << QTextLength(QTextLength::FixedLength, std::floor(width));
  return out;
}

class TextWriter {
 public:
  TextWriter(QTextDocument& into, const QPalette& palette, qreal room)
      : m_palette(palette), m_room(room), m_font(into.defaultFont()), m_cursor(&into) {}

  std::vector<WrittenTable> write(const Document& document) {
    m_cursor.beginEditBlock();
    line(toQt(document.title), inked(inkOf(m_palette), 2, QFont::Bold), 0);
    if (!document.subtitle.empty()) line(toQt(document.subtitle), quiet(), 4);
    if (!document.notice.empty()) band(toQt(document.notice), cautionOf(m_palette), onCautionOf(m_palette));
    for (const Section& section : document.sections) write(section);
    for (const std::string& foot : document.footer) line(breakable(foot), quiet(), 16);
    m_cursor.endEditBlock();
    return std::move(m_tables);
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
    QTextTable* table = begin(static_cast<int>(facts.rows.size()), {columnsOf(facts, m_font)});
    for (std::size_t i = 0; i < facts.rows.size(); ++i) {
      const int row = static_cast<int>(i);
      cell(*table, row, 0).insertText(toQt(facts.rows[i].label), quiet());
      cell(*table, row, 1).insertText(breakable(facts.rows[i].value), inked(inkOf(m_palette)));
    }
    leave();
  }

  void operator()(const Table& content) {
    if (content.rows.empty()) return;
    DocumentColumns columns = columnsOf(content, m_font);
    columns.in(m_room).empty() ? writeStacked(content, std::move(columns))
                               : writeAcross(content, std::move(columns));
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

  void writeAcross(const Table& content, DocumentColumns columns) {
    QTextTable* table =
        begin(static_cast<int>(content.rows.size()) + 1, {std::move(columns), WrittenTable::Form::Across});
    rule(*table, 1);
    setHeaderRow(*table);
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

  /// A row of the table takes as many lines as it has cells.
  void writeStacked(const Table& content, DocumentColumns columns) {
    Facts headings;
    for (const Column& column : content.columns) headings.rows.push_back({column.heading, {}});
    const int lines = static_cast<int>(content.columns.size());
    QTextTable* table =
        begin(static_cast<int>(content.rows.size()) * lines,
              {std::move(columns), WrittenTable::Form::Stacked, columnsOf(headings, m_font).least.front()});
    rule(*table, lines);
    for (std::size_t r = 0; r < content.rows.size(); ++r)
      for (std::size_t c = 0; c < content.rows[r].size(); ++c) {
        const int line = static_cast<int>(r) * lines + static_cast<int>(c);
        cell(*table, line, 0).insertText(toQt(content.columns[c].heading), quiet());
        write(content.rows[r][c], cell(*table, line, 1));
      }
    leave();
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
    if (!content.note.empty()) at.insertText(QLatin1Char(' ') + breakable(content.note), quiet());
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
    QTextTable* table = begin(1, {{{0}, {1}}});
    QTextTableCellFormat ground;
    ground.setBackground(colour);
    ground.setPadding(8);
    table->cellAt(0, 0).setFormat(ground);
    cell(*table, 0, 0).insertText(text, inked(ink, 0, weight));
    leave();
  }

  QTextTable* begin(int rows, WrittenTable written) {
    const std::vector<qreal> widths = written.widthsIn(m_room);
    QTextTableFormat format;
    format.setColumnWidthConstraints(fixed(widths));
    format.setBorder(0);
    format.setCellSpacing(0);
    format.setCellPadding(kCellPadding);
    format.setTopMargin(8);
    written.table = m_cursor.insertTable(rows, static_cast<int>(widths.size()), format);
    m_tables.push_back(written);
    return written.table;
  }

  static void setHeaderRow(QTextTable& table) {
    QTextTableFormat format = table.format();
    format.setHeaderRowCount(1);
    table.setFormat(format);
  }

  /// A line below every so many rows.
  void rule(QTextTable& table, int every) const {
    QTextTableCellFormat ruled;
    ruled.setBottomBorder(1);
    ruled.setBottomBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    ruled.setBottomBorderBrush(lineOf(m_palette));
    ruled.setPadding(kCellPadding);
    for (int row = every - 1; row < table.rows(); row += every)
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
  qreal m_room;
  QFont m_font;
  QTextCursor m_cursor;
  std::vector<WrittenTable> m_tables;
};

}  // namespace

std::vector<qreal> WrittenTable::widthsIn(qreal room) const {
  const std::vector<qreal> unbroken = columns.in(room);
  switch (form) {
    case Form::Across:
      return unbroken;
    case Form::Stacked: {
      if (!unbroken.empty()) return {};
      const qreal headings = std::min(label, room / 2);
      return {headings, room - headings};
    }
    case Form::Free:
      break;
  }
  const DocumentColumns breakingWords{std::vector<qreal>(columns.least.size(), 0), columns.shares};
  return unbroken.empty() ? breakingWords.in(room) : unbroken;
}

WrittenDocument::WrittenDocument(const Document& document, QTextDocument& into, const QPalette& palette,
                                 qreal room) {
  into.setUndoRedoEnabled(false);
  into.clear();
  m_tables = TextWriter(into, palette, room).write(document);
}

bool WrittenDocument::fit(qreal room) {
  const auto stays = [room](const WrittenTable& written) { return !written.widthsIn(room).empty(); };
  if (!std::all_of(m_tables.begin(), m_tables.end(), stays)) return false;
  if (m_tables.empty()) return true;
  QTextCursor all(m_tables.front().table->document());
  all.beginEditBlock();
  for (const WrittenTable& written : m_tables) {
    QTextTableFormat format = written.table->format();
    format.setColumnWidthConstraints(fixed(written.widthsIn(room)));
    written.table->setFormat(format);
  }
  all.endEditBlock();
  return true;
}

}  // namespace cw
