#include <cmath>

#include "core/joint/checks.h"
#include "core/report/figures.h"
#include "core/units/percent.h"

namespace cw {
namespace {

constexpr double kAssumedTolerance = 0.05, kGoodRatio = 2;

TorqueBand toleranceOf(const WrenchQuestion& question) {
  const Torque aim = question.aim.value();
  return question.tolerance.value_or(
      TorqueBand{aim * (1 - kAssumedTolerance), aim * (1 + kAssumedTolerance)});
}

std::optional<Lever> leverOf(const WrenchQuestion& question) {
  return question.lever ? std::optional(question.lever->lever()) : std::nullopt;
}

void sayLever(FigureAnswer& answer, const std::optional<StatedLever>& lever) {
  if (!lever) {
    answer.sentences.push_back(
        "No adapter beside the drive's axis: the wrench shows what the fastener gets.");
    return;
  }
  const Angle angle = lever->lever().angle;
  const double along = std::cos(angle.si());
  const char* words = std::abs(along) < 1e-9 ? "The adapter stands square: it changes nothing."
                      : along > 0            ? "The adapter lengthens the lever: the wrench is set lower."
                                             : "The adapter shortens the lever: the wrench is set higher.";
  answer.sentences.push_back(words);
  answer.cautions.push_back(
      {"Hold the wrench where its length is measured to, %1 from the drive; the setting "
       "holds for this adapter at %2 only.",
       {text(lever->wrench), text(angle, kDegree, 4)}});
}

/// The wrench's own deviation against the tolerance at this setting.
void sayFitness(FigureAnswer& answer, const WrenchSetting& set, double deviation) {
  const Torque setting = set.setting.value();
  const Torque own = setting * deviation;
  const Torque room = std::min(set.allowed.high - setting, setting - set.allowed.low);
  if (own.si() <= 0) return;
  const double ratio = std::max(0.0, room / own);
  const std::string shown = significant(ratio, 2) + " : 1";
  if (ratio < 1)
    answer.cautions.push_back(
        {"The wrench's own deviation, ±%1, can leave the tolerance: room to deviation is %2. "
         "Use a better one.",
         {percentOf(deviation), shown}});
  else if (ratio < kGoodRatio)
    answer.cautions.push_back({"The tolerance leaves the wrench's deviation of ±%1 little room: %2.",
                               {percentOf(deviation), shown}});
  else
    answer.sentences.push_back({"The tolerance leaves the wrench's deviation of ±%1 room enough: %2.",
                                {percentOf(deviation), shown}});
}

Result<void> sayGuard(FigureAnswer& answer, const WrenchQuestion& question, const StatedTorque& setting,
                      Torque added) {
  CW_TRY(judgement, judgeSetting(setting, leverOf(question), added, question.fastener));
  const GuardRemark remark = guardRemark(judgement);
  if (remark.trouble)
    answer.cautions.insert(answer.cautions.end(), remark.sentences.begin(), remark.sentences.end());
  else
    answer.sentences.push_back(remark.sentences.front());
  return {};
}

BandDrawing settingBand(const WrenchSetting& set) {
  BandOf<TorqueTag> band{set.allowed.low, set.allowed.high};
  band.values.emplace_back("exact %1", set.exact);
  band.values.emplace_back("set %1", set.setting.value());
  return bandDrawing(band, *set.setting.unit);
}

}  // namespace

Result<Outcome> wrenchFor(const WrenchQuestion& question, bool fastenerKnown) {
  TorqueTarget target;
  target.aim = question.aim.value();
  target.tolerance = toleranceOf(question);
  target.prevailing = question.prevailing;
  target.rule = question.rule;
  CW_TRY(set, wrenchSetting(target, leverOf(question), question.graduation));
  const WrenchSetting& found = set.value;
  FigureAnswer answer = torqueAnswer("Set the wrench to", found.setting);
  answer.inWords = inWords(found.setting);
  answer.sentences.push_back({"At that setting the fastener gets %1; %2 is wanted.",
                              {text(found.applied, *question.aim.unit), text(question.aim)}});
  if (!question.tolerance)
    answer.sentences.push_back({"No tolerance is stated: ±%1 is assumed.", {percentOf(kAssumedTolerance)}});
  if (!question.insteadOf.empty())
    answer.cautions.push_back({"A deviation: %1 stands instead of %2. A shop lead has to allow it first.",
                               {text(question.aim), question.insteadOf}});
  sayLever(answer, question.lever);
  if (question.deviation) sayFitness(answer, found, *question.deviation);
  if (fastenerKnown) CW_CHECK(sayGuard(answer, question, found.setting, question.prevailing));
  answer.band = settingBand(found);
  return Outcome{{std::move(answer)}, std::move(set.working)};
}

Result<Outcome> torqueBehind(const StatedTorque& setting, const StatedLever& lever) {
  CW_TRY(applied, appliedBy(setting.value(), lever.lever()));
  FigureAnswer answer = torqueAnswer({"A wrench set to %1 brings to the fastener", {text(setting)}},
                                     applied.value, *setting.unit);
  sayLever(answer, lever);
  return Outcome{{std::move(answer)}, std::move(applied.working)};
}

}  // namespace cw
