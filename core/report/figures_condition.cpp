#include "core/joint/checks.h"
#include "core/joint/recondition.h"
#include "core/report/figures.h"

namespace cw {
namespace {

std::string factorText(double factor) {
  return significant(factor, 3);
}

/// What happens to parts in the other condition that are tightened as specified all the same.
void sayUnchanged(FigureAnswer& answer, const StatedTorque& torque, const Condition& inUse, double loadShare,
                  const FastenerCase& fastener) {
  answer.sentences.push_back(
      {"Tightened to %1 all the same, “%2” parts would be clamped %3 times as hard as specified.",
       {text(torque), inUse.name, factorText(loadShare)}});
  if (!fastener.grade) return;
  GuardSubject subject;
  static_cast<FastenerCase&>(subject) = fastener;
  subject.condition = inUse;
  const auto judgement = judge(torque, subject);
  if (judgement && judgement->utilisation > 1)
    answer.cautions.push_back({"%1 on “%2” parts brings the fastener to %3 % of what it bears.",
                               {text(torque), inUse.name, significant(judgement->utilisation * 100, 3)}});
}

FigureAnswer asSpecified(const StatedTorque& torque, const Condition& stated) {
  FigureAnswer answer = torqueAnswer(
      {"First choice: bring threads and faces to “%1”, then as specified", {stated.name}}, torque);
  answer.sentences = {
      "Clean off what does not belong there and apply what does; the manual's torque then holds."};
  answer.carried = CarriedTorque{torque, stated.name};
  return answer;
}

FigureAnswer asDeviation(const StatedTorque& torque, const Reconditioned& changed, const Condition& stated,
                         const Condition& inUse) {
  const TorqueUnit& unit = *torque.unit;
  FigureAnswer answer =
      torqueAnswer({"Only as a deviation that a shop lead allows: “%1” parts, same clamp load", {inUse.name}},
                   changed.torque.typical, unit);
  answer.sentences.push_back({"By the spread of both conditions it lies between %1 and %2.",
                              {text(changed.torque.low, unit), text(changed.torque.high, unit)}});
  answer.sentences.push_back(
      {"Clamp load as specified: typically %1.", {text(changed.clampLoad, kKilonewton)}});
  BandOf<TorqueTag> band{changed.torque.low, changed.torque.high, changed.torque.typical};
  band.values.emplace_back("as specified %1", torque.value());
  answer.band = bandDrawing(band, unit);
  answer.carried = CarriedTorque{{significant(in(unit, changed.torque.typical), 4), &unit},
                                 inUse.name,
                                 text(torque) + " for “" + stated.name + "”"};
  answer.cautions = {
      "This is a deviation: a shop lead has to allow it, and the record says so. Not where the maker's "
      "manual forbids it or names its own lubricant, nor with threadlocker, sealant or a coating."};
  return answer;
}

}  // namespace

Result<Outcome> changedCondition(const StatedTorque& torque, const Condition& inUse,
                                 const FastenerCase& fastener, std::optional<Basis> basis) {
  CW_CHECK(checkPositive("torque", torque.value(), *torque.unit));
  CW_TRY(changed,
         recondition(torque.value(), fastener.condition, inUse, fastener.thread, fastener.face, basis));
  Outcome outcome;
  outcome.answers = {asSpecified(torque, *fastener.condition),
                     asDeviation(torque, changed.value, *fastener.condition, inUse)};
  sayUnchanged(outcome.answers.back(), torque, inUse, torque.value() / changed.value.torque.typical,
               fastener);
  outcome.working = std::move(changed.working);
  return outcome;
}

}  // namespace cw
