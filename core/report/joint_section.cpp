#include "core/report/joint_section.h"

#include "core/report/record_words.h"
#include "core/units/format.h"

namespace cw {
namespace {

class JointWriter {
 public:
  explicit JointWriter(const Wording& wording) : m_wording(wording) {}

  Section write(const JointContent& each) const {
    Section out{tr({"Step %1: %2", {std::to_string(each.step), each.name}}), {}, true};
    FactList facts(m_wording);
    facts.add("Target", targetText(each));
    facts.add("Printed in the source", each.printed.empty() ? "" : "“" + each.printed + "”");
    facts.add("Source", each.source);
    facts.add("Interpretation", each.interpretation);
    facts.add("Fastener", each.fastener);
    facts.add("Threads and faces", each.condition);
    for (const std::string& sentence : each.course)
      facts.add(&sentence == &each.course.front() ? "Course" : "", sentence);
    out.blocks.push_back(facts.take());
    out.blocks.push_back(each.drawing);
    out.blocks.push_back(readings(each));
    return out;
  }

 private:
  std::string tr(const Message& message) const { return m_wording(message); }

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
                 {tr("Tolerance"), 15, true},
                 {tr("How known"), 20, true},
                 {"", 9},
                 {tr("Result"), 13},
                 {tr("Tool"), 8},
                 {tr("Who"), 14},
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
            {"", ink, {}, gaugeOf(line)},
            {resultText(line), ink == Ink::Struck ? Ink::Full : ink},
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

  const Wording& m_wording;
};

}  // namespace

Section jointSection(const JointContent& joint, const Wording& wording) {
  return JointWriter(wording).write(joint);
}

}  // namespace cw
