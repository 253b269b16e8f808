#include "core/report/outcome.h"

namespace cw {
namespace {

constexpr int kShownDigits = 4;

Table givenTable(const Working& working, const Wording& wording) {
  Table table;
  table.columns = {{wording("Symbol"), 1},
                   {wording("What it is"), 4},
                   {wording("Value"), 2, true},
                   {wording("Source"), 5}};
  for (const Working::Given& row : working.given)
    table.rows.push_back({{row.symbol},
                          {wording(row.meaning)},
                          {row.value + (row.unit.empty() ? "" : "\u2009" + row.unit)},
                          {row.source}});
  return table;
}

Table stepsTable(const Working& working, const Wording& wording) {
  Table table;
  table.columns = {{wording("Symbol"), 1}, {wording("Formula"), 6}, {wording("Value"), 2, true}};
  for (const Working::Step& row : working.steps)
    table.rows.push_back(
        {{row.symbol}, {row.formula}, {row.value + (row.unit.empty() ? "" : "\u2009" + row.unit)}});
  return table;
}

}  // namespace

std::vector<std::string> inOtherShopUnits(Torque torque, const TorqueUnit& stated) {
  std::vector<std::string> out;
  for (const TorqueUnit* unit : {&kNewtonMetre, &kPoundFoot, &kPoundInch})
    if (unit->code != stated.code) out.push_back(text(torque, *unit, kShownDigits));
  return out;
}

FigureAnswer torqueAnswer(Message lead, const StatedTorque& torque) {
  FigureAnswer answer;
  answer.lead = std::move(lead);
  answer.number = text(torque);
  answer.derived = inOtherShopUnits(torque.value(), *torque.unit);
  return answer;
}

FigureAnswer torqueAnswer(Message lead, Torque torque, const TorqueUnit& unit) {
  return torqueAnswer(std::move(lead), {significant(in(unit, torque), kShownDigits), &unit});
}

GuardRemark guardRemark(const Judgement& judgement) {
  const bool silent = judgement.verdict == Verdict::NotJudged ||
                      (judgement.verdict == Verdict::InBand && judgement.utilisation <= 1);
  return {!silent, explain(judgement)};
}

Document workingDocument(const Working& working, const Wording& wording) {
  Document document;
  document.title = wording("Working");
  Section how{"", {Paragraph{working.formula, Tone::Strong}}};
  Section given{wording("Given"), {givenTable(working, wording)}};
  Section steps{wording("Steps, in this order and in these units"), {stepsTable(working, wording)}};
  Section rests{wording("What it rests on"), {}};
  for (const Message& row : working.validity)
    rests.blocks.push_back(Paragraph{wording({"Holds: %1.", {wording(row)}})});
  for (const std::string& row : working.sources)
    rests.blocks.push_back(Paragraph{wording({"Source: %1.", {row}}), Tone::Quiet});
  document.sections = {std::move(how), std::move(given), std::move(steps)};
  if (!rests.blocks.empty()) document.sections.push_back(std::move(rests));
  return document;
}

}  // namespace cw
