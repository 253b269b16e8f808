#include <algorithm>

#include "core/report/document.h"

namespace cw {
namespace {

/// Characters on a terminal: code points, near enough for what our documents hold.
std::size_t width(const std::string& text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char c) { return (c & '\xC0') != '\x80'; }));
}

std::string padded(const std::string& text, std::size_t to, bool right) {
  const std::string blanks(to > width(text) ? to - width(text) : 0, ' ');
  return right ? blanks + text : text + blanks;
}

std::string shownCell(const Cell& cell) {
  std::string out = cell.ink == Ink::Struck && !cell.text.empty() ? "~~" + cell.text + "~~" : cell.text;
  return cell.note.empty() ? out : out + " " + cell.note;
}

std::string trimmed(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

class LineWriter {
 public:
  std::vector<std::string> of(const Document& document) {
    stamp(document.stamp);
    add(document.title);
    add(document.subtitle);
    if (!document.notice.empty()) add(document.notice);
    for (const Section& section : document.sections) write(section);
    add("");
    for (const std::string& line : document.footer) add(line);
    stamp(document.stamp);
    return std::move(m_out);
  }

  void stamp(const Stamp& stamp) {
    if (!stamp.words.empty()) add(stamp.words + ": " + stamp.reason);
  }
  void operator()(const Paragraph& paragraph) { add(paragraph.text); }
  void operator()(const Facts& facts) {
    std::size_t widest = 0;
    for (const Fact& fact : facts.rows) widest = std::max(widest, width(fact.label));
    for (const Fact& fact : facts.rows) add("  " + padded(fact.label, widest + 2, false) + fact.value);
  }
  void operator()(const Table& table) {
    std::vector<std::size_t> widest;
    for (std::size_t i = 0; i < table.columns.size(); ++i) widest.push_back(widestIn(table, i));
    std::vector<Cell> heading;
    for (const Column& column : table.columns) heading.push_back({column.heading});
    row(table, widest, heading);
    for (const auto& cells : table.rows) row(table, widest, cells);
  }
  void operator()(const JointDrawing& drawing) {
    std::vector<const DrawnPosition*> inOrder;
    for (const DrawnPosition& position : drawing.positions) inOrder.push_back(&position);
    std::sort(inOrder.begin(), inOrder.end(),
              [](const auto* a, const auto* b) { return a->order < b->order; });
    std::string line = " ";
    for (const DrawnPosition* position : inOrder) line += " " + position->label;
    add(line);
  }

 private:
  void add(std::string line) { m_out.push_back(trimmed(std::move(line))); }

  void write(const Section& section) {
    add("");
    if (!section.heading.empty()) add(section.heading);
    for (const Block& block : section.blocks) std::visit(*this, block);
  }

  static std::size_t widestIn(const Table& table, std::size_t column) {
    std::size_t out = width(table.columns[column].heading);
    for (const auto& cells : table.rows) out = std::max(out, width(shownCell(cells[column])));
    return out;
  }

  void row(const Table& table, const std::vector<std::size_t>& widest, const std::vector<Cell>& cells) {
    std::string line = "  ";
    for (std::size_t i = 0; i < cells.size(); ++i)
      line += padded(shownCell(cells[i]), widest[i], table.columns[i].numeric) + "  ";
    add(std::move(line));
  }

  std::vector<std::string> m_out;
};

}  // namespace

std::vector<std::string> lines(const Document& document) {
  return LineWriter().of(document);
}

}  // namespace cw
