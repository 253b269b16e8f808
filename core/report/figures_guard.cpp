#include "core/joint/agreement.h"
#include "core/report/figures.h"

namespace cw {
namespace {

const char* verdictWord(Verdict verdict) {
  switch (verdict) {
    case Verdict::BelowBand:
      return "Below its band";
    case Verdict::InBand:
      return "In its band";
    case Verdict::AboveBand:
      return "Above its band";
    case Verdict::PastYield:
      return "Past yield";
    case Verdict::NotJudged:
      break;
  }
  return "Not judged";
}

BandDrawing judgedBand(const Judgement& judgement) {
  BandOf<TorqueTag> band{judgement.low, judgement.high};
  band.values.emplace_back("stated %1", judgement.torque.value());
  band.values.emplace_back("yield, typical friction %1", judgement.yieldTypical);
  band.values.emplace_back("yield, highest friction %1", judgement.yieldCertain);
  return bandDrawing(band, *judgement.torque.unit);
}

}  // namespace

Result<Outcome> guardedTorque(const StatedTorque& torque, const std::optional<StatedTorque>& second,
                              const GuardSubject& subject) {
  CW_TRY(judgement, judge(torque, subject));
  FigureAnswer answer;
  answer.lead = {"%1 on %2 is", {text(torque), subject.thread.designation}};
  answer.word = verdictWord(judgement.verdict);
  answer.derived = inOtherShopUnits(torque.value(), *torque.unit);
  answer.sentences = explain(judgement);
  if (!guardRemark(judgement).trouble)
    answer.carried = CarriedTorque{torque, subject.condition ? subject.condition->name : ""};
  if (second) {
    CW_TRY(agreement, columnsAgree(torque, *second));
    const Message found = explain(agreement, torque, *second);
    (agreement.agreement == Agreement::Disagrees ? answer.cautions : answer.sentences).push_back(found);
  }
  if (judgement.verdict == Verdict::NotJudged) return Outcome{{std::move(answer)}, {}};
  answer.band = judgedBand(judgement);
  CW_TRY(working, capacityWorking(subject));
  return Outcome{{std::move(answer)}, std::move(working)};
}

}  // namespace cw
