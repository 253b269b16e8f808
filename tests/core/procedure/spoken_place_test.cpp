#include "core/procedure/spoken_place.h"

#include <gtest/gtest.h>

namespace cw {
namespace {

TEST(SpokenPlace, CountsAsPeopleDo) {
  EXPECT_EQ(spokenPlace("steps[2].cautions[0]"), "step 3, caution 1");
  EXPECT_EQ(spokenPlace("parts[0].single-use"), "part 1, single-use");
  EXPECT_EQ(spokenPlace("joints[9].passes.shares_percent[1]"), "joint 10, passes, shares_percent 2");
  EXPECT_EQ(spokenPlace("steps"), "steps");
  EXPECT_EQ(spokenPlace(""), "");
}

TEST(SpokenPlace, LeavesLabelsAsTheyStandOnThePart) {
  EXPECT_EQ(spokenPlace("joints[0].positions[2].fastener"), "joint 1, position 2, fastener");
  EXPECT_EQ(spokenPlace("joints[0].positions[A.1].fastener"), "joint 1, position A.1, fastener");
}

TEST(SpokenPlace, LeavesWhatIsNoPlace) {
  for (const char* odd : {"[", "]", "[0]", "steps[", "steps[x]"})
    EXPECT_FALSE(spokenPlace(odd).empty()) << odd;
  EXPECT_EQ(spokenPlace("line 1, column 3"), "line 1, column 3");
}

}  // namespace
}  // namespace cw
