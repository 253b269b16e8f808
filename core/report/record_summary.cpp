#include "core/report/record_summary.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/report/describe.h"
#include "core/report/record_words.h"

namespace cw {
namespace {

class SummaryWriter {
 public:
  SummaryWriter(const RecordContent& content, const Wording& wording, std::size_t most)
      : m_content(content), m_wording(wording), m_most(most) {}

  std::vector<Section> write() const { return {job(), exceptions(), joints(), people()}; }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }

  Section job() const {
    FactList facts(m_wording);
    facts.add("Machine", machineText());
    facts.add("Reason", m_content.reason);
    facts.add("Sheet", m_content.quick
                           ? tr({"%1, quick joint: no issued sheet", {m_content.sheetTitle}})
                           : tr({"%1, revision %2", {m_content.sheetTitle, m_content.sheetRevision}}));
    facts.add("Source", fmt::format("{}", fmt::join(m_content.sources, "; ")));
    if (m_content.started) facts.add("Started", timeText(*m_content.started));
    if (m_content.ended) facts.add("Finished", timeText(*m_content.ended));
    return {"", {Paragraph{m_content.outcome, Tone::Lead}, facts.take()}, false};
  }

  std::string machineText() const {
    std::string out = m_content.machine;
    if (!m_content.model.empty()) out += ", " + m_content.model;
    if (!m_content.serial.empty()) out += ", " + tr({"serial %1", {m_content.serial}});
    if (!m_content.hours.empty()) out += ", " + m_content.hours;
    return out;
  }

  Section exceptions() const {
    Section out{tr("Exceptions"), {}, false};
    for (const AddendumLine& addendum : m_content.addenda)
      out.blocks.push_back(Paragraph{
          tr({"Addendum %1, %2: %3", {std::to_string(addendum.number), addendum.name, addendum.text}}),
          Tone::Strong});
    Table table{{{tr("What"), 22}, {tr("Said of it"), 70}, {tr("Entry"), 8, true}}, {}};
    for (const ExceptionGroup& group : m_content.exceptions) addGroup(table, group);
    if (table.rows.empty())
      out.blocks.push_back(
          Paragraph{tr("None: everything was done as the sheet says, in time and in tolerance.")});
    else
      out.blocks.push_back(std::move(table));
    return out;
  }

  void addGroup(Table& table, const ExceptionGroup& group) const {
    std::vector<int> others;
    for (std::size_t i = 0; i < group.lines.size(); ++i) {
      const ExceptionLine& line = group.lines[i];
      if (i < m_most)
        table.rows.push_back({{i == 0 ? group.heading : ""},
                              {line.text},
                              {line.entry == 0 ? "" : std::to_string(line.entry)}});
      else
        others.push_back(line.entry);
    }
    if (!others.empty())
      table.rows.push_back(
          {{m_most == 0 ? group.heading : ""},
           {tr({"%1 more, see entries %2", {std::to_string(others.size()), numberList(others)}})},
           {""}});
  }

  Section joints() const {
    Table table{{{tr("Joint"), 26},
                 {tr("Target"), 15, true},
                 {tr("Tolerance"), 20, true},
                 {tr("Done"), 10, true},
                 {tr("Tool"), 29}},
                {}};
    for (const JointContent& each : m_content.joints)
      table.rows.push_back({{each.name},
                            {each.differs ? tr("by position") : torqueText(each.torque.aim)},
                            {each.differs ? "" : rangeText(each.torque.low, each.torque.high)},
                            {tr({"%1 of %2", {std::to_string(each.done), std::to_string(each.positions)}})},
                            {listed(toolsUsed(each))}});
    Section out{tr("Joints"), {}, false};
    if (table.rows.empty())
      out.blocks.push_back(Paragraph{tr("This sheet tightens no joint.")});
    else
      out.blocks.push_back(std::move(table));
    return out;
  }

  /// Each tool of the positions that hold, with its due date.
  std::vector<std::string> toolsUsed(const JointContent& each) const {
    std::vector<std::string> out;
    for (const ToolLine& line : m_content.tools) {
      const bool used = std::any_of(each.lines.begin(), each.lines.end(), [&](const TighteningLine& pulled) {
        return pulled.holds() && pulled.tool == line.tool.id;
      });
      const Calibration* last = line.tool.lastCalibration();
      const std::string due =
          last != nullptr ? tr({"%1, calibration due %2", {line.tool.id, isoDate(last->due)}}) : line.tool.id;
      if (used && std::find(out.begin(), out.end(), due) == out.end()) out.push_back(due);
    }
    return out;
  }

  Section people() const {
    Table table{{{tr("Person"), 26}, {tr("Roles in the shop"), 32}, {tr("In this job"), 42}}, {}};
    for (const PersonLine& person : m_content.people)
      table.rows.push_back({{person.name}, {listed(person.roles)}, {listed(person.part)}});
    return {tr("People"), {std::move(table), Paragraph{tr(deference()), Tone::Caution}}, false};
  }

  const RecordContent& m_content;
  const Wording& m_wording;
  std::size_t m_most;
};

}  // namespace

std::vector<Section> recordSummary(const RecordContent& content, const Wording& wording,
                                   std::size_t mostPerException) {
  return SummaryWriter(content, wording, mostPerException).write();
}

}  // namespace cw
