#include "core/report/outcome.h"

#include <algorithm>

namespace cw {
namespace {

constexpr int kShownDigits = 4;

std::string valueText(const std::string& value, const std::string& unit) {
  return unit.empty() ? value : value + kUnitSpace + unit;
}

/// Long sources are printed once, below, and pointed to by number.
class SourceNumbers {
 public:
  std::string numberOf(const std::string& source) {
    const auto found = std::find(m_sources.begin(), m_sources.end(), source);
    const auto index = found - m_sources.begin();
    if (found == m_sources.end()) m_sources.push_back(source);
    return "[" + std::to_string(index + 1) + "]";
  }
  const std::vector<std::string>& all() const { return m_sources; }

 private:
  std::vector<std::string> m_sources;
};

Table givenTable(const Working& working, const Wording& wording, SourceNumbers& sources) {
  Table table;
  table.columns = {{wording("Symbol"), 3},
                   {wording("What it is"), 6},
                   {wording("Value"), 4, true},
                   {wording("Source"), 3}};
  for (const Working::Given& row : working.given)
    table.rows.push_back({{row.symbol},
                          {wording(row.meaning)},
                          {valueText(row.value, row.unit)},
                          {sources.numberOf(row.source)}});
  return table;
}

Table stepsTable(const Working& working, const Wording& wording) {
  Table table;
  table.columns = {{wording("Symbol"), 3}, {wording("Formula"), 8}, {wording("Value"), 4, true}};
  for (const Working::Step& row : working.steps)
    table.rows.push_back({{row.symbol}, {row.formula}, {valueText(row.value, row.unit)}});
  return table;
}

Section restsOn(const Working& working, const Wording& wording, SourceNumbers& sources) {
  Section rests{wording("What it rests on"), {}};
  for (const Message& row : working.validity)
    rests.blocks.push_back(Paragraph{wording({"Holds: %1.", {wording(row)}})});
  for (const std::string& row : working.sources)
    rests.blocks.push_back(Paragraph{wording({"Formula: %1.", {row}})});
  for (const std::string& row : sources.all())
    rests.blocks.push_back(Paragraph{sources.numberOf(row) + " " + row, Tone::Quiet});
  return rests;
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
  SourceNumbers sources;
  document.sections.push_back({"", {Paragraph{working.formula, Tone::Strong}}});
  document.sections.push_back({wording("Given"), {givenTable(working, wording, sources)}});
  document.sections.push_back(
      {wording("Steps, in this order and in these units"), {stepsTable(working, wording)}});
  document.sections.push_back(restsOn(working, wording, sources));
  return document;
}

}  // namespace cw
