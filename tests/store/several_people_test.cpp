// Several people behind one entry, and people and tools that change after it.
#include "core/record/verify.h"
#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::kPin;
using test::need;
using testing::HasSubstr;
using testing::IsEmpty;

class SeveralPeople : public testing::Test {
 protected:
  static Pins pinsOf(std::initializer_list<const char*> signs) {
    Pins out;
    for (const char* sign : signs) out[sign] = kPin;
    return out;
  }
  /// A check that is left out by a lead's word.
  Draft blank() {
    LeftBlank body;
    body.step = "s2", body.absence = Absence::NotRecorded, body.reason = "the face is out of reach";
    body.allowedBy = "lena";
    return m_shop.draft("mira", body);
  }
  Id jobAtCheck() {
    const Id job = m_shop.startJob();
    EXPECT_EQ(m_shop.work(job, "s1"), "");
    return job;
  }
  int count(const Id& job) { return (*m_shop->ledger().refresh(job))->count(); }

  test::SampleShop m_shop;
};

TEST_F(SeveralPeople, EachStandsBehindItWithTheirPin) {
  const Id job = jobAtCheck();
  need(m_shop->ledger().append(job, blank(), pinsOf({"mira", "lena"})));
  const Entry& entry = *(*m_shop->ledger().job(job))->last();
  ASSERT_EQ(entry.vouchers.size(), 2u);
  for (const Voucher& each : entry.vouchers) EXPECT_EQ(each.how, Vouch::Pin) << each.person;
  EXPECT_THAT(m_shop->ledger().isSignedIn(job, "lena"), IsOkAnd(false))
      << "a PIN for an entry is for that entry";
}

TEST_F(SeveralPeople, OneWrongPinWritesNothing) {
  const Id job = jobAtCheck();
  const int before = count(job);
  for (const char* wrong : {"mira", "lena"}) {
    Pins pins = pinsOf({"mira", "lena"});
    pins[wrong] = "0000";
    EXPECT_THAT(m_shop->ledger().append(job, blank(), pins), FailsWith(ErrorCode::WrongPin)) << wrong;
    EXPECT_EQ(count(job), before);
  }
  EXPECT_THAT(m_shop->ledger().isSignedIn(job, "lena"), IsOkAnd(false));
  EXPECT_THAT(m_shop->ledger().append(job, blank(), pinsOf({"mira", "nobody"})),
              FailsWith(ErrorCode::NotFound));
  EXPECT_EQ(count(job), before);
}

TEST_F(SeveralPeople, OneWrongPinStartsNoJob) {
  Beginning begin = m_shop.beginning();
  begin.by = "ada", begin.supervisor = "mira";
  begin.others = {{"mira", "0000"}};
  EXPECT_THAT(m_shop->ledger().start(begin), FailsWith(ErrorCode::WrongPin));
  EXPECT_EQ(need(m_shop->findJobs({})).total, 0u);
  begin.others = pinsOf({"mira"});
  EXPECT_THAT(m_shop->ledger().start(begin), IsOk());
}

TEST_F(SeveralPeople, AreAllFoundByTheirNames) {
  const Id job = jobAtCheck();
  JobQuery byLead;
  byLead.person = "lena";
  EXPECT_EQ(need(m_shop->findJobs(byLead)).total, 0u);
  need(m_shop->ledger().append(job, blank(), pinsOf({"lena"})));
  EXPECT_EQ(need(m_shop->findJobs(byLead)).total, 1u);
  // Each name of a job is listed once, by whichever program wrote it first.
  const auto other = m_shop.another();
  need(other->ledger().signIn(job, "otto", kPin, m_shop.newId()));
  need(m_shop->ledger().refresh(job));
  need(m_shop.say(job, "otto", SignedIn{}));
  EXPECT_EQ(test::RawSqlite(m_shop.file())
                .ask("SELECT group_concat(name) FROM (SELECT name FROM mention "
                     "WHERE what = 'person' ORDER BY name)"),
            "lena,mira,otto");
}

TEST_F(SeveralPeople, WhoeverChangesAfterwardsChangesNoJob) {
  const Id job = m_shop.startJob();
  ASSERT_EQ(m_shop.work(job), "");
  const Digest head = (*m_shop->ledger().job(job))->head;
  // Every role swapped, everybody gone but one, every tool retired.
  for (Person person : test::shopPeople()) {
    person.roles = {person.sign == "wim" ? Role::ShopLead : Role::ServiceWriter};
    person.name = "Somebody " + person.sign;
    person.apprentice = person.sign != "wim";
    person.active = person.sign == "wim";
    need(m_shop->people().change(person));
  }
  for (const TorqueTool& tool : test::sampleTools())
    need(m_shop->tools().retire(tool.id, {"wim", m_shop.clock().now(), "sold"}));
  m_shop.reopen();
  EXPECT_EQ(need(m_shop->ledger().job(job))->head, head);
  EXPECT_THAT(m_shop->records().seal(job, {"mira", std::string(kPin)}, m_shop.key(), "test"),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("no longer works here")));
  const std::string bytes =
      need(m_shop->records().seal(job, {"wim", std::string(kPin)}, m_shop.key(), "test"));
  EXPECT_TRUE(verifyRecord(bytes, publicOf(m_shop.key())).good());
  const SealedRecord record = need(readRecord(bytes));
  for (const Person& person : record.people) EXPECT_FALSE(person.name.starts_with("Somebody"));
  ASSERT_TRUE(record.sealedBy);
  EXPECT_EQ(record.sealedBy->name, "Somebody wim");
  EXPECT_THAT(need(inspectFile(m_shop.file())), IsEmpty());
}

TEST_F(SeveralPeople, AJobThatCannotBeReadIsNotTakenForOneThatNobodySignedInto) {
  const Id job = m_shop.startJob();
  m_shop.reopen();
  test::sqlite(m_shop.file(), "PRAGMA legacy_alter_table = 1; ALTER TABLE entry RENAME TO hidden");
  EXPECT_THAT(m_shop->ledger().isSignedIn(job, "mira"), FailsWith(ErrorCode::Storage));
  EXPECT_THAT(m_shop->records().seal(job, {"mira", std::nullopt}, m_shop.key(), "test"),
              FailsWith(ErrorCode::Storage));
}

TEST_F(SeveralPeople, OnlyALeadEndsAQuarantine) {
  const auto deed = [&](const char* sign) { return Deed{sign, m_shop.clock().now(), "looked at it"}; };
  need(m_shop->tools().quarantine("T-07", deed("mira")));
  for (const char* sign : {"mira", "ada", "otto", "wim"})
    EXPECT_THAT(m_shop->tools().release("T-07", deed(sign)), FailsWith(ErrorCode::NotPermitted)) << sign;
  EXPECT_EQ(need(m_shop->tools().find("T-07")).status, ToolStatus::Quarantined);
  EXPECT_THAT(m_shop->tools().release("T-07", deed("lena")), IsOk());
  EXPECT_THAT(m_shop->tools().release("T-07", deed("lena")), FailsWith(ErrorCode::OutOfTurn));
}

}  // namespace
}  // namespace cw
