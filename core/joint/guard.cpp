#include "core/joint/guard.h"

#include <algorithm>
#include <cmath>

#include "core/joint/capacity.h"
#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kUsualUtilisation = 0.75;  ///< where published torques crowd; ranks the units that fit

Verdict verdictOn(Torque torque, const Judgement& judgement) {
  if (torque < judgement.low) return Verdict::BelowBand;
  if (torque <= judgement.high) return Verdict::InBand;
  return torque > judgement.yieldCertain ? Verdict::PastYield : Verdict::AboveBand;
}

/// Units in which the same digits make sense: the three that stand side by side in manuals before the rest,
/// then by nearness to what is usual.
std::vector<const TorqueUnit*> unitsThatFit(const StatedTorque& stated, const Judgement& judgement,
                                            Torque typical) {
  const auto strangeness = [&](const TorqueUnit* unit) {
    return std::abs(std::log(quantity(stated.number(), *unit) / typical / kUsualUtilisation));
  };
  std::vector<const TorqueUnit*> fits;
  for (const TorqueUnit* unit : unitsOf<TorqueTag>())
    if (unit != stated.unit && verdictOn(quantity(stated.number(), *unit), judgement) == Verdict::InBand)
      fits.push_back(unit);
  std::sort(fits.begin(), fits.end(), [&](const TorqueUnit* a, const TorqueUnit* b) {
    if (isCommon(a) != isCommon(b)) return isCommon(a);
    return strangeness(a) < strangeness(b);
  });
  return fits;
}

Message reasonOf(Ungrounded ungrounded) {
  switch (ungrounded) {
    case Ungrounded::Plug:
      return "a plug seals; its torque does not follow from what its thread could bear";
    case Ungrounded::BearingPreload:
      return "this torque sets a bearing's preload, not a bolt's clamp load";
    case Ungrounded::UnmarkedFastener:
      return "the fastener bears no mark of its strength";
    case Ungrounded::LimitedByGasket:
      return "the gasket limits this torque, not the fastener";
    case Ungrounded::LimitedByPlastic:
      break;
  }
  return "the plastic part limits this torque, not the fastener";
}

Judgement notJudged(const StatedTorque& torque, Message reason) {
  Judgement judgement;
  judgement.torque = torque;
  judgement.reason = std::move(reason);
  return judgement;
}

/// What lies between the wrench's reading and the torque that tightens.
struct Path {
  double leverRatio = 1;  ///< torque at the fastener over setting
  Torque prevailing;

  Torque atWrench(Torque tightening) const { return (tightening + prevailing) / leverRatio; }
  Torque tightening(Torque atWrench) const { return atWrench * leverRatio - prevailing; }
};

Result<Path> pathThrough(const std::optional<Lever>& lever, Torque prevailing) {
  CW_CHECK(checkNotNegative("prevailing torque", prevailing, kNewtonMetre));
  if (!lever) return Path{1, prevailing};
  CW_TRY(applied, appliedBy(newtonMetres(1), *lever));
  return Path{applied.value / newtonMetres(1), prevailing};
}

Result<void> checkTorque(const StatedTorque& torque) {
  if (!torque.empty()) return checkPositive("torque", torque.value(), *torque.unit);
  return fail(ErrorCode::InvalidInput, "torque", "", "there is no torque",
              "write one, for example 60 in·lbf");
}

/// A locking fastener whose own resistance would break it is none.
Result<void> checkPrevailing(Torque prevailing, const Capacity& capacity) {
  if (prevailing <= capacity.yieldCertain) return {};
  return fail(ErrorCode::OutOfRange, "prevailing torque", text(prevailing, kNewtonMetre),
              {"%1 is more than takes the bolt to yield, %2",
               {text(prevailing, kNewtonMetre), text(capacity.yieldCertain, kNewtonMetre)}},
              "check the value and its unit");
}

Result<Judgement> judgeThrough(const Path& path, const StatedTorque& torque, const GuardSubject& subject) {
  if (subject.ungrounded) return notJudged(torque, reasonOf(*subject.ungrounded));
  if (!subject.grade) return notJudged(torque, "the strength grade of the fastener is not stated");
  CW_TRY(capacity, capacityOf(subject));
  CW_CHECK(checkPrevailing(path.prevailing, capacity));

  Judgement judgement;
  judgement.torque = torque;
  judgement.low = path.atWrench(capacity.low);
  judgement.high = path.atWrench(capacity.high);
  judgement.yieldTypical = path.atWrench(capacity.yieldTypical);
  judgement.yieldCertain = path.atWrench(capacity.yieldCertain);
  judgement.limit = capacity.limit;
  judgement.utilisation = path.tightening(torque.value()) / capacity.typical;
  judgement.conditionStated = subject.condition.has_value();
  judgement.verdict = verdictOn(torque.value(), judgement);
  if (judgement.verdict != Verdict::InBand)
    judgement.fits = unitsThatFit(torque, judgement, path.atWrench(capacity.typical));
  return judgement;
}

}  // namespace

bool isCommon(const TorqueUnit* unit) {
  return unit == &kPoundInch || unit == &kPoundFoot || unit == &kNewtonMetre;
}

Result<Judgement> judge(const StatedTorque& torque, const GuardSubject& subject) {
  CW_CHECK(checkTorque(torque));
  return judgeThrough({}, torque, subject);
}

Result<Judgement> judgeSetting(const StatedTorque& setting, const std::optional<Lever>& lever,
                               Torque prevailing, const GuardSubject& subject) {
  CW_CHECK(checkTorque(setting));
  CW_TRY(path, pathThrough(lever, prevailing));
  return judgeThrough(path, setting, subject);
}

}  // namespace cw
