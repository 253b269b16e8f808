#include "core/procedure/model_fit.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

bool agree(const char* sheet, const char* machine) {
  return !forAnotherModel(sheet, machine).has_value();
}

TEST(ModelFit, ComparesNamesAsTheyAreWrittenOnPlates) {
  EXPECT_TRUE(agree("Portable pump set PS-40", "portable pump set PS 40"));
  EXPECT_TRUE(agree("PS-40 and PS-42", "PS-42"));
  EXPECT_TRUE(agree("PS-40", "Portable pump set PS-40"));
  EXPECT_FALSE(agree("Portable pump set PS-40", "Right-angle gear drive RD-12"));
  EXPECT_FALSE(agree("PS-4", "PS-40"));
  EXPECT_FALSE(agree("PS-40", "PS-4"));
  EXPECT_TRUE(agree("PS-40, PS-4", "PS-4"));
}

TEST(ModelFit, SaysNothingWhereOneOfThemIsNotKnown) {
  EXPECT_TRUE(agree("", "PS-40"));
  EXPECT_TRUE(agree("PS-40", ""));
}

TEST(ModelFit, NamesBoth) {
  EXPECT_EQ(plain(*forAnotherModel("PS-40", "RD-12")), "This sheet is for PS-40; the machine is RD-12.");
}

}  // namespace
}  // namespace cw
