#pragma once
#include <cstddef>
#include <vector>

namespace cw {

/// The rows of a list that ends after so many, and how many would fit in all. Both are of one moment.
template <class Row>
struct Listed {
  std::vector<Row> rows;
  std::size_t total = 0;

  bool cut() const { return rows.size() < total; }
};

}  // namespace cw
