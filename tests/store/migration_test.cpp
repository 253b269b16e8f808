#include "core/store/migrations.h"

#include <fstream>
#include <regex>

#include "core/base/resource.h"
#include "core/record/next.h"
#include "core/record/verify.h"
#include "core/store/database.h"
#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using test::need;
using test::RawSqlite;

std::string dump(const std::string& version) {
  std::ifstream in(CW_TEST_DATA "/schema/" + version + ".sql");
  return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<fs::path> filesIn(const TemporaryFolder& folder) {
  std::vector<fs::path> out;
  for (const auto& file : fs::directory_iterator(folder.path())) out.push_back(file.path().filename());
  return out;
}

/// A shop file as the program of that version left it, with a job under way.
class FileOfVersion : public testing::TestWithParam<const char*> {
 protected:
  FileOfVersion() : m_file(m_folder / "shop.clampwright") { test::sqlite(m_file, dump(GetParam())); }

  TemporaryFolder m_folder;
  fs::path m_file;
  SteppingClock m_clock{*parseRfc3339("2026-06-01T12:00:00Z"), std::chrono::seconds(1)};
};

INSTANTIATE_TEST_SUITE_P(Released, FileOfVersion, testing::Values("0001", "0002", "0003_trial"));

TEST(TrialRecord, VerifiesByItsBytesAndSaysWhatItIs) {
  TemporaryFolder folder;
  test::sqlite(folder / "shop.clampwright", dump("0003_trial"));
  SteppingClock clock(*parseRfc3339("2026-06-01T12:00:00Z"), std::chrono::seconds(1));
  const auto shop = need(Shop::open(folder / "shop.clampwright", clock));
  JobQuery query;
  query.states = {JobState::Sealed};
  const auto sealed = need(shop->findJobs(query)).rows;
  ASSERT_EQ(sealed.size(), 1u);
  const std::string bytes = need(shop->records().bytes(sealed[0].job));
  const Verification verified = verifyRecord(bytes, shop->identity().key);
  EXPECT_TRUE(verified.good()) << testing::PrintToString(verified.problems.size());
  EXPECT_TRUE(verified.trial);
  EXPECT_TRUE((*shop->ledger().job(sealed[0].job))->finished);
  EXPECT_THAT(shop->records().dispose(sealed[0].job, {"lena", clock.now(), "kept ten years"}), IsOk());
  EXPECT_THAT(need(inspectFile(folder / "shop.clampwright")), testing::IsEmpty());
}

/// The first version's.
class OldFile : public testing::Test {
 protected:
  OldFile() : m_file(m_folder / "shop.clampwright") { test::sqlite(m_file, dump("0001")); }

  TemporaryFolder m_folder;
  fs::path m_file;
  SteppingClock m_clock{*parseRfc3339("2026-06-01T12:00:00Z"), std::chrono::seconds(1)};
};

TEST(Migrations, AreNumberedWithoutGaps) {
  const auto files = resourcesBelow("schema/");
  ASSERT_EQ(static_cast<int>(files.size()), newestVersion());
  for (int i = 0; i < newestVersion(); ++i)
    EXPECT_EQ(files[static_cast<std::size_t>(i)].substr(7, 5), "000" + std::to_string(i + 1) + "_");
}

TEST_P(FileOfVersion, BecomesWhatANewFileIs) {
  need(Database::open(m_file, m_clock.now()).map([](Database&&) {}));
  need(Database::create(m_folder / "new").map([](Database&&) {}));
  const auto old = need(Connection::open(m_file, Connection::Access::Read, kPatience));
  const auto fresh = need(Connection::open(m_folder / "new", Connection::Access::Read, kPatience));
  EXPECT_EQ(need(schemaOf(*old)), need(schemaOf(*fresh)));
  EXPECT_EQ(need(old->pragma("user_version")), std::to_string(newestVersion()));
  EXPECT_THAT(need(inspectFile(m_file)), testing::IsEmpty());
}

TEST_P(FileOfVersion, KeepsEveryRow) {
  const char* kRows =
      "SELECT group_concat(job || sequence || id || kind || text || previous || hash) FROM entry";
  const std::string before = RawSqlite(m_file).ask(kRows);
  ASSERT_FALSE(before.empty());
  const auto shop = need(Shop::open(m_file, m_clock));
  EXPECT_EQ(RawSqlite(m_file).ask(kRows), before);
  JobQuery query;
  query.words = "cover";
  const auto jobs = need(shop->findJobs(query)).rows;
  ASSERT_EQ(std::to_string(jobs.size()), RawSqlite(m_file).ask("SELECT count(*) FROM job"))
      << "the new index knows the old jobs";
  const Job& job = **shop->ledger().job(jobs[0].job);
  EXPECT_TRUE(job.isTrial());
  EXPECT_EQ(next(job).stage,
            GetParam() == std::string("0003_trial") ? Stage::TightenPosition : Stage::HandStart);
}

TEST_P(FileOfVersion, ItsOpenJobTakesNothingButItsCallingOff) {
  const auto shop = need(Shop::open(m_file, m_clock));
  const Id job = need(shop->findJobs({})).rows.at(0).job;
  const auto say = [&](Body body) {
    Draft draft;
    draft.id = Id::make(m_clock.now()), draft.enteredBy = "mira", draft.body = std::move(body);
    return shop->ledger().append(job, draft, {{"mira", std::string(test::kPin)}});
  };
  for (const Body& body : {Body(SignedIn{}), Body(HandStarted{"s5", 4, {}}), Body(Finished{}),
                           Body(Paused{"", false, "", ""}), Body(TakenApart{"s1", "weeps"})})
    EXPECT_THAT(say(body), FailsWith(ErrorCode::NotPermitted, testing::HasSubstr("call it off")))
        << kindOf(body);
  EXPECT_THAT(say(CalledOff{"begun by the trial version"}), IsOk());
  EXPECT_EQ(need(shop->findJobs({})).rows.at(0).state, JobState::CalledOff);
  EXPECT_THAT(say(CalledOff{"once more"}), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(need(inspectFile(m_file)), testing::IsEmpty());
}

TEST_F(OldFile, LeavesADatedCopyOfItself) {
  need(Database::open(m_file, m_clock.now()).map([](Database&&) {}));
  const fs::path copy =
      m_folder / ("shop-before-" + std::to_string(newestVersion()) + "-20260601T120000Z.clampwright");
  ASSERT_TRUE(fs::exists(copy)) << testing::PrintToString(filesIn(m_folder));
  EXPECT_EQ(RawSqlite(copy).ask("PRAGMA user_version"), "1");
  EXPECT_EQ(RawSqlite(copy).ask("SELECT count(*) FROM entry"),
            RawSqlite(m_file).ask("SELECT count(*) FROM entry"));
  EXPECT_THAT(need(inspectFile(copy)), testing::IsEmpty());
}

TEST_F(OldFile, StaysAsItWasIfAStepFails) {
  test::sqlite(m_file, "CREATE TABLE job_words_content(in_the_way)");
  EXPECT_THAT(Database::open(m_file, m_clock.now()).map([](Database&&) {}), testing::Not(IsOk()));
  RawSqlite file(m_file);
  EXPECT_EQ(file.ask("PRAGMA user_version"), "1");
  EXPECT_EQ(file.ask("SELECT count(*) FROM sqlite_schema WHERE name = 'job_words'"), "0");
  EXPECT_EQ(file.run("DROP TABLE job_words_content"), "");
  EXPECT_THAT(Database::open(m_file, m_clock.now()).map([](Database&&) {}), IsOk())
      << "and can be tried again";
}

TEST(NewFile, IsNotMigratedAgain) {
  test::SampleShop shop;
  shop.reopen();
  EXPECT_THAT(filesIn(shop.folder()),
              testing::Each(testing::ResultOf([](const fs::path& p) { return p.string().find("before"); },
                                              testing::Eq(std::string::npos))));
}

}  // namespace
}  // namespace cw
