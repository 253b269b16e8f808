#include "core/base/near_name.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

const std::vector<std::string_view> kNames = {"dry", "oiled", "moly paste", "waxed"};

TEST(NearNames, FindsSlipsOfTheKeyboard) {
  EXPECT_THAT(nearNames("oild", kNames), ElementsAre("oiled"));
  EXPECT_THAT(nearNames("dyr", kNames), ElementsAre("dry"));
  EXPECT_THAT(nearNames("Moly Psate", kNames), ElementsAre("moly paste"));
  EXPECT_THAT(nearNames("mol", kNames), ElementsAre("moly paste"));
}

TEST(NearNames, LeavesStrangersAlone) {
  EXPECT_THAT(nearNames("galvanised", kNames), IsEmpty());
  EXPECT_THAT(nearNames("", kNames), IsEmpty());
}

TEST(NearNames, PutsTheNearestFirstAndNamesEachOnce) {
  EXPECT_THAT(nearNames("8.7", {"9.8", "8.8", "8.8"}), ElementsAre("8.8"));
  EXPECT_THAT(nearNames("abcdef", {"abcxxf", "abcdex", "abcdxx"}, 2), ElementsAre("abcdex", "abcxxf"));
}

TEST(DidYouMean, ListsThem) {
  EXPECT_EQ(didYouMean({"M8", "M8x1", "M6"}), "did you mean M8, M8x1 or M6");
  EXPECT_EQ(didYouMean({}), "");
}

}  // namespace
}  // namespace cw
