#pragma once
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/fastener/import.h"
#include "core/store/deed.h"
#include "core/store/library_search.h"

namespace cw {

class Database;
class People;

/// Bytes of the largest table that is read: several hundred thousand rows.
inline constexpr std::int64_t kLargestLibraryTable = std::int64_t{256} << 20;

/// One state of one of the shop's own rows; the last one holds.
struct LibraryRevision {
  std::int64_t row = 0;  ///< the same for all states of a row
  RowKind kind = RowKind::Thread;
  std::string event;               ///< added, changed, withdrawn
  std::vector<std::string> cells;  ///< as written, in the order of columnsOf
  Deed deed;
};

/// A row that a search found. Of a row of the shop `entry.row` says nothing: see ShopLibrary::place.
struct LibraryHit {
  SearchEntry entry;
  std::int64_t shopRow = 0;  ///< 0: it came with the program
  int distance = 0;          ///< see FoundRow
};

/// Where a row of the shop stands in its catalogue.
struct CataloguePlace {
  RowKind kind = RowKind::Thread;
  std::size_t row = 0;
};

/// The rows that a shop has added to the library that comes with the program, kept in its file. Every row is
/// judged by the same code as the shipped ones, and none takes a name that another row has.
class ShopLibrary {
 public:
  ShopLibrary(Database& database, People& people);
  ~ShopLibrary();

  /// The shipped rows and behind them the shop's. Valid until the library changes.
  Result<const Catalogue*> catalogue();
  /// Rows of the shop that are not in the catalogue, each with the reason: a newer program ships their name.
  Result<const std::vector<Error>*> leftOut();
  /// Where that row stands in `catalogue()`; NotFound if it is withdrawn or left out.
  Result<CataloguePlace> place(std::int64_t row);

  Result<std::size_t> count();
  /// Rows of the shop by the beginnings of their words, nearest first; all for a text without any.
  Result<Listed<LibraryHit>> find(std::string_view typed, std::size_t most);
  /// Every state of a row, the first one first; NotFound.
  Result<std::vector<LibraryRevision>> history(std::int64_t row);

  /// The shop's rows of one kind as a table that `import` of another shop takes.
  Result<std::string> table(RowKind kind);
  /// What an import would do now.
  Result<ImportRehearsal> rehearse(std::string_view csv);

  // By a trainer or a shop lead, else NotPermitted. Each is one transaction.
  /// All rows of the table or none: the first bad row is the error. Answers with how many were added.
  Result<std::size_t> import(std::string_view csv, const Deed& deed);
  /// A new state of a row: its cells in the order of columnsOf. Errors as for a row that is added.
  Result<void> change(std::int64_t row, const std::vector<std::string>& cells, const Deed& deed);
  /// The row is no longer found by name; its history stays.
  Result<void> withdraw(std::int64_t row, const Deed& deed);

 private:
  struct Loaded;
  Result<const Loaded*> loaded();
  Result<Loaded> load(std::int64_t without);
  Result<void> mayWrite(const Deed& deed);

  Database& m_database;
  People& m_people;
  std::unique_ptr<Loaded> m_loaded;
  std::string m_version;  ///< of the file when it was loaded
};

/// Rows of both, nearest first and the shipped ones before the shop's; `own` may be nullptr.
Result<Listed<LibraryHit>> findInLibrary(const LibrarySearch& shipped, ShopLibrary* own,
                                         std::string_view typed, std::size_t most);

}  // namespace cw
