#include "core/store/sheets.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/base/digest.h"
#include "core/base/found.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/sheet_texts.h"
#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/people.h"

namespace cw {
namespace {

constexpr std::string_view kColumns =
    "SELECT sheet, revision, digest, title, model, author, status, independent FROM sheet_revision ";

SheetStatus statusOf(std::string_view text) {
  return fromWord<SheetStatus>(text).value_or(SheetStatus::Draft);  // a CHECK admits no other word
}

/// Corrupt where the row names no sheet.
Result<SheetRow> rowOf(const SqlRows& row) {
  SheetRow out;
  const auto id = Id::parse(row.text(0));
  if (!id)
    return fail(ErrorCode::Corrupt, "sheet " + row.text(0), row.text(1),
                "a revision names no sheet by its id", "put back a backup");
  out.sheet = *id;
  out.revision = row.text(1), out.digest = row.text(2), out.title = row.text(3), out.model = row.text(4);
  out.author = row.text(5), out.status = statusOf(row.text(6));
  if (!row.isNull(7)) out.independent = row.integer(7) != 0;
  return out;
}

std::string nameOf(const SheetRow& row) {
  return row.title + ", revision " + row.revision;
}

}  // namespace

Result<std::vector<SheetRow>> Sheets::all() {
  return collect(m_database.connection(), std::string(kColumns) + "ORDER BY title, sheet, rowid", {}, rowOf);
}

Result<SheetRow> Sheets::find(const Id& sheet, const std::string& revision) {
  CW_TRY(row, first(m_database.connection(), std::string(kColumns) + "WHERE sheet = ? AND revision = ?",
                    {sheet.text(), revision}, rowOf));
  if (row) return *row;
  return fail(ErrorCode::NotFound, "sheet " + sheet.text(), revision,
              {"there is no revision “%1” of this sheet", {shown(revision)}}, "import it first");
}

Result<SheetRow> Sheets::issued(const Id& sheet) {
  CW_TRY(row, first(m_database.connection(), std::string(kColumns) + "WHERE sheet = ? AND status = 'issued'",
                    {sheet.text()}, rowOf));
  if (row) return *row;
  return fail(ErrorCode::NotFound, "sheet", sheet.text(), "no revision of this sheet is issued",
              "issue one first");
}

Result<std::string> Sheets::bytes(const std::string& digest) {
  CW_TRY(bytes, first(m_database.connection(), "SELECT bytes FROM sheet_text WHERE digest = ?", {digest},
                      [](const SqlRows& row) { return row.bytes(0); }));
  if (bytes) return *bytes;
  return fail(ErrorCode::NotFound, "sheet", digest, "there is no sheet with this digest", "import it first");
}

Result<std::vector<SheetEvent>> Sheets::history(const Id& sheet, const std::string& revision) {
  return collect(
      m_database.connection(),
      "SELECT status, by, at, remark FROM sheet_history WHERE sheet = ? AND revision = ? ORDER BY number",
      {sheet.text(), revision}, [&](const SqlRows& row) -> Result<SheetEvent> {
        const auto at = parseRfc3339(row.text(2));
        if (!at)
          return fail(ErrorCode::Corrupt, "history of sheet " + sheet.text(), row.text(2),
                      {"“%1” is no time", {shown(row.text(2))}}, "put back a backup");
        return SheetEvent{statusOf(row.text(0)), {row.text(1), *at, row.text(3)}};
      });
}

Result<SheetRow> Sheets::saveDraft(std::string_view bytes, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  CW_TRY(sheet, readSheet(bytes));
  CW_CHECK(checkTexts(sheet));
  SheetRow now;
  now.sheet = sheet.id, now.revision = sheet.revision, now.digest = hex(sha256(bytes));
  now.title = sheet.title, now.model = sheet.model, now.author = sheet.author;

  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(before, ifFound(find(now.sheet, now.revision)));
  if (before) {
    if (before->digest == now.digest) return *before;
    CW_CHECK(replaceDraft(*before, now, bytes));
  } else {
    CW_CHECK(insertDraft(now, bytes));
  }
  CW_CHECK(log(now, SheetStatus::Draft, deed));
  CW_CHECK(transaction.commit());
  return now;
}

Result<void> Sheets::keep(std::string_view bytes) {
  const std::string digest = hex(sha256(bytes));
  CW_TRY(kept, first(m_database.connection(), "SELECT 1 FROM sheet_text WHERE digest = ?", {digest},
                     [](const SqlRows&) { return true; }));
  if (kept) return {};
  return m_database.connection().run("INSERT INTO sheet_text(digest, bytes) VALUES (?, ?)",
                                     {digest, Blob{bytes}});
}

/// A quick joint may have been done by the same bytes.
Result<void> Sheets::forget(const std::string& digest) {
  return m_database.connection().run(
      "DELETE FROM sheet_text WHERE digest = ? AND digest NOT IN (SELECT digest FROM job)", {digest});
}

Result<void> Sheets::insertDraft(const SheetRow& now, std::string_view bytes) {
  CW_CHECK(keep(bytes));
  return m_database.connection().run(
      "INSERT INTO sheet_revision(sheet, revision, digest, title, model, author, status)"
      " VALUES (?, ?, ?, ?, ?, ?, 'draft')",
      {now.sheet.text(), now.revision, now.digest, now.title, now.model, now.author});
}

Result<void> Sheets::replaceDraft(const SheetRow& before, const SheetRow& now, std::string_view bytes) {
  if (before.status != SheetStatus::Draft)
    return fail(ErrorCode::NotPermitted, nameOf(before), now.digest,
                {"this revision is %1 and does not change", {std::string(wordOf(before.status))}},
                "give the changed sheet a new revision");
  CW_CHECK(keep(bytes));
  CW_CHECK(m_database.connection().run(
      "UPDATE sheet_revision SET digest = ?, title = ?, model = ?, author = ? WHERE sheet = ? "
      "AND revision = ?",
      {now.digest, now.title, now.model, now.author, now.sheet.text(), now.revision}));
  return forget(before.digest);
}

Result<void> Sheets::deleteDraft(const Id& sheet, const std::string& revision) {
  Connection& connection = m_database.connection();
  CW_TRY(transaction, Transaction::begin(connection));
  CW_TRY(row, find(sheet, revision));
  if (row.status != SheetStatus::Draft)
    return fail(ErrorCode::OutOfTurn, nameOf(row), wordOf(row.status),
                {"this revision is %1", {std::string(wordOf(row.status))}}, "only a draft is deleted");
  CW_CHECK(connection.run("DELETE FROM sheet_revision WHERE sheet = ? AND revision = ?",
                          {sheet.text(), revision}));
  CW_CHECK(forget(row.digest));
  return transaction.commit();
}

Result<void> Sheets::submit(const Id& sheet, const std::string& revision, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(row, find(sheet, revision));
  CW_CHECK(move(row, SheetStatus::Draft, SheetStatus::InReview, deed));
  return transaction.commit();
}

Result<void> Sheets::sendBack(const Id& sheet, const std::string& revision, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(row, find(sheet, revision));
  CW_CHECK(move(row, SheetStatus::InReview, SheetStatus::Draft, deed));
  return transaction.commit();
}

Result<void> Sheets::issue(const Id& sheet, const std::string& revision, const Deed& deed) {
  CW_TRY(approver, m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(row, find(sheet, revision));
  CW_TRY(involved, hadAHand(row, deed.by));
  CW_TRY(active, m_people.activeCount());
  if (involved && active > 1)
    return fail(ErrorCode::NotPermitted, nameOf(row), deed.by,
                {"%1 had a hand in this revision", {approver.name}}, "let another trainer or lead issue it");
  CW_TRY(before, ifFound(issued(sheet)));
  if (before) CW_CHECK(move(*before, SheetStatus::Issued, SheetStatus::Superseded, deed));
  CW_CHECK(move(row, SheetStatus::InReview, SheetStatus::Issued, deed));
  CW_CHECK(m_database.connection().run(
      "UPDATE sheet_revision SET independent = ? WHERE sheet = ? AND revision = ?",
      {!involved, sheet.text(), revision}));
  return transaction.commit();
}

Result<void> Sheets::withdraw(const Id& sheet, const std::string& revision, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::Trainer, Role::ShopLead}));
  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(row, find(sheet, revision));
  CW_CHECK(move(row, SheetStatus::Issued, SheetStatus::Withdrawn, deed));
  return transaction.commit();
}

Result<void> Sheets::move(const SheetRow& row, SheetStatus from, SheetStatus to, const Deed& deed) {
  if (row.status != from)
    return fail(ErrorCode::OutOfTurn, nameOf(row), wordOf(row.status),
                {"this revision is %1", {std::string(wordOf(row.status))}},
                {"only one that is %1 becomes %2", {std::string(wordOf(from)), std::string(wordOf(to))}});
  CW_CHECK(
      m_database.connection().run("UPDATE sheet_revision SET status = ? WHERE sheet = ? AND revision = ?",
                                  {wordOf(to), row.sheet.text(), row.revision}));
  return log(row, to, deed);
}

Result<void> Sheets::log(const SheetRow& row, SheetStatus status, const Deed& deed) {
  return m_database.connection().run(
      "INSERT INTO sheet_history(sheet, revision, status, at, by, remark) VALUES (?, ?, ?, ?, ?, ?)",
      {row.sheet.text(), row.revision, wordOf(status), rfc3339(deed.at), deed.by, deed.remark});
}

/// Wrote, saved or submitted it. Sending back is the reviewer's part and no hand in the work.
Result<bool> Sheets::hadAHand(const SheetRow& row, const std::string& sign) {
  CW_TRY(events, history(row.sheet, row.revision));
  SheetStatus before = SheetStatus::Draft;
  bool hand = row.author == sign;
  for (const SheetEvent& event : events) {
    const bool sentBack = before == SheetStatus::InReview && event.status == SheetStatus::Draft;
    hand = hand || (event.deed.by == sign && !sentBack);
    before = event.status;
  }
  return hand;
}

}  // namespace cw
