#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.h"
#include "core/base/words.h"
#include "core/store/deed.h"

namespace cw {

class Database;
class People;

enum class SheetStatus { Draft, InReview, Issued, Superseded, Withdrawn };

template <>
struct Words<SheetStatus> {
  static constexpr std::array<std::pair<SheetStatus, std::string_view>, 5> kAll{
      {{SheetStatus::Draft, "draft"},
       {SheetStatus::InReview, "in-review"},
       {SheetStatus::Issued, "issued"},
       {SheetStatus::Superseded, "superseded"},
       {SheetStatus::Withdrawn, "withdrawn"}}};
};

/// One revision of a sheet as a list shows it.
struct SheetRow {
  Id sheet;
  std::string revision, digest, title, model, author;
  SheetStatus status = SheetStatus::Draft;
  std::optional<bool> independent;  ///< once issued: false if the approver had a hand in it
};

struct SheetEvent {
  SheetStatus status = SheetStatus::Draft;  ///< from then on
  Deed deed;
};

/// Procedure sheets with their revisions, kept byte for byte.
class Sheets {
 public:
  Sheets(Database& database, People& people) : m_database(database), m_people(people) {}

  Result<std::vector<SheetRow>> all();  ///< by title, sheet and age of revision
  Result<SheetRow> find(const Id& sheet, const std::string& revision);  ///< NotFound
  Result<SheetRow> issued(const Id& sheet);                             ///< NotFound
  Result<std::string> bytes(const std::string& digest);                 ///< NotFound
  Result<std::vector<SheetEvent>> history(const Id& sheet, const std::string& revision);

  /// Keeps bytes that are no revision: those of a quick joint. The same bytes again change nothing. To be
  /// called within a transaction.
  Result<void> keep(std::string_view bytes);

  /// Takes a sheet file in as a draft, or as the new state of a draft. The same bytes again change nothing.
  /// NotPermitted if that revision is past being a draft, or if `by` is neither trainer nor lead; the
  /// errors of readSheet and checkTexts.
  Result<SheetRow> saveDraft(std::string_view bytes, const Deed& deed);
  Result<void> deleteDraft(const Id& sheet, const std::string& revision);

  // The way of a revision: draft -> in review -> issued -> superseded or withdrawn.
  // OutOfTurn from another status, NotPermitted by somebody who may not, NotFound.
  Result<void> submit(const Id& sheet, const std::string& revision, const Deed& deed);
  Result<void> sendBack(const Id& sheet, const std::string& revision, const Deed& deed);
  /// By somebody who neither wrote, saved nor submitted it; in a shop with one active person by that one, and
  /// the revision is marked as not independent. The revision issued until now is superseded.
  Result<void> issue(const Id& sheet, const std::string& revision, const Deed& deed);
  Result<void> withdraw(const Id& sheet, const std::string& revision, const Deed& deed);

 private:
  Result<void> move(const SheetRow& row, SheetStatus from, SheetStatus to, const Deed& deed);
  Result<void> log(const SheetRow& row, SheetStatus status, const Deed& deed);
  Result<bool> hadAHand(const SheetRow& row, const std::string& sign);
  Result<void> replaceDraft(const SheetRow& before, const SheetRow& now, std::string_view bytes);
  Result<void> forget(const std::string& digest);
  Result<void> insertDraft(const SheetRow& now, std::string_view bytes);

  Database& m_database;
  People& m_people;
};

}  // namespace cw
