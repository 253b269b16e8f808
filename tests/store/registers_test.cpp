#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::SampleShop;
using testing::HasSubstr;

std::vector<std::string> eventsOf(SampleShop& shop, const std::string& tool) {
  std::vector<std::string> out;
  for (const ToolEvent& event : need(shop->tools().history(tool))) out.push_back(event.event);
  return out;
}

TEST(People, ComeBackAsTheyWereEntered) {
  SampleShop shop;
  shop.reopen();
  const Person ada = need(shop->people().find("ada"));
  EXPECT_EQ(ada.name, "Ada Quill");
  EXPECT_TRUE(ada.apprentice);
  EXPECT_EQ(ada.roles, std::set{Role::Technician});
  EXPECT_TRUE(pinMatches(ada.pinHash, test::kPin));
  EXPECT_THAT(shop->people().find("nobody"), FailsWith(ErrorCode::NotFound));
}

TEST(People, AreEnteredOnceWithSignNameAndPin) {
  SampleShop shop;
  const Person mira = need(shop->people().find("mira"));
  EXPECT_THAT(shop->people().add(mira), FailsWith(ErrorCode::AlreadyDone));
  Person other = mira;
  other.sign = "No Sign";
  EXPECT_THAT(shop->people().add(other), FailsWith(ErrorCode::InvalidInput, HasSubstr("cannot be a sign")));
  other.sign = "zoe";
  other.name = " ";
  EXPECT_THAT(shop->people().add(other), FailsWith(ErrorCode::InvalidInput, HasSubstr("name")));
  other.name = "Zoe";
  other.pinHash = "";
  EXPECT_THAT(shop->people().add(other), FailsWith(ErrorCode::InvalidInput, HasSubstr("PIN")));
}

TEST(People, KeepTheirPinWhenTheRestChanges) {
  SampleShop shop;
  Person mira = need(shop->people().find("mira"));
  mira.roles.insert(Role::Inspector);
  mira.pinHash.clear();
  need(shop->people().change(mira));
  const Person now = need(shop->people().find("mira"));
  EXPECT_TRUE(now.may(Role::Inspector));
  EXPECT_TRUE(pinMatches(now.pinHash, test::kPin));
}

TEST(Machines, ComeBackAsTheyWereEntered) {
  SampleShop shop;
  need(shop->machines().add({"Ä-2", "", "", ""}));
  EXPECT_THAT(shop->machines().add({"Ä-2", "", "", ""}), FailsWith(ErrorCode::AlreadyDone));
  EXPECT_THAT(shop->machines().add({" ", "", "", ""}), FailsWith(ErrorCode::InvalidInput));
  need(shop->machines().change({"P-1", "Test pump", "S-100", "500 h"}));
  EXPECT_EQ(need(shop->machines().find("P-1")).hours, "500 h");
  EXPECT_THAT(shop->machines().change({"P-9", "", "", ""}), FailsWith(ErrorCode::NotFound));
  EXPECT_EQ(need(shop->machines().all()).size(), 2u);
}

TEST(Tools, KeepEveryPageTheyHad) {
  SampleShop shop;
  const Deed deed{"lena", shop.clock().now(), "fell off the bench"};
  need(shop->tools().drop("T-07", deed));
  EXPECT_EQ(need(shop->tools().find("T-07")).dueNow, localDate(deed.at));
  const auto history = need(shop->tools().history("T-07"));
  ASSERT_EQ(history.size(), 2u);
  EXPECT_EQ(history[0].event, "entered");
  EXPECT_FALSE(history[0].tool.dueNow.has_value());
  EXPECT_EQ(history[1].event, "dropped");
  EXPECT_EQ(history[1].deed.by, "lena");
  EXPECT_EQ(history[1].deed.remark, "fell off the bench");
  EXPECT_EQ(history[1].deed.at, deed.at);
}

TEST(Tools, ACalibrationEndsADoubt) {
  SampleShop shop;
  const Deed deed{"lena", shop.clock().now()};
  need(shop->tools().drop("T-07", deed));
  Calibration calibration = *test::sampleTools().front().lastCalibration();
  calibration.date = *parseDate("2026-03-05");
  calibration.due = *parseDate("2027-03-05");
  need(shop->tools().calibrate("T-07", calibration, deed));
  const TorqueTool tool = need(shop->tools().find("T-07"));
  EXPECT_FALSE(tool.dueNow.has_value());
  EXPECT_EQ(tool.calibrations.size(), 2u);
  calibration.date = *parseDate("2025-01-01");
  EXPECT_THAT(shop->tools().calibrate("T-07", calibration, deed), FailsWith(ErrorCode::InvalidInput));
  calibration.date = *parseDate("2028-01-01");
  EXPECT_THAT(shop->tools().calibrate("T-07", calibration, deed),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("before it was made")));
}

TEST(Tools, GoThroughQuarantineAndRetirement) {
  SampleShop shop;
  const Deed deed{"lena", shop.clock().now()};
  need(shop->tools().quarantine("T-07", deed));
  EXPECT_EQ(need(shop->tools().find("T-07")).status, ToolStatus::Quarantined);
  need(shop->tools().release("T-07", deed));
  EXPECT_EQ(need(shop->tools().find("T-07")).status, ToolStatus::InUse);
  need(shop->tools().retire("T-07", deed));
  EXPECT_EQ(need(shop->tools().find("T-07")).status, ToolStatus::Retired);
  EXPECT_THAT(eventsOf(shop, "T-07"), testing::ElementsAre("entered", "quarantined", "released", "retired"));
  EXPECT_THAT(shop->tools().retire("T-99", deed), FailsWith(ErrorCode::NotFound));
}

TEST(Tools, AreEnteredOnceAndSound) {
  SampleShop shop;
  const Deed deed{"lena", shop.clock().now()};
  TorqueTool tool = test::sampleTools().front();
  EXPECT_THAT(shop->tools().add(tool, deed), FailsWith(ErrorCode::AlreadyDone));
  tool.id = "T-20";
  tool.deviation = 3;
  EXPECT_THAT(shop->tools().add(tool, deed), FailsWith(ErrorCode::OutOfRange));
  EXPECT_THAT(shop->tools().change(tool, deed), FailsWith(ErrorCode::NotFound));
  EXPECT_EQ(need(shop->tools().all()).size(), 2u);
}

}  // namespace
}  // namespace cw
