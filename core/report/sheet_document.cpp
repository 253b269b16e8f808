#include "core/report/sheet_document.h"

#include <fmt/format.h>
#include <algorithm>

#include "core/procedure/serials.h"
#include "core/procedure/words.h"
#include "core/report/record_words.h"
#include "core/units/format.h"
#include "core/units/percent.h"

namespace cw {
namespace {

class SheetReader {
 public:
  SheetReader(const Sheet& sheet, const Wording& wording) : m_sheet(sheet), m_wording(wording) {}

  Document read() const {
    Document out;
    out.title = m_sheet.title;
    out.subtitle = tr({"Revision %1", {m_sheet.revision}});
    out.notice = m_sheet.notice;
    out.sections.push_back(head());
    if (!m_sheet.parts.empty()) out.sections.push_back(parts());
    for (const Joint& each : m_sheet.joints) out.sections.push_back(joint(each));
    out.sections.push_back(steps());
    return out;
  }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }

  Section head() const {
    FactList facts(m_wording);
    facts.add("Applies to", m_sheet.model);
    facts.add("Serials", serialsText(m_sheet));
    facts.add("Author", m_sheet.author);
    for (const Source& each : m_sheet.sources) facts.add("Source", sourceText(each));
    return {"", {facts.take()}, false};
  }

  std::string sourceText(const Source& source) const {
    const std::string out = tr({"%1, page %2, revision %3", {source.document, source.page, source.revision}});
    return source.date.empty() ? out : out + ", " + source.date;
  }

  Section parts() const {
    Table table{{{tr("Part or consumable"), 44}, {tr("Count"), 12, true}, {tr("Each time"), 44}}, {}};
    for (const Part& part : m_sheet.parts)
      table.rows.push_back({{part.name}, {std::to_string(part.count)}, {eachTime(part)}});
    return {tr("Parts and consumables"), {std::move(table)}, false};
  }

  std::string eachTime(const Part& part) const {
    std::vector<std::string> out;
    if (part.singleUse) out.push_back(tr("a new one"));
    if (part.batchWanted) out.push_back(tr("batch and expiry recorded"));
    return listed(out);
  }

  Section joint(const Joint& each) const {
    Section out{each.name, {}, false};
    const Specification& main = *m_sheet.specification(each.specification);
    out.blocks.push_back(specification(main));
    out.blocks.push_back(fastening(each));
    out.blocks.push_back(drawingOf(each));
    if (!each.positions.empty()) out.blocks.push_back(differing(each));
    return out;
  }

  /// What the source prints, beside what was made of it.
  Facts specification(const Specification& each) const {
    FactList facts(m_wording);
    facts.add("Printed", "“" + each.printed + "”");
    if (!each.printedSecond.empty()) facts.add("And in the other column", "“" + each.printedSecond + "”");
    if (const Source* source = m_sheet.source(each.source)) facts.add("Source", sourceText(*source));
    facts.add("Read as", readAs(each));
    facts.add("Tolerance", each.toleranceStated ? tr("stated by the source") : tr("assumed by the author"));
    if (each.angle) facts.add("Then turn by", text(*each.angle));
    facts.add("Threads and faces", each.condition.empty() ? tr("the source does not say") : each.condition);
    facts.add("Read by", each.interpretedBy);
    facts.add("Why", each.why);
    return facts.take();
  }

  std::string readAs(const Specification& each) const {
    if (!each.aim) return tr("words only; no torque");
    const std::string range =
        rangeText(each.low.value_or(StatedTorque{}), each.high.value_or(StatedTorque{}));
    const std::string aim = torqueText(*each.aim);
    return range.empty() ? aim : tr({"%1, allowed %2", {aim, range}});
  }

  Facts fastening(const Joint& each) const {
    FactList facts(m_wording);
    if (const Fastener* fastener = m_sheet.fastener(each.fastener))
      facts.add("Fastener", fastenerText(*fastener));
    facts.add("Order", listed(each.order));
    facts.add("Rule", each.rule.empty() ? tr("made by hand") : each.rule);
    facts.add("Passes", passesText(each.passes));
    return facts.take();
  }

  std::string fastenerText(const Fastener& fastener) const {
    std::string out = fmt::format("{} {}", wordOf(fastener.kind), fastener.thread);
    if (fastener.length) out += " × " + text(*fastener.length);
    if (!fastener.grade.empty()) out += ", " + fastener.grade;
    return fastener.tapped.empty() ? out : out + ", " + tr({"in %1", {fastener.tapped}});
  }

  std::string passesText(const PassPlan& plan) const {
    std::vector<std::string> out;
    if (plan.byHand) out.push_back(tr("to the face by finger"));
    if (plan.snug) out.push_back(tr({"snug at %1", {percentOf(*plan.snug)}}));
    for (const double share : plan.shares) out.push_back(percentOf(share));
    if (plan.check)
      out.push_back(
          tr({"check pass until nothing moves, at most %1 rounds", {std::to_string(plan.check->limit)}}));
    if (plan.gaps)
      out.push_back(tr({"the gap read at %1 places, differing by at most %2",
                        {std::to_string(plan.gaps->places), text(plan.gaps->mostDifference)}}));
    if (plan.retorque) out.push_back(tr("retorque after a wait"));
    return listed(out);
  }

  /// The positions that have another fastener or torque than the joint.
  Table differing(const Joint& each) const {
    Table table{{{tr("Position"), 14, true}, {tr("Fastener"), 43}, {tr("Read as"), 43}}, {}};
    for (const auto& [label, detail] : each.positions) {
      const Fastener* fastener = m_sheet.fastener(each.fastenerAt(label));
      const Specification* torque = m_sheet.specification(each.specificationAt(label));
      table.rows.push_back({{label},
                            {fastener == nullptr ? "" : fastenerText(*fastener)},
                            {torque == nullptr ? "" : readAs(*torque)}});
    }
    return table;
  }

  Section steps() const {
    Section out{tr("Steps"), {}, false};
    for (std::size_t i = 0; i < m_sheet.steps.size(); ++i) add(out, i + 1, m_sheet.steps[i]);
    return out;
  }

  void add(Section& out, std::size_t number, const Step& step) const {
    out.blocks.push_back(Paragraph{
        tr({"Step %1, %2", {std::to_string(number), std::string(wordOf(step.kind))}}), Tone::Quiet});
    for (const std::string& text : step.warnings)
      out.blocks.push_back(Paragraph{tr({"WARNING: %1", {text}}), Tone::Warning});
    for (const std::string& text : step.cautions)
      out.blocks.push_back(Paragraph{tr({"CAUTION: %1", {text}}), Tone::Caution});
    for (const std::string& text : step.notes) out.blocks.push_back(Paragraph{tr({"NOTE: %1", {text}})});
    out.blocks.push_back(Paragraph{step.text, Tone::Strong});
    if (const std::string wants = wanted(step); !wants.empty()) out.blocks.push_back(Paragraph{wants});
  }

  /// What the bench asks for at this step, beyond its text.
  std::string wanted(const Step& step) const {
    std::vector<std::string> out;
    if (const Joint* joint = m_sheet.joint(step.joint)) out.push_back(tr({"Joint: %1.", {joint->name}}));
    if (const Part* part = m_sheet.part(step.part)) out.push_back(tr({"Part: %1.", {part->name}}));
    if (step.kind == StepKind::Measure)
      out.push_back(
          tr({"Allowed: %1 to %2 %3.",
              {step.low.empty() ? "…" : step.low, step.high.empty() ? "…" : step.high, step.unit}}));
    if (step.hold)
      out.push_back(
          tr({"Second person, %1: %2.", {std::string(wordOf(step.hold->witness)), listed(step.hold->what)}}));
    return fmt::format("{}", fmt::join(out, " "));
  }

  const Sheet& m_sheet;
  const Wording& m_wording;
};

Message severityText(Severity severity) {
  switch (severity) {
    case Severity::Note:
      return "note";
    case Severity::Warning:
      return "warning";
    case Severity::Blocking:
      return "stops issue";
  }
  return {};
}

std::string whatAndCure(const Finding& finding, const Wording& wording) {
  const std::string problem = wording(finding.problem);
  return finding.cure.empty() ? problem + "." : problem + "; " + wording(finding.cure) + ".";
}

}  // namespace

Document sheetDocument(const Sheet& sheet, const Wording& wording) {
  return SheetReader(sheet, wording).read();
}

Section reviewSection(const Findings& findings, const Wording& wording) {
  Section out{wording("Review against this shop"), {}, false};
  if (findings.empty()) {
    out.blocks.push_back(Paragraph{wording("Nothing is wrong with it.")});
    return out;
  }
  Findings gravest = findings;
  std::stable_sort(gravest.begin(), gravest.end(),
                   [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
  Table table{{{wording("How grave"), 16}, {wording("Where"), 22}, {wording("What, and the cure"), 62}}, {}};
  for (const Finding& finding : gravest)
    table.rows.push_back(
        {{wording(severityText(finding.severity))}, {finding.place}, {whatAndCure(finding, wording)}});
  out.blocks.push_back(std::move(table));
  return out;
}

}  // namespace cw
