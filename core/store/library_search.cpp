#include "core/store/library_search.h"

#include <unordered_set>

#include "core/store/connection.h"
#include "core/store/typed_words.h"

namespace cw {
namespace {

/// "×" between figures is an x.
std::string withPlainCross(std::string_view typed) {
  constexpr std::string_view kCross = "×";
  std::string out(typed);
  for (std::size_t at = 0; (at = out.find(kCross, at)) != std::string::npos;)
    out.replace(at, kCross.size(), "x");
  return out;
}

/// One FTS5 expression for each distance. The words of a name stand in their order.
std::vector<std::string> expressions(const std::vector<std::string>& words) {
  std::string exactly = "name : ^ " + words.front();
  std::string whole = "{name alias} : " + words.front();
  std::string beginning = "(name : ^ " + words.front() + " *)";
  std::string anywhere = words.front() + " *";
  for (std::size_t i = 1; i < words.size(); ++i) {
    exactly += " + " + words[i];
    whole += " + " + words[i];
    beginning += " AND " + words[i] + " *";
    anywhere += " AND " + words[i] + " *";
  }
  return {exactly, whole, beginning, anywhere};
}

}  // namespace

Result<Listed<FoundRow>> findWords(Connection& connection, std::string_view typed, std::size_t most) {
  Listed<FoundRow> out;
  std::vector<FoundRow>& found = out.rows;
  const std::vector<std::string> words = quotedWords(withPlainCross(typed));
  if (words.empty()) return out;
  const std::string one = "SELECT rowid, ? FROM library_words WHERE library_words MATCH ?";
  const std::vector<std::string> each = expressions(words);
  std::string all;
  SqlValues values;
  for (int distance = 0; distance < 4; ++distance) {
    all += (distance == 0 ? "" : " UNION ALL ") + one;
    values.insert(values.end(), {distance, each[static_cast<std::size_t>(distance)]});
  }
  const Snapshot moment(connection);
  CW_CHECK(moment.begun());
  CW_TRY(rows, connection.query(all, values));
  std::unordered_set<std::int64_t> seen;
  while (found.size() <
         most) {  // stops reading where enough was found: a beginning like "m" fits half a library
    CW_TRY(more, rows.next());
    if (!more) break;
    const std::int64_t number = rows.integer(0);
    if (seen.insert(number).second) found.push_back({number, static_cast<int>(rows.integer(1))});
  }
  out.total = found.size();
  if (out.total < most) return out;
  // What fits in any way also fits in the widest.
  CW_TRY(total, first(connection, "SELECT count(*) FROM library_words WHERE library_words MATCH ?",
                      {each.back()}, [](const SqlRows& row) { return row.integer(0); }));
  out.total = static_cast<std::size_t>(total.value_or(0));
  return out;
}

std::vector<std::string> searchWords(const SearchEntry& entry) {
  return {withPlainCross(entry.name), withPlainCross(entry.alias), withPlainCross(entry.note),
          std::string(nameOf(entry.kind))};
}

Result<void> addWords(Connection& connection, const std::vector<IndexedRow>& rows) {
  std::vector<SqlValues> all;
  for (const IndexedRow& row : rows)
    all.push_back({row.number, row.words[0], row.words[1], row.words[2], row.words[3]});
  return connection.runEach(
      "INSERT INTO library_words(rowid, name, alias, note, kind) VALUES (?, ?, ?, ?, ?)", all);
}

LibrarySearch::LibrarySearch(std::vector<SearchEntry> entries, std::unique_ptr<Connection> connection)
    : m_entries(std::move(entries)), m_connection(std::move(connection)) {}
LibrarySearch::~LibrarySearch() = default;
LibrarySearch::LibrarySearch(LibrarySearch&&) noexcept = default;
LibrarySearch& LibrarySearch::operator=(LibrarySearch&&) noexcept = default;

Result<LibrarySearch> LibrarySearch::of(const Library& library) {
  CW_TRY(connection, Connection::inMemory());
  LibrarySearch out(searchEntries(library), std::move(connection));
  CW_CHECK(out.fill());
  return out;
}

Result<void> LibrarySearch::fill() {
  CW_CHECK(m_connection->run("CREATE VIRTUAL TABLE library_words USING " + std::string(kLibraryWords)));
  CW_TRY(transaction, Transaction::begin(*m_connection));
  std::vector<IndexedRow> rows;
  for (std::size_t i = 0; i < m_entries.size(); ++i)
    rows.push_back({static_cast<std::int64_t>(i), searchWords(m_entries[i])});
  CW_CHECK(addWords(*m_connection, rows));
  return transaction.commit();
}

Result<Listed<FoundRow>> LibrarySearch::find(std::string_view typed, std::size_t most) const {
  if (!quotedWords(typed).empty()) return findWords(*m_connection, typed, most);
  Listed<FoundRow> all{{}, m_entries.size()};
  for (std::size_t i = 0; i < std::min(most, m_entries.size()); ++i)
    all.rows.push_back({static_cast<std::int64_t>(i), 3});
  return all;
}

}  // namespace cw
