#include "core/fastener/import.h"

#include <fmt/format.h>

#include "core/fastener/tables_reader.h"

namespace cw {
namespace {

Result<void> checkShopRow(const Catalogue& existing, const CsvRecord& record) {
  CW_CHECK(record.text("author"));
  const std::string& thread = record.optionalText("thread");
  if (thread.empty()) return {};
  if (const auto known = existing.thread(thread); !known)
    return record.refuse("thread", known.error().problem, known.error().expected);
  return {};
}

Result<void> checkNew(const Catalogue& existing, const Library& library, RowKind kind, std::size_t row) {
  for (const std::string& key : keysOf(library, kind, row))
    if (existing.answers(kind, key))
      return fail(ErrorCode::Conflict, "", key, {"the library already has “%1”", {shown(key)}},
                  "add it under another name");
  return {};
}

/// Reads one row and fits it in beside the catalogue's and the earlier ones.
Result<void> fitIn(const Catalogue& existing, const CsvRecord& record, RowKind kind, Library& library,
                   RowIndex& index) {
  CW_CHECK(checkShopRow(existing, record));
  CW_CHECK(addRow(library, kind, record));
  const std::size_t row = countOf(library, kind) - 1;
  auto fits = checkNew(existing, library, kind, row);
  if (fits) fits = index.add(library, kind, row);
  if (fits) return {};
  Error error = fits.error();
  error.place = record.place();
  return fail(std::move(error));
}

}  // namespace

ImportRehearsal rehearseImport(const Catalogue& existing, std::string_view text) {
  ImportRehearsal rehearsal;
  const auto csv = parseCsv(text);
  const auto kind = csv ? kindOf(*csv) : Result<RowKind>(fail(csv.error()));
  if (!kind) {
    rehearsal.findings.push_back(blocking(kind.error()));
    return rehearsal;
  }
  rehearsal.table = nameOf(*kind);
  rehearsal.rows = csv->rows.size();
  RowIndex index;
  for (const CsvRow& row : csv->rows)
    if (const auto fits = fitIn(existing, CsvRecord(*csv, row), *kind, rehearsal.library, index); !fits)
      rehearsal.findings.push_back(blocking(fits.error()));
  return rehearsal;
}

Result<Catalogue> imported(const Catalogue& existing, const ImportRehearsal& rehearsal) {
  if (rehearsal.clean()) return existing.with(rehearsal.library);
  const Finding& first = rehearsal.findings.front();
  return fail({ErrorCode::InvalidInput, first.place, "", first.problem, first.cure});
}

}  // namespace cw
