#include "core/report/record_document.h"

#include <fmt/format.h>

#include "core/report/describe.h"
#include "core/units/format.h"

namespace cw {
namespace {

std::string numbers(const std::vector<int>& all) {
  std::vector<std::string> out;
  for (const int one : all) out.push_back(std::to_string(one));
  return listed(out);
}

std::string torqueText(const StatedTorque& torque) {
  return torque.empty() ? std::string() : text(torque);
}

std::string rangeText(const StatedTorque& low, const StatedTorque& high) {
  if (low.empty() || high.empty()) return {};
  if (low.unit != high.unit) return text(low) + "–" + text(high);
  return low == high ? text(low) : low.digits + "–" + text(high);
}

/// How a reading or an entry is shown that may no longer hold.
template <class Line>
Ink inkOf(const Line& line) {
  if (line.correctedBy) return Ink::Struck;
  return line.overtaken ? Ink::Pale : Ink::Full;
}

/// A share as a percentage: "4 %".
std::string percent(double share) {
  return significant(share * 100, 3) + "\u2009%";
}

class RecordWriter {
 public:
  RecordWriter(const RecordContent& content, const Wording& wording, std::size_t most)
      : m_content(content), m_wording(wording), m_most(most) {}

  Document write() {
    Document out;
    out.title = fmt::format("{} · {}", m_content.workOrder, m_content.machine);
    out.subtitle = tr({"Torque record, %1", {m_content.shopName}});
    out.notice = m_content.notice;
    out.footer = footer();
    out.sections = {job(), exceptions(), summaryOfJoints(), peopleAndCautions()};
    out.sections.push_back(parts());
    out.sections.push_back(tools());
    for (const JointContent& each : m_content.joints) out.sections.push_back(joint(each));
    out.sections.push_back(entries());
    if (!m_content.addenda.empty()) out.sections.push_back(addenda());
    out.sections.push_back(seal());
    return out;
  }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }

  std::vector<std::string> footer() const {
    const std::string count = std::to_string(m_content.entries.size());
    if (!m_content.sealed) return {tr({"Not sealed. %1 entries, head %2", {count, m_content.head}})};
    return {tr({"%1 entries, head %2", {count, m_content.head}})};
  }

  Section job() const {
    Facts facts;
    const auto add = [&](const Message& label, std::string value) {
      if (!value.empty()) facts.rows.push_back({tr(label), std::move(value)});
    };
    add("Outcome", m_content.outcome);
    add("Machine", machineText());
    add("Reason", m_content.reason);
    add("Sheet", tr({"%1, revision %2", {m_content.sheetTitle, m_content.sheetRevision}}));
    add("Source", fmt::format("{}", fmt::join(m_content.sources, "; ")));
    if (m_content.started) add("Started", timeText(*m_content.started));
    if (m_content.ended) add("Finished", timeText(*m_content.ended));
    return {"", {std::move(facts)}, false};
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
           {tr({"%1 more, see entries %2", {std::to_string(others.size()), numbers(others)}})},
           {""}});
  }

  Section summaryOfJoints() const {
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

  Section peopleAndCautions() const {
    Table table{{{tr("Person"), 26}, {tr("Roles in the shop"), 32}, {tr("In this job"), 42}}, {}};
    for (const PersonLine& person : m_content.people)
      table.rows.push_back({{person.name}, {listed(person.roles)}, {listed(person.part)}});
    return {tr("People"), {std::move(table), Paragraph{deference(), Tone::Caution}}, false};
  }

  std::string deference() const {
    return tr(
        "The record says what was done; it does not certify the machine. The maker's manual, local codes and "
        "licensed practice take precedence.");
  }

  Section parts() const {
    Table table{
        {{tr("Part or consumable"), 30}, {tr("Count"), 8, true}, {tr("Used"), 52}, {tr("Entry"), 10, true}},
        {}};
    for (const PartLine& part : m_content.parts)
      table.rows.push_back({{part.name},
                            {std::to_string(part.count)},
                            {part.used.empty() ? tr("No entry names it.") : part.used},
                            {part.entry == 0 ? "" : std::to_string(part.entry)}});
    Section out{tr("Parts and consumables"), {}, true};
    if (table.rows.empty())
      out.blocks.push_back(Paragraph{tr("The sheet names none.")});
    else
      out.blocks.push_back(std::move(table));
    return out;
  }

  Section tools() const {
    Section out{tr("Tools, as they were when used"), {}, false};
    for (const ToolLine& line : m_content.tools) {
      out.blocks.push_back(Paragraph{line.tool.id + "  " + line.tool.kind, Tone::Strong});
      out.blocks.push_back(toolFacts(line));
    }
    if (m_content.tools.empty()) out.blocks.push_back(Paragraph{tr("No torque tool was set.")});
    return out;
  }

  Facts toolFacts(const ToolLine& line) const {
    const TorqueTool& tool = line.tool;
    Facts facts;
    const auto add = [&](const Message& label, std::string value) {
      if (!value.empty()) facts.rows.push_back({tr(label), std::move(value)});
    };
    add("Standing", line.standing);
    add("Set to", fmt::format("{} ({})", listed(line.settings), tr({"entries %1", {numbers(line.entries)}})));
    add("Serial", tool.serial);
    add("Class", tool.isoClass.empty() ? "" : tr({"ISO 6789 class %1", {tool.isoClass}}));
    for (const Scale& scale : tool.scales)
      add("Scale", tr({"%1, marked every %2", {rangeText(scale.low, scale.high), text(scale.graduation)}}));
    add("Deviation", "±" + percent(tool.deviation));
    if (tool.leftHand) add("Direction", tr("also calibrated anticlockwise"));
    if (tool.cyclesDue > 0)
      add("Cycles", tr({"%1 of %2", {std::to_string(tool.cycles), std::to_string(tool.cyclesDue)}}));
    if (const Calibration* last = tool.lastCalibration()) addCalibration(facts, *last);
    return facts;
  }

  void addCalibration(Facts& facts, const Calibration& last) const {
    facts.rows.push_back({tr("Calibration"), tr({"%1 on %2, due %3, uncertainty %4",
                                                 {last.certificate, isoDate(last.date), isoDate(last.due),
                                                  percent(last.uncertainty)}})});
    for (const CalibrationPoint& point : last.points)
      facts.rows.push_back(
          {"", tr({"at %1 found %2, left %3", {text(point.setting), text(point.found), text(point.left)}})});
  }

  Section joint(const JointContent& each) const {
    Section out{tr({"Step %1: %2", {std::to_string(each.step), each.name}}), {}, true};
    Facts facts;
    const auto add = [&](const Message& label, std::string value) {
      if (!value.empty()) facts.rows.push_back({tr(label), std::move(value)});
    };
    add("Target", targetText(each));
    add("Printed in the source", each.printed.empty() ? "" : "“" + each.printed + "”");
    add("Source", each.source);
    add("Read as", each.interpretation);
    add("Fastener", each.fastener);
    add("Threads and faces", each.condition);
    for (const std::string& sentence : each.course)
      add(each.course.front() == sentence ? "Course" : "", sentence);
    out.blocks.push_back(std::move(facts));
    out.blocks.push_back(each.drawing);
    out.blocks.push_back(readings(each));
    return out;
  }

  std::string targetText(const JointContent& each) const {
    std::string out = each.differs
                          ? tr("by position, see the readings")
                          : tr({"%1, allowed %2",
                                {torqueText(each.torque.aim), rangeText(each.torque.low, each.torque.high)}});
    if (each.forThisJobOnly) out += ", " + tr("for this job only");
    return out;
  }

  Table readings(const JointContent& each) const {
    Table table{{{tr("Order"), 6, true},
                 {tr("Position"), 8, true},
                 {tr("Tolerance"), 14, true},
                 {tr("How known"), 19, true},
                 {"", 13},
                 {tr("Result"), 9},
                 {tr("Tool"), 9},
                 {tr("Who"), 15},
                 {tr("Entry"), 7, true}},
                {}};
    for (const TighteningLine& line : each.lines) table.rows.push_back(reading(line));
    return table;
  }

  std::vector<Cell> reading(const TighteningLine& line) const {
    const Ink ink = inkOf(line);
    return {{std::to_string(line.order), ink},
            {line.position, ink},
            {rangeText(line.low, line.high), ink},
            {knownText(line), ink},
            {"", ink, gaugeOf(line)},
            {resultText(line)},
            {line.tool, ink},
            {line.person, ink},
            {std::to_string(line.entry)}};
  }

  std::string knownText(const TighteningLine& line) const {
    switch (line.known) {
      case Known::Clicked:
        return tr({"clicked at %1", {text(line.setting)}});
      case Known::Read:
        return tr({"read %1", {torqueText(line.reading.value_or(StatedTorque{}))}});
      case Known::Instrument:
        return tr({"instrument %1", {torqueText(line.reading.value_or(StatedTorque{}))}});
    }
    return {};
  }

  std::string resultText(const TighteningLine& line) const {
    if (line.correctedBy) return tr({"see %1", {std::to_string(*line.correctedBy)}});
    if (line.overtaken) return tr("overtaken");
    if (!line.within) return tr("OUTSIDE");
    return line.corrects ? tr({"within; for %1", {std::to_string(*line.corrects)}}) : tr("within");
  }

  static std::optional<Gauge> gaugeOf(const TighteningLine& line) {
    const StatedTorque& reached = line.reading ? *line.reading : line.setting;
    if (line.low.empty() || line.high.empty() || reached.empty() || line.low == line.high)
      return std::nullopt;
    const Torque low = line.low.value(), width = line.high.value() - low;
    return Gauge{(reached.value() - low) / width, line.reading.has_value()};
  }

  Section entries() const {
    Table table{
        {{tr("No."), 5, true}, {tr("Time"), 19}, {tr("Who"), 17}, {tr("Step"), 5, true}, {tr("What"), 54}},
        {}};
    for (const EntryLine& line : m_content.entries) table.rows.push_back(entry(line));
    return {tr("All entries"), {std::move(table)}, true};
  }

  std::vector<Cell> entry(const EntryLine& line) const {
    std::string time = timeText(line.time);
    if (line.done) time += " " + tr({"late, done %1", {timeText(*line.done)}});
    std::string what = line.what;
    if (line.correctedBy) what += " " + tr({"[corrected by entry %1]", {std::to_string(*line.correctedBy)}});
    if (line.overtaken) what += " " + tr("[overtaken]");
    return {{std::to_string(line.sequence)},
            {std::move(time)},
            {line.who},
            {line.step == 0 ? "" : std::to_string(line.step)},
            {std::move(what), inkOf(line)}};
  }

  Section addenda() const {
    Section out{tr("Addenda"), {}, false};
    for (const AddendumLine& addendum : m_content.addenda) {
      out.blocks.push_back(Paragraph{
          tr({"%1. %2, %3", {std::to_string(addendum.number), addendum.name, timeText(addendum.time)}}),
          Tone::Strong});
      out.blocks.push_back(Paragraph{addendum.text});
    }
    return out;
  }

  Section seal() const {
    Section out{m_content.sealed ? tr("The seal") : tr("Not sealed"), {}, false};
    Facts facts;
    const auto add = [&](const Message& label, std::string value) {
      if (!value.empty()) facts.rows.push_back({tr(label), std::move(value)});
    };
    add("Head hash", m_content.head);
    add("Entries", std::to_string(m_content.entries.size()));
    add("Key", m_content.keyId);
    if (m_content.sealedAt) add("Sealed", timeText(*m_content.sealedAt));
    add("Program", m_content.program);
    add("Job", m_content.jobId);
    add("Sheet", m_content.sheetId);
    add("Sheet digest", m_content.sheetDigest);
    out.blocks.push_back(std::move(facts));
    out.blocks.push_back(
        Paragraph{m_content.sealed ? whatTheSealProves() : tr("Until it is sealed, a record proves nothing."),
                  Tone::Quiet});
    out.blocks.push_back(Paragraph{deference(), Tone::Caution});
    return out;
  }

  std::string whatTheSealProves() const {
    return tr(
        "The seal proves that the record file is what was sealed with the shop's key, entry by entry; "
        "compare head "
        "hash and count with this print. It does not prove who typed a PIN: a four-digit PIN falls to "
        "someone who "
        "holds the shop file. It does not prove that the clock was right, or that what was entered was "
        "done.");
  }

  const RecordContent& m_content;
  const Wording& m_wording;
  std::size_t m_most;
};

}  // namespace

Document recordDocument(const RecordContent& content, const Wording& wording, std::size_t mostPerException) {
  return RecordWriter(content, wording, mostPerException).write();
}

}  // namespace cw
