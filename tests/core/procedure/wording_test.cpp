#include "core/procedure/wording.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(Sentences, EndWhereACapitalFollows) {
  EXPECT_THAT(sentences("Clean the face. Measure 0.5 mm of 60 in. lbs. at most!"),
              ElementsAre("Clean the face", "Measure 0.5 mm of 60 in. lbs. at most"));
  EXPECT_THAT(sentences("No end mark"), ElementsAre("No end mark"));
  EXPECT_THAT(sentences(""), IsEmpty());
}

TEST(WordCount, CountsWhatStandsBetweenBlanks) {
  EXPECT_EQ(wordCount("Tighten the  pump-cover's screws; then rest."), 6U);
  EXPECT_EQ(wordCount(""), 0U);
}

TEST(Actions, AreTheVerbsThatTell) {
  EXPECT_THAT(actions("Tighten the cover"), ElementsAre("tighten"));
  EXPECT_THAT(actions("Remove the bolt, then discard it"), ElementsAre("remove", "discard"));
  EXPECT_THAT(actions("Lock out the supply and drain the pump"), ElementsAre("lock", "drain"));
  EXPECT_THAT(actions("Start the pump; measure the flow"), ElementsAre("start", "measure"));
}

TEST(Actions, AreNotWhatDescribes) {
  EXPECT_THAT(actions("Check that the faces are dry and clean"), ElementsAre("check"));
  EXPECT_THAT(actions("Grease on the thread overloads the screw"), IsEmpty());
  EXPECT_THAT(actions("Do not turn the nut again"), IsEmpty());
  EXPECT_THAT(actions("Never apply heat"), IsEmpty());
  EXPECT_THAT(actions("A pump that starts can crush and cut hands"), IsEmpty());
}

TEST(VagueWords, LeaveTheAmountOpen) {
  EXPECT_THAT(vagueWords("Tighten securely, approximately as required"),
              ElementsAre("securely", "approximately", "as required"));
  EXPECT_THAT(vagueWords("Turn it about 5 degrees"), ElementsAre("about 5"));
  EXPECT_THAT(vagueWords("Turn it about its axis"), IsEmpty());
}

}  // namespace
}  // namespace cw
