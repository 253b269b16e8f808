#pragma once
#include <vector>

#include "app/print/pages.h"
#include "app/print/paper.h"
#include "app/print/set_text.h"
#include "core/report/document.h"

namespace cw {

/// Sets a table: headings again on each page, rows kept whole where a page can hold them.
class TableSetter {
 public:
  TableSetter(const Table& table, const Paper& paper, Pages& pages);

  void set();

 private:
  /// A row's cells, broken into lines.
  struct SetRow {
    std::vector<SetText> cells;
    std::vector<std::optional<Gauge>> gauges;
    double height = 0;
  };

  void setHead();
  void setRow(const SetRow& row);
  void setSlices(const SetRow& row);
  void putSlice(const SetRow& row, int first, int lines, bool last);
  SetRow broken(const std::vector<Cell>& cells) const;
  TextLook lookOf(const Cell& cell, bool numeric) const;

  const Table& m_table;
  const Paper& m_paper;
  Pages& m_pages;
  std::vector<double> m_left, m_width;  ///< of each column, without the gap between them
};

}  // namespace cw
