#include "core/joint/guard.h"

#include <gtest/gtest.h>

#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

GuardSubject subject(std::string_view size, std::string_view strength) {
  GuardSubject made;
  made.thread = thread(size);
  made.grade = grade(strength, made.thread);
  return made;
}

std::vector<std::string> said(const Judgement& judgement) {
  std::vector<std::string> out;
  for (const Message& message : explain(judgement)) out.push_back(plain(message));
  return out;
}

TEST(Guard, IsSilentOnAnOrdinaryValue) {
  const Judgement judgement = judge(torque("25 N.m"), subject("M8", "8.8")).value();
  EXPECT_EQ(judgement.verdict, Verdict::InBand);
  EXPECT_TRUE(judgement.fits.empty());
}

TEST(Guard, CatchesInchPoundsTypedAsFootPounds) {
  const Judgement judgement = judge(torque("60 ft.lbf"), subject("1/4-20", "SAE 2")).value();
  EXPECT_EQ(judgement.verdict, Verdict::PastYield);
  EXPECT_EQ(judgement.fits.front(), &kPoundInch);
  EXPECT_EQ(said(judgement).back(), "Did you mean 60\u202fin·lbf?");
}

TEST(Guard, CatchesFootPoundsTypedAsInchPounds) {
  const Judgement judgement = judge(torque("75 in.lbf"), subject("1/2-13", "SAE 5")).value();
  EXPECT_EQ(judgement.verdict, Verdict::BelowBand);
  EXPECT_EQ(judgement.fits.front(), &kPoundFoot);
}

TEST(Guard, NoValueOfTheBandStaysInItWhenInchPoundsAreExchanged) {
  for (const char* size : {"M3", "M8", "M24", "M16x1.5"})
    for (const char* state : {"", "dry", "oiled"}) {
      GuardSubject made = subject(size, "8.8");
      if (*state) made.condition = condition(state);
      const Capacity band = capacityOf(made).value();
      EXPECT_LT(band.high / band.low, 1 / in(kNewtonMetre, quantity(1, kPoundInch)) * 1.0) << size << state;
      EXPECT_LT(band.low, band.yieldTypical);
      EXPECT_LE(band.yieldTypical, band.yieldCertain);
    }
}

TEST(Guard, SteelScrewInACastingIsLimitedByTheCasting) {
  GuardSubject m6 = subject("M6", "12.9");
  const Judgement inSteel = judge(torque("16 N.m"), m6).value();
  m6.hole = castingHole(millimetres(6));
  const Judgement inAluminium = judge(torque("16 N.m"), m6).value();
  EXPECT_EQ(inSteel.verdict, Verdict::InBand);
  EXPECT_EQ(inAluminium.verdict, Verdict::AboveBand);
  EXPECT_EQ(inAluminium.limit, Limit::ThreadStripping);
  m6.hole = castingHole(millimetres(24));
  EXPECT_EQ(judge(torque("16 N.m"), m6)->limit, Limit::BoltYield);
}

TEST(Guard, JudgesASettingAsTheTorqueItPutsOnTheFastener) {
  const GuardSubject m8 = subject("M8", "8.8");
  const Lever lever{inches(10), inches(10), degrees(0)};  // doubles the torque
  const Judgement direct = judge(torque("25 N.m"), m8).value();
  const Judgement set = judgeSetting(torque("12.5 N.m"), lever, newtonMetres(0), m8).value();
  EXPECT_EQ(set.verdict, direct.verdict);
  EXPECT_NEAR(set.utilisation, direct.utilisation, 1e-12);
  EXPECT_THAT(set.high * 2, IsNear(direct.high, newtonMetres(1e-9)));
}

TEST(Guard, PrevailingTorqueDoesNotCountAgainstTheBolt) {
  const GuardSubject m8 = subject("M8", "8.8");
  const Judgement bare = judge(torque("45 N.m"), m8).value();
  const Judgement locked = judgeSetting(torque("45 N.m"), std::nullopt, newtonMetres(15), m8).value();
  EXPECT_EQ(bare.verdict, Verdict::PastYield);
  EXPECT_EQ(locked.verdict, Verdict::InBand);
}

TEST(Guard, NamesBothUnitsWhereDigitsCannotTell) {
  const Judgement judgement = judge(torque("20 in.lbf"), subject("M8", "8.8")).value();
  EXPECT_EQ(said(judgement).back(), "Did you mean 20\u202fN·m or 20\u202fft·lbf?");
}

TEST(Guard, AsksForTheConditionWhereOnlyHighFrictionWouldDo) {
  EXPECT_EQ(said(judge(torque("36 N.m"), subject("M8", "8.8")).value()).back(),
            "It is right only where friction is high: state the condition.");
}

TEST(Guard, SaysWhyItDoesNotJudge) {
  GuardSubject plug = subject("M16", "8.8");
  plug.ungrounded = Ungrounded::Plug;
  EXPECT_THAT(said(judge(torque("30 N.m"), plug).value()),
              testing::ElementsAre(
                  "Not judged: a plug seals; its torque does not follow from what its thread could bear."));
  GuardSubject unmarked;
  unmarked.thread = thread("M8");
  EXPECT_EQ(judge(torque("30 N.m"), unmarked)->verdict, Verdict::NotJudged);
}

TEST(Guard, RefusesWhatIsNoTorque) {
  EXPECT_EQ(refusal(judge({"0", &kNewtonMetre}, subject("M8", "8.8"))),
            "torque: 0\u202fN·m is not above zero; give a value above zero.");
  EXPECT_FALSE(judge({}, subject("M8", "8.8")).has_value());
}

TEST(Guard, RefusesAMetricThreadWithAnInchGrade) {
  GuardSubject mixed = subject("3/8-16", "SAE 5");
  mixed.thread = thread("M8");
  EXPECT_EQ(
      refusal(judge(torque("20 N.m"), mixed)),
      "grade: SAE 5 is a grade of inch fasteners, and M8 is metric; choose a grade of the same system.");
}

TEST(Guard, RefusesEngagementLongerThanTheThread) {
  GuardSubject made = subject("M6", "8.8");
  made.hole = castingHole(millimetres(20));
  made.hole->threadLength = millimetres(12);
  EXPECT_EQ(
      refusal(judge(torque("8 N.m"), made)),
      "engagement: 20\u202fmm is longer than the thread in the hole, 12\u202fmm; give the length of full "
      "threads that engage.");
}

TEST(Guard, JudgesTheAbsurdAsPastYield) {
  EXPECT_EQ(judge(torque("4000 N.m"), subject("M6", "8.8"))->verdict, Verdict::PastYield);
}

}  // namespace
}  // namespace cw
