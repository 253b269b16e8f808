#include "core/fastener/library.h"

#include <algorithm>

#include "core/base/near_name.h"
#include "core/fastener/library_rows.h"

namespace cw {
namespace {

struct TableKind {
  std::string_view rows;
  std::vector<std::string_view> columns;
  Result<void> (*add)(Library&, const CsvRecord&);
};

const std::vector<TableKind>& tableKinds() {
  static const std::vector<TableKind> kKinds = {
      {"threads",
       {"designation", "diameter", "pitch", "threads_per_inch", "stress_area", "unit"},
       &addThread},
      {"grades",
       {"name", "aliases", "threads", "size_from", "size_up_to", "size_unit", "proof", "yield", "tensile",
        "stress_unit"},
       &addGrade},
      {"conditions", {"name", "aliases", "label", "quantity", "low", "typical", "high"}, &addCondition},
  };
  return kKinds;
}

constexpr std::string_view kCommonColumns[] = {"known", "source", "author", "note"};

bool isHeaderOf(const TableKind& kind, const std::vector<std::string>& header) {
  const auto has = [&](std::string_view column) {
    return std::find(header.begin(), header.end(), column) != header.end();
  };
  return header.size() == kind.columns.size() + std::size(kCommonColumns) &&
         std::all_of(kind.columns.begin(), kind.columns.end(), has) &&
         std::all_of(std::begin(kCommonColumns), std::end(kCommonColumns), has);
}

Finding blocking(const Error& error, std::string code) {
  return {Severity::Blocking, std::move(code), error.place, error.problem, error.expected};
}

}  // namespace

Findings addTable(Library& library, std::string_view csv) {
  const auto table = parseCsv(csv);
  if (!table) return {blocking(table.error(), "not-a-table")};
  const auto kind = std::find_if(tableKinds().begin(), tableKinds().end(),
                                 [&](const TableKind& each) { return isHeaderOf(each, table->header); });
  if (kind == tableKinds().end()) {
    std::vector<std::string> known;
    for (const TableKind& each : tableKinds()) known.emplace_back(each.rows);
    return {{Severity::Blocking,
             "unknown-columns",
             "header",
             "the columns are those of no table",
             {"the columns of an exported table of %1", {listed(known, "or")}}}};
  }
  Findings findings;
  for (const CsvRow& row : table->rows)
    if (const auto added = kind->add(library, CsvRecord(*table, row)); !added)
      findings.push_back(blocking(added.error(), "bad-row"));
  return findings;
}

}  // namespace cw
