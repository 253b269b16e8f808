#include "core/store/records.h"

#include "core/record/verify.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::kPin;
using test::need;
using test::SampleShop;
using testing::HasSubstr;

class RecordsTest : public testing::Test {
 protected:
  Id finishedJob() {
    const Id job = m_shop.startJob();
    EXPECT_EQ(m_shop.work(job), "");
    return job;
  }
  Id sealedJob() {
    const Id job = finishedJob();
    need(records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"));
    return job;
  }
  Result<std::string> add(const Id& job, const std::string& text) {
    return records().addAddendum(job, "wim", kPin, text, m_shop.key());
  }
  Records& records() { return m_shop->records(); }
  Deed lead(const std::string& why) { return {"lena", m_shop.clock().now(), why}; }

  SampleShop m_shop;
};

TEST_F(RecordsTest, AreSealedAndVerify) {
  const Id job = finishedJob();
  const std::string record =
      need(records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"));
  EXPECT_TRUE(verifyRecord(record, publicOf(m_shop.key())).good());
  m_shop.reopen();
  EXPECT_EQ(need(records().bytes(job)), record);
}

TEST_F(RecordsTest, AreSealedOnce) {
  const Id job = sealedJob();
  EXPECT_THAT(records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"),
              FailsWith(ErrorCode::AlreadyDone));
}

TEST_F(RecordsTest, OnlyAFinishedJobIsSealed) {
  const Id job = m_shop.startJob();
  EXPECT_THAT(records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"),
              FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(records().bytes(job), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(records().seal(m_shop.newId(), {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"),
              FailsWith(ErrorCode::NotFound));
}

TEST_F(RecordsTest, OnlyTheShopsOwnKeySeals) {
  EXPECT_THAT(records().seal(finishedJob(), {"mira", std::string(test::kPin)}, makeKey(), "1.0"),
              FailsWith(ErrorCode::NotPermitted));
}

TEST_F(RecordsTest, ASealedJobTakesNoMoreEntries) {
  const Id job = sealedJob();
  EXPECT_THAT(m_shop.say(job, "mira", TakenApart{"s1", "weeps"}), FailsWith(ErrorCode::OutOfTurn));
}

TEST_F(RecordsTest, TakeAddendaInOrder) {
  const Id job = sealedJob();
  need(add(job, "The serial is S-101."));
  need(add(job, "The hours were 421."));
  const auto addenda = need(records().files(job)).addenda;
  ASSERT_EQ(addenda.size(), 2u);
  EXPECT_EQ(need(readAddendum(addenda[1])).text, "The hours were 421.");
  EXPECT_TRUE(verifyAddenda(need(records().bytes(job)), addenda, publicOf(m_shop.key())).good());
}

TEST_F(RecordsTest, AddendaNeedAPinATextAndARecord) {
  const Id job = sealedJob();
  EXPECT_THAT(records().addAddendum(job, "wim", "0000", "x", m_shop.key()), FailsWith(ErrorCode::WrongPin));
  EXPECT_THAT(add(job, " \n"), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(records().addAddendum(job, "wim", kPin, "x", makeKey()), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(add(m_shop.startJob(), "x"), FailsWith(ErrorCode::NotFound));
  EXPECT_TRUE(need(records().files(job)).addenda.empty());
}

TEST_F(RecordsTest, AreDisposedOfByALeadWithAReason) {
  const Id job = sealedJob();
  need(add(job, "The serial is S-101."));
  EXPECT_THAT(records().dispose(job, {"mira", m_shop.clock().now(), "old"}),
              FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(records().dispose(job, lead(" ")), FailsWith(ErrorCode::InvalidInput));
  need(records().dispose(job, lead("ten years are over")));
  EXPECT_THAT(records().bytes(job), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(m_shop->ledger().refresh(job),
              FailsWith(ErrorCode::NotFound, HasSubstr("disposed of by lena")));
  const auto rows = need(m_shop->findJobs({})).rows;
  ASSERT_EQ(rows.size(), 1u);
  EXPECT_EQ(rows[0].state, JobState::Disposed);
}

TEST_F(RecordsTest, ADisposedJobTakesNoEntry) {
  const Id job = m_shop.startJob();
  const auto other = m_shop.another();
  need(other->records().dispose(job, lead("entered by mistake")));
  EXPECT_THAT(m_shop.say(job, "mira", WarningsRead{"s1"}), FailsWith(ErrorCode::NotFound));
}

std::vector<Id> idsOf(const std::vector<JobRow>& rows) {
  std::vector<Id> out;
  for (const JobRow& row : rows) out.push_back(row.job);
  return out;
}

TEST_F(RecordsTest, AreFoundByWhatTheyAreAbout) {
  Beginning begin = m_shop.beginning();
  begin.start.workOrder = "WO 4711";
  begin.start.machine = "P-2";
  begin.start.model = "Süd pump";
  begin.start.serial = "S-200";
  begin.start.fitAllowedBy = "lena", begin.start.fitReason = "the same cover";
  need(m_shop->ledger().start(begin));
  const Id sealed = sealedJob();
  const auto found = [&](const JobQuery& query) { return idsOf(need(m_shop->findJobs(query)).rows); };
  using testing::ElementsAre;
  JobQuery query;
  EXPECT_THAT(found(query), ElementsAre(sealed, begin.job)) << "the latest first";
  query.workOrder = "WO 4711";
  EXPECT_THAT(found(query), ElementsAre(begin.job));
  query = {};
  query.machine = "P-1";
  EXPECT_THAT(found(query), ElementsAre(sealed));
  query = {};
  query.serial = "S-200";
  EXPECT_THAT(found(query), ElementsAre(begin.job));
  query = {};
  query.person = "otto";
  EXPECT_THAT(found(query), ElementsAre(sealed));
  query = {};
  query.tool = "T-07";
  EXPECT_THAT(found(query), ElementsAre(sealed));
  query = {};
  query.states = {JobState::Open};
  EXPECT_THAT(found(query), ElementsAre(begin.job));
  query = {};
  query.sheet = test::sampleSheet().id;
  query.most = 1;
  EXPECT_THAT(found(query), ElementsAre(sealed));
}

TEST_F(RecordsTest, AListThatIsCutSaysOfHowMany) {
  const Id sealed = sealedJob();
  for (int job = 0; job < 12; ++job) m_shop.startJob();
  JobQuery query;
  query.most = 5;
  const auto all = need(m_shop->findJobs(query));
  EXPECT_EQ(all.rows.size(), 5u);
  EXPECT_EQ(all.total, 13u);
  EXPECT_TRUE(all.cut());
  query.states = {JobState::Finished, JobState::Sealed, JobState::Disposed};
  const auto finished = need(m_shop->findJobs(query));
  EXPECT_THAT(idsOf(finished.rows), testing::ElementsAre(sealed)) << "however many newer ones are open";
  EXPECT_FALSE(finished.cut());
  query.states = {JobState::Open};
  query.words = "test";
  EXPECT_EQ(need(m_shop->findJobs(query)).total, 12u);
}

TEST_F(RecordsTest, AreFoundByBeginningsOfWords) {
  Beginning begin = m_shop.beginning();
  begin.start.workOrder = "WO-4711";
  begin.start.model = "Süd pump \"big\" AND";
  begin.start.fitAllowedBy = "lena", begin.start.fitReason = "the same cover";
  need(m_shop->ledger().start(begin));
  const auto count = [&](const std::string& words) {
    JobQuery query;
    query.words = words;
    return need(m_shop->findJobs(query)).total;
  };
  EXPECT_EQ(count("47"), 1u);
  EXPECT_EQ(count("sud pum"), 1u) << "accents do not count";
  EXPECT_EQ(count("clo cover"), 1u) << "words of the sheet's title";
  EXPECT_EQ(count("pump other"), 0u);
  for (const char* odd : {"\"", "AND", "big\"", "*", "NEAR(", "-", "work_order:", "' OR 1"})
    EXPECT_LE(count(odd), 1u) << odd;
}

TEST_F(RecordsTest, AreFoundByDate) {
  const Moment before = m_shop.clock().now();
  const Id job = m_shop.startJob();
  const Moment after = m_shop.clock().now();
  const auto count = [&](std::optional<Moment> from, std::optional<Moment> to) {
    JobQuery query;
    query.from = from, query.to = to;
    return need(m_shop->findJobs(query)).total;
  };
  EXPECT_EQ(count(before, after), 1u);
  EXPECT_EQ(count(after, std::nullopt), 0u);
  EXPECT_EQ(count(std::nullopt, before), 0u);
}

TEST_F(RecordsTest, AreListedWithTheirState) {
  const Id job = sealedJob();
  need(add(job, "The serial is S-101."));
  const JobRow row = need(m_shop->findJobs({})).rows.front();
  EXPECT_EQ(row.state, JobState::Sealed);
  EXPECT_EQ(row.workOrder, "WO 1");
  EXPECT_EQ(row.title, "Close the test cover");
  EXPECT_EQ(row.addenda, 1);
  EXPECT_TRUE(row.sealed.has_value());
  const Job& folded = **m_shop->ledger().job(job);
  EXPECT_EQ(row.entries, folded.count());
  EXPECT_EQ(row.head, hex(folded.head));
}

}  // namespace
}  // namespace cw
