// The gap between the faces, read at the bench after a pass.
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::HasSubstr;

Sheet sheetWithGaps() {
  Sheet sheet = test::sampleSheet();
  sheet.joints.front().passes.gaps = GapReadings{4, {1}, {"0.8", &kMillimetre}};
  return sheet;
}

class GapsAtTheBench : public AtTheBench {
 protected:
  GapsAtTheBench() : AtTheBench(sheetWithGaps()) { m_album = QStringLiteral("bench_gaps"); }

  void walkToGaps() {
    walkToTighten();
    for (int i = 0; i < 4; ++i) key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::ReadGaps) << said();
  }
  void typeGaps(std::initializer_list<const char*> gaps) {
    for (const char* gap : gaps) {
      QTest::keyClicks(&run(), QLatin1String(gap));
      key(Qt::Key_Return);
    }
  }
  std::string gapsText() { return fromQt(visible<QLabel>("gapsText")->text()); }
};

TEST_P(GapsAtTheBench, AreTypedByDigitsAndEnterAlone) {
  walkToGaps();
  picture("first");
  typeGaps({"1.20", "1.25"});
  picture("third");
  typeGaps({"1.3", "1.22"});
  EXPECT_THAT(gapsText(), HasSubstr("differ by 0.1"));
  picture("even");
  const int before = job().count();
  key(Qt::Key_Return);
  EXPECT_EQ(job().count(), before + 1);
  const auto read = std::get<GapsRead>(job().last()->body);
  EXPECT_EQ(read.gaps.front(), (StatedLength{"1.20", &kMillimetre}));
  EXPECT_TRUE(read.within);
  EXPECT_EQ(run().stage(), Stage::SetTool);
}

TEST_P(GapsAtTheBench, ThatDifferTooMuchAreReadAgain) {
  walkToGaps();
  typeGaps({"1.2", "1.2", "2.4", "1.2"});
  EXPECT_THAT(gapsText(), HasSubstr("more than 0.8"));
  picture("uneven");
  key(Qt::Key_Return);
  EXPECT_FALSE(std::get<GapsRead>(job().last()->body).within);
  EXPECT_EQ(run().stage(), Stage::ReadGaps);
  typeGaps({"1.2", "1.2", "1.4", "1.2"});
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::SetTool);
}

TEST_P(GapsAtTheBench, AreTakenBackOneByOneAndRefusedWhereTheyAreNone) {
  walkToGaps();
  typeGaps({"1.2"});
  type("gapField", "0.05 in");
  key(Qt::Key_Return);
  EXPECT_THAT(fromQt(visible<QLabel>("gapsTaken")->text()), HasSubstr("2:\u00a0"
                                                                      "0.05"));
  QTest::mouseClick(visible<QPushButton>("takeBackButton"), Qt::LeftButton);
  EXPECT_THAT(fromQt(visible<QLabel>("gapsTaken")->text()), testing::Not(HasSubstr("2:\u00a0"
                                                                                   "0.05")));
  type("gapField", "wide");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), HasSubstr("wide"));
  EXPECT_THAT(gapsText(), HasSubstr("place 2"));
}

TEST_P(GapsAtTheBench, ThatCannotBeBroughtEvenAreLetBeByALeadWithTheirPin) {
  walkToGaps();
  typeGaps({"1.2", "1.2", "2.4", "1.2"});
  type("leadField", "lena");
  type("reasonField", "the flange is bent");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), HasSubstr("he PIN of Lena Fjord is missing"));
  type("leadPinField", "2468");
  key(Qt::Key_Return);
  EXPECT_EQ(std::get<GapsRead>(job().last()->body).allowedBy, "lena") << said();
  EXPECT_EQ(run().stage(), Stage::SetTool);
}

INSTANTIATE_TEST_SUITE_P(Schemes, GapsAtTheBench, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw
