#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::RawSqlite;
using test::SampleShop;

/// A shop file with a sealed record, an addendum and an open job, in the hands of somebody with a database
/// shell.
class Guarded : public testing::Test {
 protected:
  Guarded() {
    const Id done = m_shop.startJob();
    if (const std::string refusal = m_shop.work(done); !refusal.empty()) throw std::runtime_error(refusal);
    need(m_shop->records().seal(done, {"mira", std::string(test::kPin)}, m_shop.key(), "test"));
    need(m_shop->records().addAddendum(done, "wim", test::kPin, "The serial is S-101.", m_shop.key()));
    need(m_shop->library().import(
        "designation,diameter,pitch,threads_per_inch,stress_area,unit,known,source,author,note\n"
        "M12x0.75,12,0.75,,,mm,seen,drawing,Lena,\n",
        {"lena", m_shop.clock().now()}));
    m_shop.startJob();
    static_cast<void>(m_shop->ledger().signIn(done, "otto", "0000", m_shop.newId()));
    m_shop.close();
  }

  SampleShop m_shop;
};

constexpr const char* kForbidden[] = {
    "UPDATE entry SET text = '{}' WHERE sequence = 1",
    "UPDATE OR REPLACE entry SET sequence = 1 WHERE sequence = 2",
    "DELETE FROM entry WHERE sequence = 2",
    "DELETE FROM entry",
    "INSERT OR REPLACE INTO entry SELECT job, sequence, id, kind, '{}', previous, hash FROM entry WHERE "
    "sequence = 2",
    // Each unique column alone must stop a REPLACE.
    "INSERT OR REPLACE INTO entry SELECT job, 1, lower(hex(randomblob(18))), kind, text, hex(randomblob(32)),"
    " hex(randomblob(32)) FROM entry WHERE sequence = 2",
    "INSERT OR REPLACE INTO entry SELECT job, 999, id, kind, text, hex(randomblob(32)), hex(randomblob(32))"
    " FROM entry WHERE sequence = 2",
    "INSERT OR REPLACE INTO entry SELECT job, 999, lower(hex(randomblob(18))), kind, text, previous,"
    " hex(randomblob(32)) FROM entry WHERE sequence = 2",
    "INSERT OR REPLACE INTO entry SELECT job, 999, lower(hex(randomblob(18))), kind, text, "
    "hex(randomblob(32)), hash"
    " FROM entry WHERE sequence = 2",
    "UPDATE record SET bytes = x'00'",
    "DELETE FROM record",
    "INSERT OR REPLACE INTO record SELECT job, x'00', digest, head, count, sealed FROM record",
    "UPDATE addendum SET bytes = x'00'",
    "DELETE FROM addendum",
    "INSERT OR REPLACE INTO addendum SELECT job, number, x'00' FROM addendum",
    "UPDATE job SET serial = 'other'",
    "DELETE FROM job",
    "INSERT OR REPLACE INTO job SELECT id, digest, sheet, revision, title, 'other', machine, model, serial, "
    "started"
    " FROM job",
    "UPDATE sheet_text SET bytes = x'00'",
    "DELETE FROM sheet_text",
    "INSERT OR REPLACE INTO sheet_text SELECT digest, x'00' FROM sheet_text",
    "UPDATE sheet_revision SET digest = 'x'",
    "UPDATE sheet_revision SET status = 'draft'",
    "DELETE FROM sheet_revision",
    "INSERT OR REPLACE INTO sheet_revision SELECT sheet, revision, digest, 'other', model, author, 'draft', "
    "NULL"
    " FROM sheet_revision",
    "UPDATE sheet_history SET by = 'other'",
    "DELETE FROM sheet_history",
    "INSERT OR REPLACE INTO sheet_history SELECT number, sheet, revision, status, at, 'other', remark FROM "
    "sheet_history",
    "UPDATE tool_history SET remark = 'other'",
    "DELETE FROM tool_history",
    "INSERT OR REPLACE INTO tool_history SELECT number, tool, at, 'other', event, remark, page FROM "
    "tool_history",
    "UPDATE library_revision SET line = 'other'",
    "DELETE FROM library_revision",
    "INSERT OR REPLACE INTO library_revision SELECT number, row, kind, event, 'other', at, by, remark FROM "
    "library_revision",
    "UPDATE sign_in SET outcome = 'accepted' WHERE outcome = 'wrong-pin'",
    "DELETE FROM sign_in",
    "INSERT OR REPLACE INTO sign_in SELECT number, 'other', at, job, outcome FROM sign_in",
    "DELETE FROM person",
    "DELETE FROM tool",
    "DELETE FROM shop",
    "UPDATE shop SET id = 'other'",
    "INSERT OR REPLACE INTO shop SELECT 1, id, 'other', public_key FROM shop",
};

// With and without the pragma by which REPLACE runs delete triggers: a shell does not set it.
TEST_F(Guarded, RefusesEveryChangeOfWhatIsAppendOnly) {
  for (const char* pragma : {"PRAGMA recursive_triggers = 0", "PRAGMA recursive_triggers = 1"}) {
    RawSqlite shell(m_shop.file());
    ASSERT_EQ(shell.run(pragma), "");
    const std::string before = shell.ask("SELECT count(*) || total(sequence) FROM entry");
    for (const char* statement : kForbidden) EXPECT_NE(shell.run(statement), "") << statement;
    EXPECT_EQ(shell.ask("SELECT count(*) || total(sequence) FROM entry"), before);
  }
  m_shop.reopen();
  EXPECT_EQ(need(inspectFile(m_shop.file())).size(), 0u);
}

TEST_F(Guarded, KeepsTypesAndWords) {
  RawSqlite shell(m_shop.file());
  EXPECT_NE(shell.run("INSERT INTO machine VALUES (1, 2, 3, x'00')"), "")
      << "STRICT tables take no other type";
  EXPECT_NE(shell.run("INSERT INTO machine VALUES ('', '', '', '')"), "");
  EXPECT_NE(shell.run("INSERT INTO person VALUES ('zoe', 'no json', 1, 'x')"), "");
  EXPECT_NE(shell.run("INSERT INTO sign_in(sign, at, job, outcome) VALUES ('a', 'b', 'c', 'maybe')"), "");
  EXPECT_EQ(
      shell.ask(
          "SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND sql NOT LIKE '%STRICT%'"
          " AND name NOT LIKE 'job_words%' AND name NOT LIKE 'library_words%' AND name NOT LIKE 'sqlite_%'"),
      "0");
}

TEST_F(Guarded, DeletesOnlyWhatALoggedDisposalNames) {
  RawSqlite shell(m_shop.file());
  const std::string job = shell.ask("SELECT job FROM record");
  ASSERT_EQ(
      shell.run("INSERT INTO disposal VALUES ('" + job + "', '2036-03-04', 'lena', 'ten years are over')"),
      "");
  EXPECT_EQ(shell.run("DELETE FROM addendum WHERE job = '" + job + "'"), "");
  EXPECT_EQ(shell.run("DELETE FROM record WHERE job = '" + job + "'"), "");
  EXPECT_EQ(shell.run("DELETE FROM entry WHERE job = '" + job + "'"), "");
  EXPECT_NE(shell.run("DELETE FROM entry"), "") << "the other job's entries stay";
  EXPECT_NE(shell.run("DELETE FROM disposal"), "");
  EXPECT_NE(shell.run("UPDATE disposal SET by = 'mira'"), "");
  EXPECT_NE(shell.run("INSERT OR REPLACE INTO disposal VALUES ('" + job + "', '2036', 'mira', 'x')"), "");
}

}  // namespace
}  // namespace cw
