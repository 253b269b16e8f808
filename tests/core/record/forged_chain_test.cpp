#include <gmock/gmock.h>

#include <fstream>
#include <iterator>

#include "core/record/record_file.h"
#include "core/record/verify.h"
#include "tests/support/matchers.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

/// A record whose entries somebody with the key altered, hashed anew and signed.
class Forgery {
 public:
  explicit Forgery(std::string_view bytes) : m_record(*parseJson(bytes)) {}

  Json::Array& rows() { return *m_record.object()->at("entries").array(); }
  Json& entry(std::size_t row) { return rows()[row].object()->at("entry"); }
  void put(std::size_t row, const Body& body) {
    entry(row).set("kind", kindOf(body)).set("body", bodyToJson(body));
  }
  std::string signedAnew() {
    const auto file = readRecordFile(m_record);
    Digest head = genesis(file->shop, file->job, sha256(file->sheet));
    for (std::size_t i = 0; i < rows().size(); ++i) {
      head = entryHash(head, canonical(entry(i)));
      rows()[i].set("hash", hex(head));
    }
    m_record.set("head", hex(head)).set("count", static_cast<int>(rows().size()));
    m_record.set("key", keyId(publicOf(steadyKey())));
    m_record.set("signature", hex(sign(std::string(kRecordTag) + signedPart(m_record), steadyKey())));
    return canonical(m_record);
  }

 private:
  Json m_record;
};

std::string soundRecord() {
  Bench bench;
  EXPECT_EQ(bench.workThrough(""), "");
  return *sealRecord(bench.job(), bench.context(), steadyKey());
}

std::string trialRecord() {
  std::ifstream in(std::string(CW_TEST_DATA) + "/record/full.json", std::ios::binary);
  return std::string(std::istreambuf_iterator<char>(in), {});
}

/// What nobody could state: of things that are not there, or of what the step is not.
std::vector<Body> impossible() {
  CheckPassMade moved = checkPass("s5", {"77"});
  HandStarted stuck{"s5", 3, {"77"}};
  PassCounted positions = counted("s5", 4);
  positions.positions.value = {"77"};
  Witnessed elsewhere = marksSeen();
  elsewhere.step = "s1";
  Deviated torque = otherwise("s1", "lena");
  torque.aim = inLbf("65");
  ToolStopped unheld;
  unheld.tool = "T-99";
  return {ActDone{"nope", true, "", ""},
          ActDone{"s5", true, "", ""},
          WarningsRead{"nope"},
          CheckMade{"s5", Answer::Yes, ""},
          Measured{"s5", "1", "mm", ""},
          Applied{"s5", "B", ""},
          HandStarted{"s1", 4, {}},
          stuck,
          ConditionConfirmed{"s1", "dry"},
          toolSet("s1", "T-07", inLbf("65")),
          counted("s1", 4),
          positions,
          clicked("nope", "1"),
          clicked("s1", "1"),
          clicked("s5", "77"),
          GapsRead{"s1", {}, {}, {}, {}, {}},
          GapsRead{"s5", {}, {}, {}, {}, {}},
          moved,
          elsewhere,
          SetAside{"nope", "x"},
          LeftBlank{"nope", Absence::NotApplicable, "x", ""},
          otherwise("nope", "lena"),
          torque,
          Corrected{900'000, Json(Json::Object{}), "x"},
          Corrected{0, Json(Json::Object{}), "x"},
          Corrected{1, Json("x"), "x"},
          Reopened{"nope", "", "x"},
          Reopened{"s5", "77", "x"},
          Reopened{"s1", "1", "x"},
          Confirmed{{900'000}},
          Confirmed{{0}},
          Confirmed{{}},
          TakenApart{"nope", "x"},
          Repaired{"nope", "1", "x", "x", "lena"},
          Repaired{"cover", "77", "x", "x", "lena"},
          unheld,
          ClockWentBack{},
          JobStarted{}};
}

TEST(ForgedChain, OfEntriesThatNobodyCouldMakeIsRefusedWithTheirNumber) {
  const std::string sound = soundRecord();
  const PublicKey key = publicOf(steadyKey());
  ASSERT_TRUE(verifyRecord(Forgery(sound).signedAnew(), key).good());
  const std::size_t count = Forgery(sound).rows().size();
  for (const Body& body : impossible())
    for (std::size_t row = 1; row < count; row += 7) {
      Forgery forgery(sound);
      forgery.put(row, body);
      const std::string bytes = forgery.signedAnew();
      const int number = static_cast<int>(row) + 1;
      EXPECT_EQ(verifyRecord(bytes, key).firstBadEntry, number) << kindOf(body) << " at " << number;
      EXPECT_THAT(readRecord(bytes),
                  FailsWith(ErrorCode::Corrupt, HasSubstr("entry " + std::to_string(number))))
          << kindOf(body) << " at " << number;
    }
}

TEST(ForgedChain, OfATrialVersionIsReadWithoutHarm) {
  const std::string trial = trialRecord();
  const PublicKey key = publicOf(steadyKey());
  ASSERT_TRUE(verifyRecord(Forgery(trial).signedAnew(), key).good());
  const std::size_t count = Forgery(trial).rows().size();
  int refused = 0;
  for (const Body& body : impossible())
    for (std::size_t row = 1; row < count; row += 7) {
      Forgery forgery(trial);
      forgery.put(row, body);
      const std::string bytes = forgery.signedAnew();
      const Verification found = verifyRecord(bytes, key);
      EXPECT_EQ(readRecord(bytes).has_value(), !found.firstBadEntry.has_value()) << kindOf(body);
      refused += found.good() ? 0 : 1;
    }
  EXPECT_GT(refused, 40);
  Forgery forgery(trial);
  forgery.put(4, ActDone{"nope", true, "", ""});
  EXPECT_EQ(verifyRecord(forgery.signedAnew(), key).firstBadEntry, 5);
}

TEST(ATrialJob, IsReadAndCalledOffAndNothingElse) {
  const auto record = readRecord(trialRecord());
  ASSERT_THAT(record, IsOk());
  Bench bench;
  bench.job() = *emptyJob(record->job.shop, record->job.id, record->job.sheetBytes);
  for (const Kept& kept : record->job.entries) {
    if (std::holds_alternative<Finished>(kept.entry.body)) break;
    apply(bench.job(), *judge(bench.job(), kept.entry, From::Chain));
  }
  Moment later = bench.job().last()->time;
  later.utc += std::chrono::hours(1);
  bench.clock().set(later);
  for (const Body& body : std::vector<Body>{SignedIn{}, Finished{}, Paused{"lunch", false, "", ""},
                                            correction(4, "answer", "no"), TakenApart{"s1", "x"}})
    EXPECT_THAT(bench.say(bench.draftOf("mira", body), {"mira"}),
                FailsWith(ErrorCode::NotPermitted, HasSubstr("call it off")))
        << kindOf(body);
  EXPECT_THAT(bench.say(bench.draftOf("mira", CalledOff{"begun by a trial version"}), {"mira"}), IsOk());
  EXPECT_TRUE(bench.job().calledOff);
  EXPECT_EQ(bench.job().last()->version, kEntryVersion);
}

TEST(ForgedChain, WithAnothersVouchersIsRefused) {
  const std::string sound = soundRecord();
  const PublicKey key = publicOf(steadyKey());
  const auto firstBad = [&](std::size_t row, auto&& change) {
    Forgery forgery(sound);
    change(forgery.entry(row));
    return verifyRecord(forgery.signedAnew(), key).firstBadEntry;
  };
  const auto vouched = [](Json& entry) -> Json::Array& { return *entry.object()->at("vouched").array(); };
  EXPECT_EQ(firstBad(0, [&](Json& entry) { vouched(entry)[0].set("how", "session"); }), 1);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { vouched(entry)[0].set("how", "written"); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { vouched(entry)[0].set("how", "phone"); }), 2);
  EXPECT_EQ(
      firstBad(1, [&](Json& entry) { vouched(entry)[0].set("roles", Json::Array{Json("service-writer")}); }),
      2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { vouched(entry)[0].set("person", "otto"); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { vouched(entry).clear(); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { vouched(entry).push_back(Json(vouched(entry)[0])); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { entry.set("entered_by", "otto"); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { entry.set("seq", 7); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { entry.set("time", "2020-01-01T00:00:00.000Z"); }), 2);
  EXPECT_EQ(firstBad(1, [&](Json& entry) { entry.set("v", 1); }), 2);
}

TEST(ForgedChain, OfACorrectionThatIsNotWhole) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s5"), "");
  ASSERT_THAT(
      bench.say(correction(entryOfKind(bench.job(), "tightened", "position", "4"), "known", "instrument")),
      FailsWith(ErrorCode::InvalidInput));
  const int pulled = entryOfKind(bench.job(), "tightened", "position", "4");
  Json now;
  now.set("known", "read").set("reading", toJson(inLbf("66")));
  ASSERT_THAT(bench.say(Corrected{pulled, now, "it was read"}), IsOk());
  ASSERT_THAT(bench.say("otto", marksSeen()), IsOk());
  ASSERT_THAT(bench.say(Finished{}), IsOk());
  const std::string sound = *sealRecord(bench.job(), bench.context(), steadyKey());
  const int number = entryOfKind(bench.job(), "corrected");
  const auto& whole = std::get<Corrected>(bench.job().kept(number).entry.body);
  const auto firstBad = [&](std::string_view field, const Json& value) {
    Corrected body = whole;
    body.now.set(std::string(field), value);
    Forgery forgery(sound);
    forgery.put(static_cast<std::size_t>(number - 1), body);
    return verifyRecord(forgery.signedAnew(), publicOf(steadyKey())).firstBadEntry;
  };
  for (const auto& [field, value] :
       std::vector<std::pair<std::string, Json>>{{"reading", toJson(inLbf("180"))},
                                                 {"within", false},
                                                 {"position", "2"},
                                                 {"step", "s1"},
                                                 {"target", toJson(inLbf("66"))},
                                                 {"setting", toJson(inLbf("66"))},
                                                 {"pass", 1},
                                                 {"known", "clicked"},
                                                 {"nonsense", "x"}})
    EXPECT_EQ(firstBad(field, value), number) << field;
}

}  // namespace
}  // namespace cw
