#include "core/procedure/applicability.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

Sheet pumpSheet() {
  Sheet out;
  out.model = "Portable pump set PS-40";
  out.serials = "100 to 480";
  return out;
}

std::string told(const Applicability& found) {
  std::string out;
  for (const Message& doubt : found.doubts) out += plain(doubt) + "\n";
  return out;
}

TEST(Applicability, FitsModelAndSerial) {
  const Applicability found = applicability(pumpSheet(), "Portable pump set PS-40", "PS40-0117");
  EXPECT_EQ(found.verdict, Applies::Fits);
  EXPECT_EQ(told(found), "");
}

TEST(Applicability, IsUnfitForAnotherModelOrSerial) {
  const Applicability serial = applicability(pumpSheet(), "PS-40", "0999");
  EXPECT_EQ(serial.verdict, Applies::Unfit);
  EXPECT_EQ(told(serial), "This sheet is for serial numbers 100 to 480; the machine's is 0999.\n");
  const Applicability model = applicability(pumpSheet(), "RD-12", "117");
  EXPECT_EQ(model.verdict, Applies::Unfit);
  EXPECT_EQ(told(model), "This sheet is for Portable pump set PS-40; the machine is RD-12.\n");
  EXPECT_EQ(applicability(pumpSheet(), "RD-12", "").verdict, Applies::Unfit);
  EXPECT_EQ(applicability(pumpSheet(), "", "0999").verdict, Applies::Unfit);
  EXPECT_EQ(applicability(pumpSheet(), "RD-12", "0999").doubts.size(), 2u);
}

TEST(Applicability, IsNotJudgedForAMachineThatNobodyRegistered) {
  const Applicability found = applicability(pumpSheet(), "", "");
  EXPECT_EQ(found.verdict, Applies::NotJudged);
  EXPECT_EQ(told(found),
            "This sheet is for Portable pump set PS-40; the machine's model is not known.\n"
            "This sheet is for serial numbers 100 to 480; the machine's is not known.\n");
}

TEST(Applicability, IsForAnyWhereTheSheetSaysNothing) {
  EXPECT_EQ(applicability(Sheet(), "", "").verdict, Applies::Fits);
  EXPECT_EQ(applicability(Sheet(), "RD-12", "0031").verdict, Applies::Fits);
}

}  // namespace
}  // namespace cw
