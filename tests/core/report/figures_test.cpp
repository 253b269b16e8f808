#include "core/report/figures.h"

#include <gmock/gmock.h>

#include "core/fastener/catalogue.h"
#include "core/joint/clamp_target.h"
#include "tests/core/joint/pen_and_paper.h"

namespace cw {
namespace {

using testing::Contains;
using testing::HasSubstr;

StatedTorque torqueOf(const char* text) {
  return parse<TorqueTag>(text).value();
}

FastenerCase fastenerOf(const char* thread, const char* grade, const char* condition) {
  FastenerCase out;
  out.thread = shippedCatalogue().thread(thread).value();
  out.grade = shippedCatalogue().grade(grade, out.thread).value();
  out.condition = shippedCatalogue().condition(condition).value();
  return out;
}

std::string said(const std::vector<Message>& sentences) {
  return say(sentences, plain);
}

TEST(Figures, StateTheGivenUnitFirstAndTheOtherShopUnitsBesideIt) {
  for (const char* text : {"30 N.m", "22 ft.lbf", "60 in.lbf", "3 kgf.m"}) {
    const FigureAnswer answer = convertedTorque(torqueOf(text))->answers.front();
    EXPECT_EQ(answer.number, cw::text(torqueOf(text)));
    EXPECT_EQ(answer.derived.size(), torqueOf(text).unit == &kKilogramMetre ? 3u : 2u);
  }
}

TEST(Figures, EveryOutcomeCanBeRecomputedFromItsWorking) {
  const FastenerCase fastener = fastenerOf("M8", "8.8", "dry");
  const double bandTolerance = 2e-4;  // cancellation in the spreads, as in Working tests
  using testing_joint::expectRecomputable;
  expectRecomputable(convertedTorque(torqueOf("30 N.m"))->working);
  for (const Basis basis : {Basis::NutFactor, Basis::LongForm}) {
    expectRecomputable(clampLoadOf(torqueOf("25 N.m"), {fastener, basis, 0.04})->working, bandTolerance);
    expectRecomputable(
        changedCondition(torqueOf("30 N.m"), shippedCatalogue().condition("oiled").value(), fastener, basis)
            ->working,
        bandTolerance);
  }
  const auto load = writtenClampLoad("75 % of proof", fastener.thread, fastener.grade).value();
  expectRecomputable(torqueForLoad(load, kPoundFoot, {fastener, Basis::NutFactor, 0.04})->working,
                     bandTolerance);
  GuardSubject subject;
  static_cast<FastenerCase&>(subject) = fastener;
  expectRecomputable(guardedTorque(torqueOf("25 N.m"), std::nullopt, subject)->working);
  expectRecomputable(angleFromSnug({fastener.thread, kilonewtons(17), kilonewtons(3), millimetres(20),
                                    millimetres(10), memberMaterial("aluminium").value()})
                         ->working);
}

TEST(Figures, FirstAnswerAChangedConditionWithTheStatedOne) {
  const auto outcome = changedCondition(torqueOf("30 N.m"), shippedCatalogue().condition("oiled").value(),
                                        fastenerOf("M8", "8.8", "dry"), std::nullopt)
                           .value();
  ASSERT_EQ(outcome.answers.size(), 2u);
  EXPECT_EQ(outcome.answers[0].carried->insteadOf, "");
  EXPECT_EQ(outcome.answers[0].carried->condition, "dry");
  EXPECT_THAT(outcome.answers[1].carried->insteadOf, HasSubstr("dry"));
  // equal clamp load: 30·0.15/0.20
  EXPECT_NEAR(outcome.answers[1].carried->torque.number(), 22.5, 1e-9);
  EXPECT_THAT(said(outcome.answers[1].cautions), HasSubstr("deviation"));
  EXPECT_TRUE(outcome.answers[1].band);
}

TEST(Figures, CarryNothingThatTheGuardSpeaksAgainst) {
  GuardSubject subject;
  static_cast<FastenerCase&>(subject) = fastenerOf("M8", "8.8", "dry");
  EXPECT_TRUE(guardedTorque(torqueOf("25 N.m"), std::nullopt, subject)->answers[0].carried);
  EXPECT_FALSE(guardedTorque(torqueOf("60 ft.lbf"), std::nullopt, subject)->answers[0].carried);
}

TEST(Figures, SayWhenTheManualsColumnsDisagree) {
  GuardSubject subject;
  static_cast<FastenerCase&>(subject) = fastenerOf("M8", "8.8", "dry");
  const auto answer = guardedTorque(torqueOf("25 N.m"), torqueOf("25 ft.lbf"), subject)->answers[0];
  EXPECT_THAT(said(answer.cautions), HasSubstr("not the same torque"));
}

TEST(Figures, JudgeAWrenchByItsDeviationAgainstTheTolerance) {
  WrenchQuestion question;
  question.aim = torqueOf("30 N.m");
  question.graduation = torqueOf("1 N.m");
  question.tolerance = TorqueBand{newtonMetres(27), newtonMetres(33)};
  question.deviation = 0.02;
  EXPECT_TRUE(wrenchFor(question, false)->answers[0].cautions.empty());
  question.deviation = 0.2;
  EXPECT_THAT(said(wrenchFor(question, false)->answers[0].cautions), HasSubstr("better one"));
  question.graduation = torqueOf("40 N.m");
  EXPECT_FALSE(wrenchFor(question, false)) << "no mark inside";
}

TEST(Figures, SpeakOfTheWrenchInTheUnitItWasMeasuredIn) {
  const StatedLever lever{parse<LengthTag>("10 in").value(), parse<LengthTag>("3 in").value(), std::nullopt};
  EXPECT_THAT(said(torqueBehind(torqueOf("20 ft.lbf"), lever)->answers[0].cautions), HasSubstr("10\u202fin"));
}

TEST(ClampTarget, IsAForceOrAShareOfStrength) {
  const FastenerCase fastener = fastenerOf("M8", "8.8", "dry");
  const auto load = [&](const char* text) { return writtenClampLoad(text, fastener.thread, fastener.grade); };
  EXPECT_NEAR(load("17 kN")->value.si(), 17000, 1e-6);
  // ISO 898-1: Sp 580 MPa, As 36.6 mm², Rp 640 MPa
  EXPECT_NEAR(load("75 % of proof")->value.si(), 0.75 * 580 * 36.6, 1);
  EXPECT_NEAR(load("90% yield")->value.si(), 0.9 * 640 * 36.6, 1);
  for (const char* text : {"75 %", "75 % of nothing", "17", "17 N.m", "-5 kN", "500 % of proof"})
    EXPECT_FALSE(load(text)) << text;
  EXPECT_FALSE(writtenClampLoad("75 % of proof", fastener.thread, std::nullopt));
}

TEST(BandDrawing, KeepsEverythingOnItsScale) {
  for (const double value : {0.001, 5.0, 29.0, 31.0, 4000.0}) {
    BandOf<TorqueTag> band{newtonMetres(28), newtonMetres(32), newtonMetres(30)};
    band.values.emplace_back("stated %1", newtonMetres(value));
    const BandDrawing drawing = bandDrawing(band, kNewtonMetre);
    EXPECT_LE(drawing.low, drawing.high);
    for (const auto* marks : {&drawing.band, &drawing.values, &drawing.ticks})
      for (const BandDrawing::Mark& mark : *marks) {
        EXPECT_GE(mark.at, 0) << plain(mark.text);
        EXPECT_LE(mark.at, 1) << plain(mark.text);
      }
    EXPECT_GE(drawing.ticks.size(), 2u);
    EXPECT_LE(drawing.ticks.size(), 7u);
  }
}

}  // namespace
}  // namespace cw
