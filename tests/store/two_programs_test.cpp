#include "core/store/inspect.h"
#include "tests/support/between_statements.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::BetweenStatements;
using test::kPin;
using test::need;
using test::SampleShop;
using testing::AnyOf;

constexpr std::chrono::milliseconds kNoPatience{0};

/// Two programs at one file; the other does something before each statement of this one in turn.
class TwoPrograms : public testing::Test {
 protected:
  TwoPrograms() {
    m_shop.reopen();  // from here on its statements are seen
    m_job = m_shop.startJob();
    m_other = need(Shop::open(m_shop.file(), m_shop.clock(), {kNoPatience, std::chrono::minutes(15)}));
    signInThere();
  }

  void signInThere() { need(m_other->ledger().signIn(m_job, "mira", kPin, m_shop.newId())); }

  /// One more entry by the other program; where this one is writing it is refused, and nothing happened.
  void appendThere() {
    const auto said =
        m_other->ledger().append(m_job, m_shop.draft("mira", SignedIn{}), {{"mira", std::string(kPin)}});
    EXPECT_TRUE(said || said.error().code == ErrorCode::Locked || said.error().code == ErrorCode::Conflict)
        << sentence(said.error());
  }

  /// `work` again and again, with `other` before another of its statements each time.
  void atEach(const std::function<void()>& work, const std::function<void()>& other) {
    int n = 1;
    while (m_between.run(n, work, other)) ++n;
    EXPECT_GT(n, 1) << "no statement was seen";
  }

  SampleShop m_shop{kNoPatience};
  BetweenStatements m_between{m_shop.file()};
  Id m_job;
  std::unique_ptr<Shop> m_other;
};

TEST_F(TwoPrograms, AnEntryThatComesWhileAJobIsTakenInIsNoDamage) {
  atEach([&] { EXPECT_THAT(m_shop->ledger().refresh(m_job), IsOk()); }, [&] { appendThere(); });
  EXPECT_EQ((*m_shop->ledger().refresh(m_job))->head, (*m_other->ledger().refresh(m_job))->head);
}

TEST_F(TwoPrograms, AnEntryThatComesWhileAJobIsLoadedIsNoDamage) {
  atEach(
      [&] {
        const auto third = m_shop.another();
        EXPECT_THAT(third->ledger().job(m_job), IsOk());
      },
      [&] { appendThere(); });
}

TEST_F(TwoPrograms, AnEntryThatComesWhileOneIsEnteredWaitsOrIsNamed) {
  atEach(
      [&] {
        EXPECT_THAT(
            m_shop->ledger().append(m_job, m_shop.draft("mira", SignedIn{}), {{"mira", std::string(kPin)}}),
            AnyOf(IsOk(), FailsWith(ErrorCode::Conflict)));
      },
      [&] { appendThere(); });
}

TEST_F(TwoPrograms, AnEntryThatComesDuringAnInspectionIsNoDamage) {
  atEach([&] { EXPECT_THAT(need(inspectFile(m_shop.file())), testing::IsEmpty()); }, [&] { appendThere(); });
}

TEST_F(TwoPrograms, WhatHappensDuringABackupIsNoDamage) {
  int copies = 0;
  atEach(
      [&] { EXPECT_THAT(m_shop->backUpTo(m_shop.folder() / ("copy" + std::to_string(++copies))), IsOk()); },
      [&] { appendThere(); });
}

/// Sealed records of which one is disposed of, and one sealed, while they are looked at.
class TwoProgramsAndRecords : public TwoPrograms {
 protected:
  Id sealed() {
    const Id job = m_shop.startJob();
    EXPECT_EQ(m_shop.work(job), "");
    need(m_shop->records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "test"));
    return job;
  }
  void disposeThere(const Id& job) {
    const auto done = m_other->records().dispose(job, {"lena", m_shop.clock().now(), "kept ten years"});
    EXPECT_TRUE(done || done.error().code == ErrorCode::Locked) << sentence(done.error());
  }
};

TEST_F(TwoProgramsAndRecords, ARecordIsReadWithItsOwnAddendaOrNotAtAll) {
  bool more = true;
  for (int n = 1; more; ++n) {
    const Id job = sealed();
    need(m_shop->records().addAddendum(job, "wim", kPin, "The serial is S-101.", m_shop.key()));
    more = m_between.run(
        n,
        [&] {
          const auto kept = m_shop->records().files(job);
          if (kept)
            EXPECT_EQ(kept->addenda.size(), 1u);
          else
            EXPECT_THAT(kept, FailsWith(ErrorCode::NotFound));
        },
        [&] { disposeThere(job); });
  }
}

TEST_F(TwoProgramsAndRecords, ADisposalDuringAnInspectionIsNoDamage) {
  bool more = true;
  for (int n = 1; more; ++n) {
    const Id job = sealed();
    more = m_between.run(
        n, [&] { EXPECT_THAT(need(inspectFile(m_shop.file())), testing::IsEmpty()) << n; },
        [&] { disposeThere(job); }, "job = ?");
  }
}

TEST_F(TwoProgramsAndRecords, AListSaysHowManyThereAreOfOneMoment) {
  for (int job = 0; job < 3; ++job) m_shop.startJob();
  JobQuery query;
  query.most = 2;
  atEach(
      [&] {
        const auto listed = need(m_shop->findJobs(query));
        const auto after = need(m_shop->findJobs({}));
        EXPECT_LE(listed.total, after.total);
        EXPECT_EQ(after.rows.size(), after.total);
      },
      [&] {
        Beginning beginning = m_shop.beginning();
        const auto begun = m_other->ledger().start(beginning);
        EXPECT_TRUE(begun || begun.error().code == ErrorCode::Locked) << sentence(begun.error());
      });
}

}  // namespace
}  // namespace cw
