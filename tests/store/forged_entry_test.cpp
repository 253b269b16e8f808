// Entries that nobody could have made, written into the table behind the program's back and chained as they
// must be: found with their number, and taken for nothing.
#include <fstream>

#include "core/store/inspect.h"
#include "tests/support/forged_entry.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::kPin;
using test::need;
using testing::AllOf;
using testing::Contains;
using testing::Field;
using testing::HasSubstr;

void expectFoundAt(int sequence, const std::filesystem::path& file, const Id& job, Clock& clock) {
  const std::string place = "job " + job.text() + ", entry " + std::to_string(sequence);
  EXPECT_THAT(need(inspectFile(file)),
              Contains(AllOf(Field(&Finding::code, "chain"), Field(&Finding::place, HasSubstr(place)))));
  const auto shop = need(Shop::open(file, clock));
  EXPECT_THAT(shop->ledger().job(job), FailsWith(ErrorCode::Corrupt, HasSubstr(place)));
  Draft draft;
  draft.id = Id::make(clock.now()), draft.enteredBy = "mira", draft.body = CalledOff{"odd"};
  EXPECT_THAT(shop->ledger().append(job, draft, {{"mira", std::string(kPin)}}),
              FailsWith(ErrorCode::Corrupt, HasSubstr(place)));
  EXPECT_THAT(shop->ledger().isSignedIn(job, "mira"), FailsWith(ErrorCode::Corrupt));
  EXPECT_THAT(shop->backUpTo(file.string() + ".copy"), FailsWith(ErrorCode::Corrupt));
  EXPECT_THAT(shop->findJobs({}), IsOk()) << "the other jobs are still to be found";
}

class ForgedEntry : public testing::TestWithParam<const char*> {};

INSTANTIATE_TEST_SUITE_P(After, ForgedEntry, testing::Values("start", "s1", "s4", "s5"));

TEST_P(ForgedEntry, IsAFindingWithItsNumber) {
  test::SampleShop shop;
  const Id id = shop.startJob();
  if (GetParam() != std::string("start")) ASSERT_EQ(shop.work(id, GetParam()), "");
  const Job job = **shop->ledger().job(id);
  shop.close();
  for (const auto& [kind, body] : test::impossibleBodies()) {
    SCOPED_TRACE(kind + " " + body);
    const auto copy = shop.folder() / "forged";
    std::filesystem::copy_file(shop.file(), copy, std::filesystem::copy_options::overwrite_existing);
    test::insertForged(copy, job, test::forgedAfter(job, kind, body));
    expectFoundAt(job.count() + 1, copy, id, shop.clock());
  }
}

TEST(ForgedTrialEntry, IsAFindingWithItsNumberToo) {
  TemporaryFolder folder;
  const auto whole = folder / "whole", copy = folder / "forged";
  std::ifstream in(CW_TEST_DATA "/schema/0003_trial.sql");
  test::sqlite(whole, std::string(std::istreambuf_iterator<char>(in), {}));
  SteppingClock clock(*parseRfc3339("2026-06-01T12:00:00Z"), std::chrono::seconds(1));
  auto shop = need(Shop::open(whole, clock));
  const Id id = need(shop->findJobs({})).rows.at(0).job;
  const Job job = **shop->ledger().job(id);
  shop.reset();
  for (const auto& [kind, body] : test::impossibleBodies()) {
    // Of a trial entry it is judged that it speaks of what is there, not that it was allowed.
    if (body.find("nope") == std::string::npos && body.find("77") == std::string::npos &&
        body.find("900000") == std::string::npos && kind != "started" && kind != "painted")
      continue;
    if (kind == "tool-set" || kind == "tool-stopped") continue;
    SCOPED_TRACE(kind + " " + body);
    std::filesystem::copy_file(whole, copy, std::filesystem::copy_options::overwrite_existing);
    test::insertForged(copy, job, test::forgedAfter(job, kind, body));
    expectFoundAt(job.count() + 1, copy, id, clock);
  }
}

TEST(ForgedEntryBehindARecord, IsFoundAndTheRecordStays) {
  test::SampleShop shop;
  const Id id = shop.startJob();
  ASSERT_EQ(shop.work(id), "");
  const std::string record = need(shop->records().seal(id, {"mira", std::string(kPin)}, shop.key(), "test"));
  const Job job = **shop->ledger().job(id);
  shop.close();
  test::insertForged(shop.file(), job, test::forgedAfter(job, "done", R"({"step":"s1"})"));
  EXPECT_THAT(need(inspectFile(shop.file())),
              Contains(Field(&Finding::place, HasSubstr("entry " + std::to_string(job.count() + 1)))));
  EXPECT_EQ(need(shop.another()->records().bytes(id)), record);
}

}  // namespace
}  // namespace cw
