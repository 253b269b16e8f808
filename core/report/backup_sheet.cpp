#include "core/report/paper_sheet.h"

#include "core/procedure/serials.h"
#include "core/report/record_words.h"
#include "core/units/format.h"
#include "core/units/percent.h"

namespace cw {
namespace {

class SheetWriter {
 public:
  SheetWriter(const Sheet& sheet, const Wording& wording) : m_sheet(sheet), m_wording(wording) {}

  Document write(const std::string& digest) const {
    Document out;
    out.title = m_sheet.title;
    out.subtitle = tr({"Paper backup sheet, revision %1", {m_sheet.revision}});
    out.notice = m_sheet.notice;
    out.footer = {tr({"Sheet %1, revision %2", {m_sheet.id.text(), m_sheet.revision}}),
                  tr({"Digest %1", {digest}})};
    out.sections.push_back(head());
    for (std::size_t i = 0; i < m_sheet.steps.size(); ++i) out.sections.push_back(step(i));
    return out;
  }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }

  Section head() const {
    Table blanks{
        {{tr("Work order"), 1}, {tr("Machine"), 1}, {tr("Serial"), 1}, {tr("Hours"), 1}, {tr("Date"), 1}},
        {std::vector<Cell>(5)},
        true};
    Section out{"", {}, false};
    out.blocks.push_back(Paragraph{tr({"For %1, serials: %2.", {m_sheet.model, serialsText(m_sheet)}})});
    out.blocks.push_back(std::move(blanks));
    out.blocks.push_back(
        Paragraph{tr("Write each result when the step is done. Enter it in the program later, with "
                     "the time it was done: it is then marked late."),
                  Tone::Quiet});
    out.blocks.push_back(Paragraph{
        tr("The maker's manual, local codes and licensed practice take precedence over this sheet."),
        Tone::Caution});
    return out;
  }

  Section step(std::size_t index) const {
    const Step& each = m_sheet.steps[index];
    Section out{tr({"Step %1", {std::to_string(index + 1)}}), {}, false};
    for (const std::string& text : each.warnings)
      out.blocks.push_back(Paragraph{tr({"WARNING: %1", {text}}), Tone::Warning});
    for (const std::string& text : each.cautions)
      out.blocks.push_back(Paragraph{tr({"CAUTION: %1", {text}}), Tone::Caution});
    for (const std::string& text : each.notes)
      out.blocks.push_back(Paragraph{tr({"NOTE: %1", {text}}), Tone::Quiet});
    out.blocks.push_back(Paragraph{each.text, Tone::Strong});
    const Joint* joint = m_sheet.joint(each.joint);
    if (each.kind == StepKind::Tighten && joint != nullptr)
      addJoint(out, *joint, each.hold);
    else
      out.blocks.push_back(result(each));
    return out;
  }

  Table result(const Step& each) const {
    if (each.kind == StepKind::Hold && each.hold) return secondPerson(*each.hold);
    Table table{
        {{tr("Done by"), 30}, {tr("Time"), 20}, {resultHeading(each), 50}}, {std::vector<Cell>(3)}, true};
    return table;
  }

  std::string resultHeading(const Step& each) const {
    switch (each.kind) {
      case StepKind::Check:
        return tr("Yes or no");
      case StepKind::Measure:
        return readingHeading(each);
      case StepKind::Apply:
        return tr("Batch and expiry");
      default:
        return tr("Remark; batch and expiry of a new part");
    }
  }

  std::string readingHeading(const Step& each) const {
    if (each.low.empty() && each.high.empty()) return tr({"Reading (%1)", {each.unit}});
    if (each.low.empty()) return tr({"Reading (%1), at most %2", {each.unit, each.high}});
    if (each.high.empty()) return tr({"Reading (%1), at least %2", {each.unit, each.low}});
    return tr({"Reading (%1), from %2 to %3", {each.unit, each.low, each.high}});
  }

  Table secondPerson(const HoldDemand& hold) const {
    return {{{tr({"Second person (%1)", {listed(hold.what)}}), 30},
             {tr("Time"), 20},
             {tr("Found: tool, setting, count"), 50}},
            {std::vector<Cell>(3)},
            true};
  }

  void addJoint(Section& out, const Joint& joint, const std::optional<HoldDemand>& hold) const {
    out.blocks.push_back(specification(joint));
    out.blocks.push_back(drawingOf(joint));
    out.blocks.push_back(earlyPasses(joint));
    if (hold) out.blocks.push_back(secondPerson(*hold));
    out.blocks.push_back(finalPass(joint));
  }

  Table finalPass(const Joint& joint) const {
    Table table{{{tr("Order"), 7, true},
                 {tr("Position"), 9, true},
                 {tr("Target"), 13, true},
                 {tr("Allowed"), 16, true},
                 {tr("Clicked at, or reading"), 25},
                 {tr("By"), 15},
                 {tr("Time"), 15}},
                {},
                true};
    int order = 0;
    for (const std::string& label : joint.order) {
      const Specification& torque = *m_sheet.specification(joint.specificationAt(label));
      table.rows.push_back(
          {{std::to_string(++order)},
           {label},
           {torqueText(torque.aim.value_or(StatedTorque{}))},
           {rangeText(torque.low.value_or(StatedTorque{}), torque.high.value_or(StatedTorque{}))},
           {},
           {},
           {}});
    }
    return table;
  }

  Facts specification(const Joint& joint) const {
    const Specification& torque = *m_sheet.specification(joint.specification);
    FactList facts(m_wording);
    facts.add("Joint", joint.name);
    facts.add("Printed in the source", "“" + torque.printed + "”");
    facts.add("Threads and faces", torque.condition);
    return facts.take();
  }

  /// Hand start, the passes that are counted, and the rounds of the check pass.
  Table earlyPasses(const Joint& joint) const {
    const PassPlan& plan = joint.passes;
    Table table{{{tr("Before and after"), 40},
                 {tr("Tool and setting"), 25},
                 {tr("Count, or which moved"), 20},
                 {tr("By, time"), 15}},
                {},
                true};
    const auto add = [&](std::string what) { table.rows.push_back({{std::move(what)}, {}, {}, {}}); };
    if (plan.byHand) add(tr("Run to the face by finger"));
    if (plan.snug) add(tr({"Snug, at most %1 of the target", {percentOf(*plan.snug)}}));
    for (const double share : plan.shares)
      if (share < 1) add(tr({"Pass at %1 of the target", {percentOf(share)}}));
    if (plan.check) add(tr("Check pass, round by round until nothing moves"));
    return table;
  }

  const Sheet& m_sheet;
  const Wording& m_wording;
};

}  // namespace

Document backupSheet(const Sheet& sheet, const std::string& digest, const Wording& wording) {
  return SheetWriter(sheet, wording).write(digest);
}

}  // namespace cw
