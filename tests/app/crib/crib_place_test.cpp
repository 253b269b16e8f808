#include "app/crib/crib_place.h"

#include "tests/app/desk_test.h"

namespace cw {
namespace {

using testing::HasSubstr;

class Crib : public DeskTest {};

TEST_F(Crib, SaysWhyAToolIsNotInDate) {
  open();
  const CribPlace place(workspace);
  ASSERT_EQ(rows(*place.page()), 2);
  place.page()->choose(1);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("its calibration ran out on 2026-02-01"));
}

TEST_F(Crib, MakesADroppedToolDueAtOnceUnderNameAndPin) {
  open();
  const CribPlace place(workspace);
  press(place, "dropButton");
  sign(place, QStringLiteral("mira"), QStringLiteral("1111"));
  EXPECT_FALSE(said(place, "signSaid").isEmpty());
  EXPECT_FALSE(test::need(workspace.shop().tools().find("T-07")).dueNow);
  sign(place, QStringLiteral("mira"), pin, QStringLiteral("Fell off the trailer."));
  EXPECT_TRUE(test::need(workspace.shop().tools().find("T-07")).dueNow);
  EXPECT_THAT(text(*place.page()).toStdString(),
              AllOf(HasSubstr("dropped or doubted on 2026-03-04"), HasSubstr("Fell off the trailer.")));
  EXPECT_FALSE(offers(place, "dropButton"));
}

TEST_F(Crib, TakesInARegisterFileUnderTheNameOfALead) {
  open();
  CribPlace place(workspace);
  const std::string path = (sample.folder() / "register.json").string();
  test::need(writeFile(path, R"({"format":"clampwright.register","version":1,
    "people":[{"sign":"jo","name":"Jo Hale","roles":["technician"],"pin":"4321"}],"machines":[{"id":"M-9"}]})"));
  place.importFrom(toQt(path));
  sign(place, QStringLiteral("mira"), pin);
  EXPECT_FALSE(said(place, "signSaid").isEmpty()) << "a technician may not";
  sign(place, QStringLiteral("lena"), pin);
  EXPECT_TRUE(said(place).contains(QLatin1String("1 people")));
  EXPECT_TRUE(workspace.shop().people().find("jo").has_value());
  EXPECT_TRUE(workspace.shop().machines().find("M-9").has_value());
}

TEST_F(Crib, PutsAToolInQuarantineAndReleasesIt) {
  open();
  const CribPlace place(workspace);
  press(place, "quarantineButton");
  sign(place, QStringLiteral("lena"), pin, QStringLiteral("Clicks twice."));
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("this tool is in quarantine"));
  EXPECT_FALSE(offers(place, "quarantineButton"));
  press(place, "releaseButton");
  sign(place, QStringLiteral("lena"), pin, QStringLiteral("Spring renewed."));
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("in date"));
}

TEST_F(Crib, FindsToolsByWhatStandsInTheirRow) {
  open();
  const CribPlace place(workspace);
  place.page()->search()->setText(QStringLiteral("ran out"));
  EXPECT_EQ(rows(*place.page()), 1);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("T-08"));
  place.page()->search()->setText(QStringLiteral("no such tool"));
  EXPECT_THAT(said(place, "deskNothing").toStdString(), HasSubstr("No tool fits"));
}

TEST_F(Crib, CanBeLookedAt) {
  open();
  CribPlace place(workspace);
  showAll(place, QStringLiteral("crib"));
  press(place, "dropButton");
  showAll(place, QStringLiteral("crib_dropped"));
}

}  // namespace
}  // namespace cw
