// Library tables as CSV: whatever the bytes, each bad row is named and nothing is half imported, or the rows
// join the catalogue and survive writing.
#include "core/base/csv.h"
#include "core/fastener/import.h"
#include "core/fastener/tables.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

using fuzz::require;

/// What is written is read back, and a second writing changes nothing.
void checkRoundTrip(const Library& library) {
  for (const RowKind kind : kRowKinds) {
    if (countOf(library, kind) == 0) continue;
    const std::string written = tableOf(library, kind);
    Library again;
    require(addTable(again, written).empty(), "what is written is read");
    require(tableOf(again, kind) == written, "a second writing changes nothing");
  }
}

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace cw;
  const std::string_view csv = fuzz::text(data, size);
  if (const auto table = parseCsv(csv); !table) fuzz::checkRefusal(table.error());
  const ImportRehearsal rehearsal = rehearseImport(shippedCatalogue(), csv);
  for (const Error& refusal : rehearsal.refused) fuzz::checkRefusal(refusal);
  const auto joined = imported(shippedCatalogue(), rehearsal);
  require(joined.has_value() == rehearsal.clean(), "clean tables are imported, others are not");
  if (!joined) {
    fuzz::checkRefusal(joined.error());
    return 0;
  }
  checkRoundTrip(rehearsal.library);
  return 0;
}
