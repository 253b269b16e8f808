#pragma once
#include <string_view>
#include <vector>

#include "core/base/finding.h"
#include "core/fastener/condition.h"
#include "core/fastener/grade.h"
#include "core/fastener/thread.h"

namespace cw {

/// The rows of a fastener library as plain data, in file order. Catalogue looks things up in it.
struct Library {
  std::vector<Thread> threads;
  std::vector<Grade> grades;
  std::vector<Condition> conditions;
};

/// Reads one table into the library; the header tells which kind of rows it holds. Every row that is refused
/// is one Blocking finding (place "line n, column"); the others are added.
Findings addTable(Library& library, std::string_view csv);

}  // namespace cw
