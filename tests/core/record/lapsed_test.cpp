#include "core/record/lapsed.h"

#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

class Lapsed : public testing::Test {
 protected:
  /// In the final pass, and parked.
  void park() {
    ASSERT_EQ(bench.workThrough("s4"), "");
    ASSERT_TRUE(bench.say(HandStarted{"s5", 4, {}}));
    ASSERT_TRUE(bench.say(ConditionConfirmed{"s5", "dry"}));
    ASSERT_TRUE(bench.say(test::toolSet("s5", "T-07", test::inLbf("33"))));
    ASSERT_TRUE(bench.say(Paused{"gasket torn", true, "a gasket", "drained"}));
  }
  std::vector<std::string> by(const char* when) {
    std::vector<std::string> out;
    for (const Message& each : lapsedBy(bench.job(), {people, tools}, *parseRfc3339(when)))
      out.push_back(plain(each));
    return out;
  }

  test::Bench bench;
  std::vector<Person> people = test::samplePeople();
  std::vector<TorqueTool> tools = test::sampleTools();
};

TEST_F(Lapsed, NothingWhileAllIsInDate) {
  ASSERT_EQ(bench.workThrough("s5"), "");
  ASSERT_TRUE(bench.say(Paused{"lunch", false, "", ""}));
  EXPECT_THAT(by("2026-03-05T08:00:00+01:00"), IsEmpty());
}

TEST_F(Lapsed, NamesTheJointThatStartsAgain) {
  park();
  EXPECT_THAT(by("2026-03-05T08:00:00+01:00"),
              ElementsAre(testing::HasSubstr("Test cover is partly tightened")));
}

TEST_F(Lapsed, NamesWrenchAndBatchOnceTheirDatesArePast) {
  park();
  const auto told = by("2031-01-01T08:00:00+01:00");
  EXPECT_THAT(told, testing::Contains(testing::StartsWith("Wrench T-07")));
  EXPECT_THAT(told, testing::Contains(testing::HasSubstr("expired on")));
  EXPECT_THAT(told, testing::SizeIs(3));
}

}  // namespace
}  // namespace cw
