#include "core/store/shop_library.h"

#include <algorithm>
#include <map>

#include "core/base/csv.h"
#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/people.h"
#include "core/store/typed_words.h"

namespace cw {
namespace {

/// The last state of each row that is not withdrawn. A bare column beside max() is that of the largest.
constexpr std::string_view kCurrent =
    "SELECT row, kind, line, event, max(number) FROM library_revision GROUP BY row HAVING event <> "
    "'withdrawn'";

struct StoredLine {
  std::int64_t row = 0;
  std::string kind, line;
};

std::string headerOf(RowKind kind) {
  return csvLine(columnsOf(kind));
}

tl::unexpected<Error> damagedLine(std::string_view table) {
  return fail(ErrorCode::Corrupt, "library, " + std::string(table), "", "a row of the library cannot be read",
              "put back a backup");
}

Result<std::vector<std::string>> cellsIn(RowKind kind, const std::string& line) {
  CW_TRY(table, parseCsv(headerOf(kind) + line));
  if (table.rows.size() == 1) return std::move(table.rows.front().cells);
  return damagedLine(nameOf(kind));
}

tl::unexpected<Error> noRow(std::int64_t row) {
  return fail(ErrorCode::NotFound, "row", std::to_string(row),
              {"the shop's library has no row %1", {std::to_string(row)}}, "choose one that is listed");
}

Result<void> insertRevision(Connection& connection, std::int64_t row, RowKind kind, std::string_view event,
                            const std::string& line, const Deed& deed) {
  return connection.run(
      "INSERT INTO library_revision(row, kind, event, line, at, by, remark) VALUES (?, ?, ?, ?, ?, ?, ?)",
      {row, nameOf(kind), event, line, rfc3339(deed.at), deed.by, deed.remark});
}

Result<RowKind> kindIn(const std::string& word) {
  if (const auto kind = kindNamed(word)) return *kind;
  return damagedLine(shown(word));
}

Result<LibraryHit> hitOf(const SqlRows& row) {
  CW_TRY(kind, kindIn(row.text(4)));
  return LibraryHit{{kind, 0, row.text(1), row.text(2), row.text(3)}, row.integer(0), 3};
}

Result<std::int64_t> lastNumber(Connection& connection) {
  CW_TRY(last, first(connection, "SELECT coalesce(max(number), 0) FROM library_revision", {},
                     [](const SqlRows& row) { return row.integer(0); }));
  return last.value_or(0);
}

}  // namespace

struct ShopLibrary::Loaded {
  std::vector<Error> leftOut;
  Library own;
  std::map<std::int64_t, CataloguePlace> places;
  Catalogue catalogue;
};

ShopLibrary::ShopLibrary(Database& database, People& people) : m_database(database), m_people(people) {}
ShopLibrary::~ShopLibrary() = default;

Result<ShopLibrary::Loaded> ShopLibrary::load(std::int64_t without) {
  CW_TRY(stored, collect(m_database.connection(), kCurrent, {}, [](const SqlRows& row) {
           return StoredLine{row.integer(0), row.text(1), row.text(2)};
         }));
  Loaded out;
  for (const RowKind kind : kRowKinds) {
    std::map<std::size_t, std::int64_t> rows;  // by the line on which they begin; the first is line 2
    std::size_t line = 2;
    std::string text = headerOf(kind);
    for (const StoredLine& each : stored) {
      if (each.row == without || each.kind != nameOf(kind)) continue;
      rows[line] = each.row;
      text += each.line;
      line += static_cast<std::size_t>(std::count(each.line.begin(), each.line.end(), '\n'));
    }
    if (rows.empty()) continue;
    ImportRehearsal rehearsal = rehearseImport(shippedCatalogue(), text, std::move(out.own));
    out.own = std::move(rehearsal.library);
    for (std::size_t i = 0; i < rehearsal.taken.size(); ++i) {
      const auto row = rows.find(static_cast<std::size_t>(rehearsal.taken[i].line));
      if (row == rows.end()) return damagedLine(nameOf(kind));
      out.places[row->second] = {kind, countOf(shippedCatalogue().rows(), kind) + i};
    }
    for (Error& error : rehearsal.refused) {
      error.place = "shop's " + std::string(nameOf(kind));
      out.leftOut.push_back(std::move(error));
    }
  }
  CW_TRY(catalogue, shippedCatalogue().with(out.own));
  out.catalogue = std::move(catalogue);
  return out;
}

Result<const ShopLibrary::Loaded*> ShopLibrary::loaded() {
  CW_TRY(version, m_database.connection().pragma("data_version"));
  if (!m_loaded || version != m_version) {
    CW_TRY(now, load(0));
    m_loaded = std::make_unique<Loaded>(std::move(now));
    m_version = version;
  }
  return m_loaded.get();
}

Result<const Catalogue*> ShopLibrary::catalogue() {
  return loaded().map([](const Loaded* now) { return &now->catalogue; });
}

Result<const std::vector<Error>*> ShopLibrary::leftOut() {
  return loaded().map([](const Loaded* now) { return &now->leftOut; });
}

Result<CataloguePlace> ShopLibrary::place(std::int64_t row) {
  CW_TRY(now, loaded());
  const auto found = now->places.find(row);
  if (found == now->places.end()) return noRow(row);
  return found->second;
}

Result<std::size_t> ShopLibrary::count() {
  CW_TRY(rows, first(m_database.connection(), "SELECT count(*) FROM library_words", {},
                     [](const SqlRows& row) { return row.integer(0); }));
  return static_cast<std::size_t>(rows.value_or(0));
}

Result<Listed<LibraryHit>> ShopLibrary::find(std::string_view typed, std::size_t most) {
  Connection& connection = m_database.connection();
  const Snapshot moment(connection);
  CW_CHECK(moment.begun());
  constexpr std::string_view kEntries = "SELECT rowid, name, alias, note, kind FROM library_words";
  if (quotedWords(typed).empty()) {
    CW_TRY(all, collect(connection, std::string(kEntries) + " ORDER BY rowid LIMIT ?",
                        {static_cast<std::int64_t>(most)}, hitOf));
    CW_TRY(total, count());
    return Listed<LibraryHit>{std::move(all), total};
  }
  CW_TRY(found, findWords(connection, typed, most));
  std::string numbers;
  for (const FoundRow& row : found.rows) numbers += (numbers.empty() ? "" : ",") + std::to_string(row.number);
  CW_TRY(hits, collect(connection, std::string(kEntries) + " WHERE rowid IN (" + numbers + ")", {}, hitOf));
  std::map<std::int64_t, LibraryHit*> byRow;
  for (LibraryHit& hit : hits) byRow[hit.shopRow] = &hit;
  Listed<LibraryHit> out{{}, found.total};
  for (const FoundRow& row : found.rows)
    if (const auto hit = byRow.find(row.number); hit != byRow.end()) {
      hit->second->distance = row.distance;
      out.rows.push_back(std::move(*hit->second));
    }
  return out;
}

Result<std::vector<LibraryRevision>> ShopLibrary::history(std::int64_t row) {
  struct Line {
    std::string kind, event, line, at, by, remark;
  };
  CW_TRY(
      lines,
      collect(m_database.connection(),
              "SELECT kind, event, line, at, by, remark FROM library_revision WHERE row = ? ORDER BY number",
              {row}, [](const SqlRows& each) {
                return Line{each.text(0), each.text(1), each.text(2),
                            each.text(3), each.text(4), each.text(5)};
              }));
  if (lines.empty()) return noRow(row);
  std::vector<LibraryRevision> out;
  for (const Line& line : lines) {
    CW_TRY(kind, kindIn(line.kind));
    CW_TRY(at, parseRfc3339(line.at));
    CW_TRY(cells, cellsIn(kind, line.line));
    out.push_back({row, kind, line.event, std::move(cells), {line.by, at, line.remark}});
  }
  return out;
}

Result<std::string> ShopLibrary::table(RowKind kind) {
  CW_TRY(stored, collect(m_database.connection(), kCurrent, {}, [](const SqlRows& row) {
           return StoredLine{row.integer(0), row.text(1), row.text(2)};
         }));
  std::string out = headerOf(kind);
  for (const StoredLine& each : stored)
    if (each.kind == nameOf(kind)) out += each.line;
  return out;
}

Result<ImportRehearsal> ShopLibrary::rehearse(std::string_view csv) {
  CW_TRY(now, loaded());
  return rehearseImport(shippedCatalogue(), csv, now->own);
}

Result<void> ShopLibrary::mayWrite(const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  return {};
}

Result<std::size_t> ShopLibrary::import(std::string_view csv, const Deed& deed) {
  CW_CHECK(mayWrite(deed));
  Connection& connection = m_database.connection();
  CW_TRY(transaction, Transaction::begin(connection));
  CW_TRY(before, load(0));
  const ImportRehearsal rehearsal = rehearseImport(shippedCatalogue(), csv, std::move(before.own));
  if (!rehearsal.clean()) return fail(rehearsal.refused.front());
  const RowKind kind = *rehearsal.kind;
  const std::string at = rfc3339(deed.at);
  CW_TRY(number, lastNumber(connection));
  std::vector<SqlValues> revisions;
  std::vector<IndexedRow> words;
  const std::size_t old = countOf(rehearsal.library, kind) - rehearsal.taken.size();
  for (std::size_t i = 0; i < rehearsal.taken.size(); ++i) {
    ++number;
    revisions.push_back({number, number, nameOf(kind), rehearsal.taken[i].csv, at, deed.by, deed.remark});
    words.push_back({number, searchWords(searchEntry(rehearsal.library, kind, old + i))});
  }
  CW_CHECK(
      connection.runEach("INSERT INTO library_revision(number, row, kind, event, line, at, by, remark) "
                         "VALUES (?, ?, ?, 'added', ?, ?, ?, ?)",
                         revisions));
  CW_CHECK(addWords(connection, words));
  m_loaded.reset();
  CW_CHECK(transaction.commit());
  return rehearsal.taken.size();
}

Result<void> ShopLibrary::change(std::int64_t row, const std::vector<std::string>& cells, const Deed& deed) {
  CW_CHECK(mayWrite(deed));
  Connection& connection = m_database.connection();
  CW_TRY(transaction, Transaction::begin(connection));
  CW_TRY(states, history(row));
  if (states.back().event == "withdrawn") return noRow(row);
  const RowKind kind = states.back().kind;
  const std::string line = csvLine(cells);
  CW_TRY(others, load(row));
  const ImportRehearsal rehearsal =
      rehearseImport(shippedCatalogue(), headerOf(kind) + line, std::move(others.own));
  if (!rehearsal.clean()) return fail(rehearsal.refused.front());
  CW_CHECK(insertRevision(connection, row, kind, "changed", line, deed));
  CW_CHECK(connection.run("DELETE FROM library_words WHERE rowid = ?", {row}));
  CW_CHECK(addWords(
      connection,
      {{row, searchWords(searchEntry(rehearsal.library, kind, countOf(rehearsal.library, kind) - 1))}}));
  m_loaded.reset();
  return transaction.commit();
}

Result<void> ShopLibrary::withdraw(std::int64_t row, const Deed& deed) {
  CW_CHECK(mayWrite(deed));
  Connection& connection = m_database.connection();
  CW_TRY(transaction, Transaction::begin(connection));
  CW_TRY(states, history(row));
  if (states.back().event == "withdrawn") return noRow(row);
  CW_CHECK(
      insertRevision(connection, row, states.back().kind, "withdrawn", csvLine(states.back().cells), deed));
  CW_CHECK(connection.run("DELETE FROM library_words WHERE rowid = ?", {row}));
  m_loaded.reset();
  return transaction.commit();
}

Result<Listed<LibraryHit>> findInLibrary(const LibrarySearch& shipped, ShopLibrary* own,
                                         std::string_view typed, std::size_t most) {
  CW_TRY(found, shipped.find(typed, most));
  Listed<LibraryHit> listed{{}, found.total};
  std::vector<LibraryHit>& out = listed.rows;
  for (const FoundRow& row : found.rows)
    out.push_back({shipped.entries()[static_cast<std::size_t>(row.number)], 0, row.distance});
  if (own == nullptr) return listed;
  CW_TRY(more, own->find(typed, most));
  listed.total += more.total;
  out.insert(out.end(), std::make_move_iterator(more.rows.begin()), std::make_move_iterator(more.rows.end()));
  std::stable_sort(out.begin(), out.end(),
                   [](const LibraryHit& a, const LibraryHit& b) { return a.distance < b.distance; });
  if (out.size() > most) out.erase(out.begin() + static_cast<std::ptrdiff_t>(most), out.end());
  return listed;
}

}  // namespace cw
