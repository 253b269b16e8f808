#include "core/procedure/torques_in_text.h"

#include <gmock/gmock.h>

#include "core/units/unit.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

std::vector<std::string> said(std::string_view text, const TorqueUnit& unit) {
  std::vector<std::string> out;
  for (const Message& message : torquesInUnit(text, unit)) out.push_back(plain(message));
  return out;
}

// 1 in·lbf = 0.1129848290276167 N·m and 1 ft·lbf = 1.3558179483314004 N·m exactly as NIST SP 811, appendix B
// prints them (1.129 848 E-01 and 1.355 818 E+00), from memory.
TEST(TorquesInText, AreSaidInTheUnitOfTheWrenchInHand) {
  EXPECT_THAT(said("Never above 9 N·m: the boss is thin.", kPoundInch),
              ElementsAre("9\u202fN·m is 79.66\u202fin·lbf"));
  EXPECT_THAT(said("Final 60-70 in. lbs., dry.", kNewtonMetre),
              ElementsAre("60\u202fin·lbf is 6.779\u202fN·m", "70\u202fin·lbf is 7.909\u202fN·m"));
}

TEST(TorquesInText, AreNotSaidWhereTheTextSpeaksInThatUnitItself) {
  EXPECT_THAT(said("Never above 9 N·m (80 in-lb).", kPoundInch), IsEmpty());
  EXPECT_THAT(said("Never above 80 in-lb.", kPoundInch), IsEmpty());
}

TEST(TorquesInText, LeaveOtherNumbersAlone) {
  EXPECT_THAT(said("Oil all 6 screws; leave 0.5 mm.", kPoundInch), IsEmpty());
}

}  // namespace
}  // namespace cw
