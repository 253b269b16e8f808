#include "core/fastener/tables.h"

#include <algorithm>

#include "core/base/near_name.h"
#include "core/fastener/row_keys.h"
#include "core/fastener/tables_reader.h"

namespace cw {
namespace {

constexpr std::string_view kCommonColumns[] = {"known", "source", "author", "note"};

template <auto Member>
std::size_t countRows(const Library& library) {
  return (library.*Member).size();
}

template <auto Member>
std::vector<std::string> keysOfRow(const Library& library, std::size_t row) {
  return row < (library.*Member).size() ? rowKeys((library.*Member)[row]) : std::vector<std::string>();
}

template <auto Member>
void dropLastRow(Library& library) {
  (library.*Member).pop_back();
}

template <auto Member>
Cells cellsOfRow(const Library& library, std::size_t row) {
  return cellsOf((library.*Member).at(row));
}

struct Table {
  RowKind kind;
  std::string_view name;
  Columns (*columns)();
  Result<void> (*add)(Library&, const CsvRecord&);
  std::size_t (*count)(const Library&);
  std::vector<std::string> (*keys)(const Library&, std::size_t);
  Cells (*cells)(const Library&, std::size_t);
  void (*dropLast)(Library&);
};

template <auto Member>
constexpr Table table(RowKind kind, std::string_view name, Columns (*columns)(),
                      Result<void> (*add)(Library&, const CsvRecord&)) {
  return {kind,
          name,
          columns,
          add,
          &countRows<Member>,
          &keysOfRow<Member>,
          &cellsOfRow<Member>,
          &dropLastRow<Member>};
}

/// In the order of RowKind.
constexpr Table kTables[] = {
    table<&Library::threads>(RowKind::Thread, "threads", &columnsOfThreads, &addThread),
    table<&Library::grades>(RowKind::Grade, "grades", &columnsOfGrades, &addGrade),
    table<&Library::conditions>(RowKind::Condition, "conditions", &columnsOfConditions, &addCondition),
    table<&Library::materials>(RowKind::Material, "tapped_materials", &columnsOfMaterials, &addMaterial),
    table<&Library::heads>(RowKind::Head, "bearing_faces", &columnsOfHeads, &addHead),
    table<&Library::holes>(RowKind::ClearanceHole, "clearance_holes", &columnsOfHoles, &addHole),
    table<&Library::limits>(RowKind::SizeLimits, "thread_limits", &columnsOfLimits, &addLimits),
    table<&Library::prevailingTorques>(RowKind::PrevailingTorque, "prevailing_torques",
                                       &columnsOfPrevailingTorques, &addPrevailingTorque),
    table<&Library::toolClasses>(RowKind::ToolClass, "tool_classes", &columnsOfToolClasses, &addToolClass)};

const Table& tableOfKind(RowKind kind) {
  return kTables[static_cast<std::size_t>(kind)];
}

Columns headerOf(const Table& table) {
  Columns all = table.columns();
  all.insert(all.end(), std::begin(kCommonColumns), std::end(kCommonColumns));
  return all;
}

bool sameColumns(const Columns& columns, const std::vector<std::string>& header) {
  return columns.size() == header.size() &&
         std::all_of(columns.begin(), columns.end(), [&](std::string_view column) {
           return std::find(header.begin(), header.end(), column) != header.end();
         });
}

/// The table that shares most columns with a header that is no table's: what somebody probably meant.
const Table& likest(const std::vector<std::string>& header) {
  const auto shared = [&](const Table& table) {
    const Columns columns = table.columns();
    return std::count_if(columns.begin(), columns.end(), [&](std::string_view column) {
      return std::find(header.begin(), header.end(), column) != header.end();
    });
  };
  return *std::max_element(std::begin(kTables), std::end(kTables),
                           [&](const Table& a, const Table& b) { return shared(a) < shared(b); });
}

}  // namespace

std::string_view nameOf(RowKind kind) {
  return tableOfKind(kind).name;
}

std::optional<RowKind> kindNamed(std::string_view name) {
  for (const Table& table : kTables)
    if (table.name == name) return table.kind;
  return std::nullopt;
}

std::vector<std::string> columnsOf(RowKind kind) {
  const Columns header = headerOf(tableOfKind(kind));
  return {header.begin(), header.end()};
}

std::size_t countOf(const Library& library, RowKind kind) {
  return tableOfKind(kind).count(library);
}

void dropLast(Library& library, RowKind kind) {
  tableOfKind(kind).dropLast(library);
}

std::vector<std::string> keysOf(const Library& library, RowKind kind, std::size_t row) {
  return tableOfKind(kind).keys(library, row);
}

Result<RowKind> kindOf(const Csv& csv) {
  for (const Table& table : kTables)
    if (sameColumns(headerOf(table), csv.header)) return table.kind;
  const Table& meant = likest(csv.header);
  std::vector<std::string> columns;
  for (const std::string_view column : headerOf(meant)) columns.emplace_back(column);
  return fail(ErrorCode::InvalidInput, "header", csvLine(csv.header), "the columns are those of no table",
              {"a table of %1 has %2", {std::string(meant.name), listed(columns)}});
}

Result<void> addRow(Library& library, RowKind kind, const CsvRecord& record) {
  return tableOfKind(kind).add(library, record);
}

Findings addTable(Library& library, std::string_view text) {
  const auto csv = parseCsv(text);
  if (!csv) return {blocking(csv.error())};
  const auto kind = kindOf(*csv);
  if (!kind) return {blocking(kind.error())};
  Findings findings;
  for (const CsvRow& row : csv->rows)
    if (const auto added = addRow(library, *kind, CsvRecord(*csv, row)); !added)
      findings.push_back(blocking(added.error()));
  return findings;
}

std::vector<std::string> cellsOf(const Library& library, RowKind kind, std::size_t row) {
  return tableOfKind(kind).cells(library, row);
}

std::string tableOf(const Library& library, RowKind kind) {
  std::string out = csvLine(columnsOf(kind));
  for (std::size_t row = 0; row < countOf(library, kind); ++row) out += csvLine(cellsOf(library, kind, row));
  return out;
}

Finding blocking(const Error& error) {
  return {Severity::Blocking, "bad-row", error.place, error.problem, error.expected};
}

}  // namespace cw
