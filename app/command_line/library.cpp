#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/output_options.h"
#include "core/base/csv.h"
#include "core/base/found.h"
#include "core/base/near_name.h"
#include "core/fastener/catalogue.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct LibraryOptions {
  std::string words, kind, file, by, pinFile = "-";
  OutputOptions out;
  int limit = 50;
  bool own = false, dryRun = false;
};

Result<std::optional<RowKind>> kindOf(const LibraryOptions& given) {
  if (given.kind.empty()) return std::optional<RowKind>();
  if (const auto kind = kindNamed(given.kind)) return kind;
  std::vector<std::string> names;
  for (const RowKind kind : kRowKinds) names.emplace_back(nameOf(kind));
  return fail(ErrorCode::InvalidInput, "--kind", given.kind,
              {"“%1” is no table of the library", {shown(given.kind)}}, {"write %1", {listed(names, "or")}});
}

/// The shop of --shop, or none.
Result<std::unique_ptr<Shop>> shopIfNamed(const Options& options, Clock& clock) {
  if (options.shopFile.empty()) return std::unique_ptr<Shop>();
  return openShop(options, clock);
}

Json valuesOf(const Catalogue& catalogue, RowKind kind, std::size_t row) {
  Json out(Json::Object{});
  const std::vector<std::string> columns = columnsOf(kind), cells = cellsOf(catalogue.rows(), kind, row);
  for (std::size_t i = 0; i < columns.size(); ++i) out.set(columns[i], cells[i]);
  return out;
}

void describe(const SearchEntry& entry, bool own, Json values, Reply& reply, Json::Array& rows) {
  Json one;
  one.set("kind", nameOf(entry.kind))
      .set("name", entry.name)
      .set("alias", entry.alias)
      .set("note", entry.note);
  one.set("origin", own ? "shop" : "shipped").set("values", std::move(values));
  rows.push_back(std::move(one));
  std::string line = entry.name + "  (" + std::string(nameOf(entry.kind)) + (own ? ", the shop's" : "") + ")";
  if (!entry.note.empty()) line += "  " + entry.note;
  reply.lines.push_back(std::move(line));
}

Result<Reply> listRows(const LibraryOptions& given, const Options& options) {
  CW_TRY(wanted, kindOf(given));
  SystemClock clock;
  CW_TRY(shop, shopIfNamed(options, clock));
  const Catalogue* catalogue = &shippedCatalogue();
  Reply reply;
  Json::Array rows, leftOut;
  if (shop) {
    CW_TRY(all, shop->library().catalogue());
    CW_TRY(errors, shop->library().leftOut());
    catalogue = all;
    for (const Error& error : *errors) {
      leftOut.push_back(Json(sentence(error)));
      reply.lines.push_back("not in use: " + sentence(error));
    }
  }
  for (const RowKind kind : kRowKinds) {
    if (wanted && kind != *wanted) continue;
    const std::size_t shipped = countOf(shippedCatalogue().rows(), kind);
    for (std::size_t row = given.own ? shipped : 0; row < countOf(catalogue->rows(), kind); ++row)
      describe(searchEntry(catalogue->rows(), kind, row), row >= shipped, valuesOf(*catalogue, kind, row),
               reply, rows);
  }
  reply.json.set("rows", std::move(rows)).set("left_out", std::move(leftOut));
  return reply;
}

Result<Reply> findRows(const LibraryOptions& given, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, shopIfNamed(options, clock));
  CW_TRY(shipped, LibrarySearch::of(shippedCatalogue().rows()));
  ShopLibrary* own = shop ? &shop->library() : nullptr;
  CW_TRY(hits, findInLibrary(shipped, own, given.words, static_cast<std::size_t>(given.limit)));
  Reply reply;
  Json::Array rows;
  for (const LibraryHit& hit : hits.rows) {
    if (hit.shopRow == 0) {
      describe(hit.entry, false, valuesOf(shippedCatalogue(), hit.entry.kind, hit.entry.row), reply, rows);
      continue;
    }
    CW_TRY(catalogue, own->catalogue());
    CW_TRY(at, ifFound(own->place(hit.shopRow)));
    describe(hit.entry, true, at ? valuesOf(*catalogue, at->kind, at->row) : Json(Json::Object{}), reply,
             rows);
  }
  reply.yes = !hits.rows.empty();
  if (hits.rows.empty()) reply.lines.push_back("nothing fits");
  reply.json.set("rows", std::move(rows));
  sayOfHowMany(reply, hits.rows.size(), hits.total, "rows");
  return reply;
}

/// "line 3, yield" in its two parts.
Json describe(const Error& error) {
  Json out;
  const std::size_t comma = error.place.find(", ");
  const std::string line = error.place.substr(0, comma);
  if (line.starts_with("line ")) out.set("line", std::stoi(line.substr(5)));
  if (comma != std::string::npos) out.set("column", error.place.substr(comma + 2));
  out.set("place", error.place).set("value", error.value);
  out.set("problem", plain(error.problem)).set("expected", plain(error.expected));
  return out;
}

/// What an import would do, or why none of it is done.
Reply report(const ImportRehearsal& rehearsal) {
  Reply reply;
  Json::Array refused;
  for (const Error& error : rehearsal.refused) {
    refused.push_back(describe(error));
    reply.lines.push_back(sentence(error));
  }
  const std::string table(rehearsal.kind ? nameOf(*rehearsal.kind) : "");
  reply.yes = rehearsal.clean();
  reply.json.set("table", table).set("rows", static_cast<std::int64_t>(rehearsal.rows));
  reply.json.set("good", static_cast<std::int64_t>(rehearsal.taken.size()))
      .set("refused", std::move(refused));
  reply.lines.push_back(reply.yes ? std::to_string(rehearsal.rows) + " rows of " + table + " can be taken in"
                                  : "none of the " + std::to_string(rehearsal.rows) + " rows is taken in; " +
                                        std::to_string(rehearsal.refused.size()) + " refusals stand above");
  return reply;
}

Result<Reply> importRows(const LibraryOptions& given, const Options& options, Terminal& terminal) {
  CW_TRY(csv, readFile(given.file, kLargestLibraryTable));
  SystemClock clock;
  if (given.dryRun && options.shopFile.empty()) {
    Reply reply = report(rehearseImport(shippedCatalogue(), csv));
    reply.json.set("imported", 0);
    return reply;
  }
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(rehearsal, shop->library().rehearse(csv));
  Reply reply = report(rehearsal);
  reply.json.set("imported", 0);
  if (given.dryRun || !reply.yes) return reply;
  if (given.by.empty())
    return fail(ErrorCode::InvalidInput, "--by", "", "nobody says that these rows are right",
                "add --by and the sign of a trainer or shop lead");
  CW_TRY(deed, signedDeed(*shop, clock, given.by, given.pinFile, terminal));
  deed.remark = given.file;
  CW_TRY(count, shop->library().import(csv, deed));
  reply.lines = {"took in " + std::to_string(count) + " rows of " + std::string(nameOf(*rehearsal.kind))};
  reply.json.set("imported", static_cast<std::int64_t>(count));
  return reply;
}

Result<Reply> exportRows(const LibraryOptions& given, const Options& options) {
  CW_TRY(wanted, kindOf(given));
  SystemClock clock;
  CW_TRY(shop, shopIfNamed(options, clock));
  std::string table = given.own ? csvLine(columnsOf(*wanted)) : tableOf(shippedCatalogue().rows(), *wanted);
  if (shop) {
    CW_TRY(own, shop->library().table(*wanted));
    table += own.substr(own.find('\n') + 1);
  }
  Reply reply;
  reply.json.set("table", given.kind)
      .set("rows", static_cast<std::int64_t>(std::count(table.begin(), table.end(), '\n') - 1));
  if (!given.out.named()) {
    reply.json.set("csv", table);
    reply.file = std::move(table);
    return reply;
  }
  CW_CHECK(writeFile(given.out.file, table, given.out.existing()));
  reply.lines.push_back("wrote " + given.out.file);
  return reply;
}

}  // namespace

void addLibrary(Commands& commands) {
  CLI::App* library = commands.program.add_subcommand(
      "library", "List, find, import and export threads, grades, conditions and what else has a name");
  library->require_subcommand(1);
  auto given = std::make_shared<LibraryOptions>();

  CLI::App* list = library->add_subcommand("list", "List rows; with --shop the shop's own too");
  list->add_option("--kind", given->kind, "One table only: threads, grades, conditions …");
  list->add_flag("--own", given->own, "The shop's own rows only");
  commands.add(list, [given](const Options& options, Terminal&) { return listRows(*given, options); });

  CLI::App* find =
      library->add_subcommand("find", "Find rows by the beginnings of words; exit 1 if none fits");
  find->add_option("words", given->words, "3/8-16, M8x1, 8.8, #10, moly …")->required();
  addLimit(find, given->limit);
  commands.add(find, [given](const Options& options, Terminal&) { return findRows(*given, options); });

  CLI::App* import = library->add_subcommand(
      "import", "Take a CSV table into the shop's library, all of it or nothing; exit 1 if rows are refused");
  import->add_option("file", given->file, "CSV table")->required();
  import->add_flag("--dry-run", given->dryRun, "Only say what would be taken in and what is wrong");
  import->add_option("--by", given->by, "Sign of a trainer or shop lead");
  import->add_option("--pin-file", given->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
  commands.add(import, [given](const Options& options, Terminal& terminal) {
    return importRows(*given, options, terminal);
  });

  CLI::App* exported = library->add_subcommand("export", "Write one table as CSV");
  exported->add_option("--kind", given->kind, "Table: threads, grades, conditions …")->required();
  exported->add_flag("--own", given->own, "The shop's own rows only");
  addOutput(exported, given->out, "Where to write it; without, on standard output");
  commands.add(exported, [given](const Options& options, Terminal&) { return exportRows(*given, options); });
}

}  // namespace cw
