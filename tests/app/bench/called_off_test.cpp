// Jobs that are given up, and jobs that a trial version left open.
#include <QListWidget>

#include "tests/app/bench/at_the_bench.h"
#include "tests/support/raw_sqlite.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class CalledOffAtTheBench : public AtTheBench {
 protected:
  CalledOffAtTheBench() { m_album = QStringLiteral("bench_called_off"); }

  /// Writes the job's one entry as a trial version did, with its link in the chain.
  void makeTrial(const Id& job) {
    test::RawSqlite base(m_sample.file());
    std::string text = base.ask("SELECT text FROM entry");
    auto entry = test::need(parseJson(text));
    Json::Object members = *entry.object();
    members.erase("vouched");
    members["v"] = Json(kTrialVersion);
    text = canonical(Json(std::move(members)));
    const Job* before = test::need(m_sample->ledger().job(job));
    const Digest root = genesis(before->shop, job, sha256(before->sheetBytes));
    ASSERT_EQ(base.run("DROP TRIGGER entry_no_update"), "");
    std::string quoted;
    for (const char c : text) quoted += c == '\'' ? std::string("''") : std::string(1, c);
    ASSERT_EQ(
        base.run("UPDATE entry SET text = '" + quoted + "', hash = '" + hex(entryHash(root, text)) + "'"),
        "");
  }
};

TEST_P(CalledOffAtTheBench, AJobIsGivenUpWithAReasonAndStandsInRecords) {
  start();
  const Id id = job().id;
  chooseWay("call-off");
  picture("way");
  enterIn("reasonField");
  EXPECT_THAT(said(), HasSubstr("for a reason"));
  type("reasonField", "wrong machine");
  enterIn("reasonField");
  EXPECT_TRUE(test::need(m_sample->ledger().job(id))->calledOff);
  EXPECT_THAT(fromQt(visible<QLabel>("listSaidText")->text()),
              AllOf(HasSubstr("WO 1"), HasSubstr("called off")));
  EXPECT_TRUE(visible<QLabel>("emptyText")->isVisible()) << "it waits for nobody";
  picture("list");
}

TEST_P(CalledOffAtTheBench, AJobOfATrialVersionIsReadAndCalledOff) {
  const Id id = m_sample.startJob();
  makeTrial(id);
  m_bench.reset();
  m_sample.reopen();
  test::need(m_workspace->openShop(toQt(m_sample.file().string())));
  m_bench = std::make_unique<BenchPlace>(*m_workspace, m_navigator, nullptr);
  m_bench->resize(1150, 800);
  m_bench->show();
  QTest::mouseClick(visible<QPushButton>("openJobButton"), Qt::LeftButton);
  EXPECT_THAT(fromQt(visible<QLabel>("trialText")->text()), HasSubstr("rules are not judged any more"));
  picture("trial");
  QComboBox* person = visible<QComboBox>("personChoice");
  person->setCurrentIndex(person->findData(QStringLiteral("mira")));
  type("pinField", "2468");
  enterIn("pinField");
  EXPECT_THAT(fromQt(visible<QLabel>("saidText")->text()), HasSubstr("for a reason"));
  type("reasonField", "begun again by this version");
  type("pinField", "2468");
  enterIn("pinField");
  EXPECT_TRUE(test::need(m_workspace->shop().ledger().refresh(id))->calledOff);
  EXPECT_THAT(fromQt(visible<QLabel>("listSaidText")->text()), HasSubstr("called off"));
}

INSTANTIATE_TEST_SUITE_P(Schemes, CalledOffAtTheBench, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw
