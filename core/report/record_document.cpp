#include "core/report/record_document.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/report/describe.h"
#include "core/report/joint_section.h"
#include "core/report/record_summary.h"
#include "core/report/record_words.h"
#include "core/units/format.h"
#include "core/units/percent.h"

namespace cw {
namespace {

class RecordWriter {
 public:
  RecordWriter(const RecordContent& content, const Wording& wording)
      : m_content(content), m_wording(wording), m_offsetShared(shareOffset(content.entries)) {}

  Document write(std::vector<Section> summary) const {
    Document out;
    out.title = fmt::format("{} · {}", m_content.workOrder, m_content.machine);
    out.subtitle = tr({"Torque record, %1", {m_content.shopName}});
    out.notice = m_content.notice;
    out.footer = footer();
    out.sections = std::move(summary);
    out.sections.push_back(parts());
    out.sections.push_back(tools());
    for (const JointContent& each : m_content.joints) out.sections.push_back(jointSection(each, m_wording));
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
    FactList facts(m_wording);
    facts.add("Standing", line.standing);
    facts.add("Set to",
              fmt::format("{} ({})", listed(line.settings), tr({"entries %1", {numberList(line.entries)}})));
    facts.add("Serial", tool.serial);
    facts.add("Class", tool.isoClass.empty() ? "" : tr({"ISO 6789 class %1", {tool.isoClass}}));
    for (const Scale& scale : tool.scales)
      facts.add("Scale",
                tr({"%1, marked every %2", {rangeText(scale.low, scale.high), text(scale.graduation)}}));
    facts.add("Deviation", "±" + percentOf(tool.deviation));
    if (tool.leftHand) facts.add("Direction", tr("also calibrated anticlockwise"));
    if (const Calibration* last = tool.lastCalibration()) addCalibration(facts, *last);
    return facts.take();
  }

  void addCalibration(FactList& facts, const Calibration& last) const {
    facts.add("Calibration",
              tr({"%1 on %2, due %3, uncertainty %4",
                  {last.certificate, isoDate(last.date), isoDate(last.due), percentOf(last.uncertainty)}}));
    for (const CalibrationPoint& point : last.points)
      facts.add({},
                tr({"at %1 found %2, left %3", {text(point.setting), text(point.found), text(point.left)}}));
  }

  Section entries() const {
    Table table{
        {{tr("No."), 5, true}, {timeHeading(), 20}, {tr("Who"), 17}, {tr("Step"), 5, true}, {tr("What"), 53}},
        {}};
    for (const EntryLine& line : m_content.entries) table.rows.push_back(entry(line));
    return {tr("All entries"), {std::move(table)}, true};
  }

  /// The offset stands once, in the heading, if it is the same everywhere.
  static bool shareOffset(const std::vector<EntryLine>& all) {
    return std::all_of(all.begin(), all.end(),
                       [&](const EntryLine& line) { return line.time.offset == all.front().time.offset; });
  }
  std::string timeHeading() const {
    if (m_content.entries.empty() || !m_offsetShared) return tr("Time");
    return tr({"Time (UTC%1)", {timeText(m_content.entries.front().time).substr(20)}});
  }
  std::string entryTime(const Moment& time) const {
    return m_offsetShared ? timeText(time).substr(0, 19) : timeText(time);
  }

  std::vector<Cell> entry(const EntryLine& line) const {
    std::string time = entryTime(line.time);
    if (line.done) time += " " + tr({"late, done %1", {timeText(*line.done)}});
    std::vector<Message> note;
    if (line.correctedBy) note.push_back({"[corrected by entry %1]", {std::to_string(*line.correctedBy)}});
    if (line.overtaken) note.push_back("[overtaken]");
    return {{std::to_string(line.sequence)},
            {std::move(time)},
            {line.who},
            {line.step == 0 ? "" : std::to_string(line.step)},
            {line.what, inkOf(line), say(note, m_wording)}};
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
    FactList facts(m_wording);
    facts.add("Head hash", m_content.head);
    facts.add("Entries", std::to_string(m_content.entries.size()));
    facts.add("Key", m_content.keyId);
    if (m_content.sealedAt) facts.add("Sealed", timeText(*m_content.sealedAt));
    facts.add("Sealed by", m_content.sealedBy);
    facts.add("Program", m_content.program);
    facts.add("Job", m_content.jobId);
    facts.add("Sheet", m_content.sheetId);
    facts.add("Sheet digest", m_content.sheetDigest);
    out.blocks.push_back(facts.take());
    out.blocks.push_back(
        Paragraph{m_content.sealed ? tr(whatTheSealProves()) : tr("Until it is sealed, a record proves nothing."),
                  Tone::Quiet});
    out.blocks.push_back(Paragraph{tr(deference()), Tone::Caution});
    return out;
  }

  static Message whatTheSealProves() {
    return "The seal proves that the record file is what was sealed with the shop's key, entry by entry; compare "
           "head hash and count with this print. It does not prove who typed a PIN: a four-digit PIN falls to "
           "someone who holds the shop file. It does not prove that the clock was right, or that what was "
           "entered was done. It covers the data, not these pages: whether a PDF is the file that was given out, "
           "“clampwright record verify” tells.";
  }

  const RecordContent& m_content;
  const Wording& m_wording;
  bool m_offsetShared;
};

}  // namespace

Stamp unsoundStamp(const Verification& found, const Wording& wording) {
  const Finding& fault = firstFault(found);
  const std::string problem = wording(fault.problem);
  return {wording("THIS RECORD DOES NOT VERIFY"),
          fault.place.empty() ? problem : fmt::format("{}: {}", fault.place, problem)};
}

Document recordDocument(const RecordContent& content, const Wording& wording, std::size_t mostPerException) {
  return RecordWriter(content, wording).write(recordSummary(content, wording, mostPerException));
}

}  // namespace cw
