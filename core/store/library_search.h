#pragma once
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/fastener/search_entry.h"
#include "core/store/listed.h"

namespace cw {

class Connection;

/// A row that a search found, and how far it is from what was typed: 0 its name begins with just these words,
/// 1 they stand together in name or alias, 2 its name begins with them as beginnings, 3 they begin words
/// anywhere in it.
struct FoundRow {
  std::int64_t number = 0;
  int distance = 0;
};

/// Finds rows as somebody types: by the beginnings of words of name, alias, note and kind; any text will do.
/// The nearest first, then in the order of the table library_words.
Result<Listed<FoundRow>> findWords(Connection& connection, std::string_view typed, std::size_t most);

/// What the table library_words is made of. "3/8-16", "8.8" and "#10" are found as they are written.
inline constexpr std::string_view kLibraryWords =
    "fts5(name, alias, note, kind, tokenize = \"unicode61 remove_diacritics 2 tokenchars './#'\", "
    "prefix = '1 2 3')";

/// A library's rows with an index of their words in memory.
class LibrarySearch {
 public:
  static Result<LibrarySearch> of(const Library& library);
  ~LibrarySearch();
  LibrarySearch(LibrarySearch&&) noexcept;
  LibrarySearch& operator=(LibrarySearch&&) noexcept;

  const std::vector<SearchEntry>& entries() const { return m_entries; }
  /// Their numbers in `entries`; all of them, up to `most`, for a text without a letter or figure.
  Result<Listed<FoundRow>> find(std::string_view typed, std::size_t most) const;

 private:
  LibrarySearch(std::vector<SearchEntry> entries, std::unique_ptr<Connection> connection);
  Result<void> fill();

  std::vector<SearchEntry> m_entries;
  std::unique_ptr<Connection> m_connection;
};

/// The cells of one row of library_words, in the order of its columns.
std::vector<std::string> searchWords(const SearchEntry& entry);

struct IndexedRow {
  std::int64_t number = 0;
  std::vector<std::string> words;
};
Result<void> addWords(Connection& connection, const std::vector<IndexedRow>& rows);

}  // namespace cw
