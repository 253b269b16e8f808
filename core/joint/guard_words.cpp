#include "core/joint/guard.h"

namespace cw {
namespace {

const char* verdictSentence(Verdict verdict) {
  switch (verdict) {
    case Verdict::BelowBand:
      return "%1 is below the band from %2 to %3.";
    case Verdict::AboveBand:
      return "%1 is above the band from %2 to %3.";
    case Verdict::PastYield:
      return "%1 takes the bolt past yield, which it reaches at %5 even with the highest friction.";
    case Verdict::InBand:
    case Verdict::NotJudged:
      break;
  }
  return "%1 is in the band from %2 to %3.";
}

const char* limitSentence(Limit limit) {
  return limit == Limit::BoltYield ? "At the typical friction it is %4 % of what brings the bolt to yield."
                                   : "At the typical friction it is %4 % of what strips the thread.";
}

std::string inUnit(const Judgement& judgement, const TorqueUnit* unit) {
  return text(StatedTorque{judgement.torque.digits, unit});
}

/// Names a second unit where digits alone cannot tell ft·lbf from N·m.
Message question(const Judgement& judgement) {
  const auto& fits = judgement.fits;
  const bool two = fits.size() > 1 && isCommon(fits[1]);
  if (!two) return {"Did you mean %1?", {inUnit(judgement, fits[0])}};
  return {"Did you mean %1 or %2?", {inUnit(judgement, fits[0]), inUnit(judgement, fits[1])}};
}

}  // namespace

std::vector<Message> explain(const Judgement& judgement) {
  if (judgement.verdict == Verdict::NotJudged) return {{"Not judged: %1.", {plain(judgement.reason)}}};
  const auto torque = [&](Torque value) { return text(value, *judgement.torque.unit, 3); };
  const auto say = [&](const char* words) {
    return Message(words, {text(judgement.torque), torque(judgement.low), torque(judgement.high),
                           significant(judgement.utilisation * 100, 2), torque(judgement.yieldCertain)});
  };
  std::vector<Message> out{say(verdictSentence(judgement.verdict)), say(limitSentence(judgement.limit))};
  if (!judgement.conditionStated)
    out.push_back("The condition is not stated, so the widest usual friction is assumed.");
  if (judgement.verdict == Verdict::InBand && judgement.utilisation > 1)
    out.push_back("It is right only where friction is high: state the condition.");
  if (!judgement.fits.empty()) out.push_back(question(judgement));
  return out;
}

}  // namespace cw
