#include "core/joint/checks.h"
#include "core/joint/clamp_band.h"
#include "core/joint/utilisation.h"
#include "core/report/figures.h"
#include "core/units/percent.h"

namespace cw {
namespace {

constexpr int kLoadDigits = 4;
constexpr const char* kManualFirst =
    "The machine maker's manual comes first; a computed value does not replace it.";

Result<ResistanceRange> resistanceIn(const ClampCase& clamp) {
  const FastenerCase& fastener = clamp.fastener;
  if (!fastener.condition) return unstatedResistance(fastener.thread, fastener.face);
  return resistanceOf(*fastener.condition, fastener.thread, fastener.face, clamp.basis);
}

Message spread(const ResistanceRange& range, double toolDeviation) {
  if (range.basis == Basis::NutFactor)
    return {"The band is that of the nut factor and of a tool deviation of ±%1 together.",
            {percentOf(toolDeviation)}};
  return {"The band is that of friction and of a tool deviation of ±%1 together.",
          {percentOf(toolDeviation)}};
}

/// Shares of strength, as far as the grade states it.
void sayShares(FigureAnswer& answer, Force load, const ResistanceRange& range, const FastenerCase& fastener) {
  if (!fastener.grade) return;
  const Grade& grade = *fastener.grade;
  if (const auto proof = proofFraction(load, fastener.thread, grade))
    answer.sentences.push_back({"That is %1 of proof load.", {percentOf(*proof)}});
  if (const auto yield = yieldFraction(load, fastener.thread, grade))
    answer.sentences.push_back({"%1 of yield, by the axial stress alone.", {percentOf(*yield)}});
  if (const auto used = utilisation(load, range.typical.friction.thread, fastener.thread, grade))
    answer.sentences.push_back({"%1 of yield with the twist of tightening.", {percentOf(*used)}});
}

Result<void> addLoadMarks(BandOf<ForceTag>& band, const FastenerCase& fastener) {
  if (!fastener.grade) return {};
  CW_CHECK(checkGrade(*fastener.grade, fastener.thread));
  if (fastener.grade->proof)
    band.values.emplace_back("proof %1", *fastener.grade->proof * fastener.thread.stressArea);
  band.values.emplace_back("yield %1", fastener.grade->yield * fastener.thread.stressArea);
  return {};
}

/// Of the unit system that the torque is stated in.
const ForceUnit& loadUnitBeside(const TorqueUnit& unit) {
  const bool metric = unit.code.starts_with("N.") || unit.code.starts_with("kgf.");
  return metric ? kKilonewton : kPoundForce;
}

void takeCautions(FigureAnswer& answer, const Working& working) {
  answer.cautions.insert(answer.cautions.end(), working.cautions.begin(), working.cautions.end());
}

}  // namespace

Result<Outcome> clampLoadOf(const StatedTorque& torque, const ClampCase& clamp) {
  CW_CHECK(checkPositive("torque", torque.value(), *torque.unit));
  CW_TRY(range, resistanceIn(clamp));
  CW_TRY(load, clampFromTorque(torque.value(), range, clamp.toolDeviation, clamp.fastener.thread));
  const ForceUnit& unit = loadUnitBeside(*torque.unit);
  const ForceUnit& other = unit.code == kKilonewton.code ? kPoundForce : kKilonewton;
  FigureAnswer answer;
  answer.lead = {"%1 clamps, typically, with", {text(torque)}};
  answer.number = text(load.value.typical, unit, kLoadDigits);
  answer.derived = {text(load.value.typical, other, kLoadDigits)};
  answer.sentences.push_back(
      {"Between %1 and %2.", {text(load.value.low, unit, 3), text(load.value.high, unit, 3)}});
  answer.sentences.push_back(spread(range, clamp.toolDeviation));
  sayShares(answer, load.value.typical, range, clamp.fastener);
  BandOf<ForceTag> band{load.value.low, load.value.high, load.value.typical};
  CW_CHECK(addLoadMarks(band, clamp.fastener));
  answer.band = bandDrawing(band, unit);
  const FastenerCase& fastener = clamp.fastener;
  if (fastener.grade && load.value.high > fastener.grade->yield * fastener.thread.stressArea)
    answer.cautions.push_back(
        "Where friction is low and the tool reads high, this torque takes the bolt past yield.");
  GuardSubject subject;
  static_cast<FastenerCase&>(subject) = clamp.fastener;
  CW_TRY(judgement, judge(torque, subject));
  if (!guardRemark(judgement).trouble) answer.carried = CarriedTorque{torque, range.condition};
  takeCautions(answer, load.working);
  return Outcome{{std::move(answer)}, std::move(load.working)};
}

Result<Outcome> torqueForLoad(const Worked<Force>& load, const TorqueUnit& unit, const ClampCase& clamp) {
  CW_CHECK(checkPositive("load", load.value, kKilonewton));
  CW_TRY(range, resistanceIn(clamp));
  CW_TRY(torque, torqueFromClamp(load.value, range, clamp.toolDeviation, clamp.fastener.thread));
  FigureAnswer answer =
      torqueAnswer({"A clamp load of %1 takes, typically,", {text(load.value, kKilonewton, 4)}},
                   torque.value.typical, unit);
  answer.sentences.push_back(
      {"Between %1 and %2.", {text(torque.value.low, unit), text(torque.value.high, unit)}});
  answer.sentences.push_back(spread(range, clamp.toolDeviation));
  sayShares(answer, load.value, range, clamp.fastener);
  BandOf<TorqueTag> band{torque.value.low, torque.value.high, torque.value.typical};
  if (clamp.fastener.grade) {
    CW_TRY(capacity, capacityOf(clamp.fastener));
    band.values.emplace_back("yield, typical friction %1", capacity.yieldTypical);
  }
  answer.band = bandDrawing(band, unit);
  answer.carried = CarriedTorque{{significant(in(unit, torque.value.typical), 4), &unit}, range.condition};
  takeCautions(answer, torque.working);
  answer.cautions.push_back(kManualFirst);
  Working working = load.working;
  working.include(torque.working);
  working.formula = load.working.formula.empty() ? torque.working.formula
                                                 : load.working.formula + "; " + torque.working.formula;
  return Outcome{{std::move(answer)}, std::move(working)};
}

}  // namespace cw
