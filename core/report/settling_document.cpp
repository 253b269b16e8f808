#include "core/report/settling_document.h"

#include "core/units/format.h"

namespace cw {
namespace {

std::string wholePercent(double share) {
  return fixed(share * 100, 0);
}

std::string milliradians(Angle angle) {
  return significant(angle.si() * 1e3, 2);
}

std::vector<Cell> settlingRow(std::string name, const SettlingSummary& pass, Force target) {
  return {{std::move(name)},
          {wholePercent(pass.mean / target)},
          {wholePercent(pass.least / target)},
          {wholePercent(pass.most / target)},
          {wholePercent(pass.spread)},
          {milliradians(pass.worstTilt)}};
}

}  // namespace

Document settlingDocument(const SettlingOutcome& outcome, const Wording& wording) {
  const auto tr = [&](const Message& message) { return wording(message); };
  Table table{{{tr("After"), 5},
               {tr("Mean, %"), 3, true},
               {tr("Least, %"), 3, true},
               {tr("Most, %"), 3, true},
               {tr("Spread, %"), 4, true},
               {tr("Tilt, mrad"), 3, true}},
              {}};
  const std::vector<SettlingSummary>& passes = outcome.course.passes;
  for (std::size_t i = 0; i < passes.size(); ++i) {
    const bool isRound = i >= outcome.way.shares.size();
    table.rows.push_back(settlingRow(
        tr({isRound ? "%1, round" : "%1 at %2 %", {std::to_string(i + 1), wholePercent(passes[i].share)}}),
        passes[i], outcome.target));
  }
  table.rows.push_back(settlingRow(tr("one more"), outcome.oneMore, outcome.target));
  const SettlingSummary& last = passes.back();
  const Message buys{
      "One more round at full torque: the least-loaded bolt goes from %1 to %2 % of the target, the "
      "spread from %3 to %4 % of the mean.",
      {wholePercent(last.least / outcome.target), wholePercent(outcome.oneMore.least / outcome.target),
       wholePercent(last.spread), wholePercent(outcome.oneMore.spread)}};
  Document out;
  out.title = tr("Passes in numbers");
  out.sections.push_back({"", {std::move(table), Paragraph{tr(buys)}}, false});
  return out;
}

std::vector<Message> settlingLimits() {
  return {
      "A prediction, not a measurement: no bolt’s load, and never part of a record.",
      "Model: elastic plates on a gasket of two straight lines that lifts off, bolts as springs, every nut "
      "stopped exactly at its share of the target.",
      "Not in it: friction (but see the trials), creep, bending and yielding, uneven faces.",
      "Good for choosing between orders and passes; a single bolt may be 20 to 30 % off."};
}

}  // namespace cw
