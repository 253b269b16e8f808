#include "core/report/joint_content.h"

#include <algorithm>

#include "core/procedure/words.h"
#include "core/report/describe.h"
#include "core/units/format.h"

namespace cw {
namespace {

std::string fastenerText(const Sheet& sheet, const Joint& joint) {
  const Fastener* fastener = sheet.fastener(joint.fastener);
  if (fastener == nullptr) return {};
  std::string out = std::string(wordOf(fastener->kind)) + " " + fastener->thread;
  if (fastener->length) out += " × " + text(*fastener->length);
  return fastener->grade.empty() ? out : out + ", " + fastener->grade;
}

std::string sourceText(const Sheet& sheet, const Specification& specification, const Wording& wording) {
  const Source* source = sheet.source(specification.source);
  if (source == nullptr) return {};
  return wording({"%1, page %2, revision %3", {source->document, source->page, source->revision}});
}

std::string interpretationText(const Specification& specification, const Wording& wording) {
  std::vector<Message> out;
  if (!specification.interpretedBy.empty()) out.push_back({"Read by %1.", {specification.interpretedBy}});
  if (!specification.toleranceStated) out.push_back("The tolerance is assumed, not stated by the source.");
  if (!specification.why.empty()) out.push_back({"%1", {specification.why}});
  if (specification.method == Method::TorqueAndAngle || specification.angle)
    out.push_back("The sheet wants a turn by an angle after the torque, which was not recorded.");
  return say(out, wording);
}

/// Walks the entries of one tighten step.
class StepReader {
 public:
  StepReader(const Job& job, std::size_t index, std::span<const Person> people, const Wording& wording)
      : m_job(job), m_step(job.sheet.steps[index]), m_index(index), m_people(people), m_wording(wording) {}

  JointContent read() {
    describeJoint();
    for (const Kept& kept : m_job.entries) {
      if (const auto* corrected = std::get_if<Corrected>(&kept.entry.body)) takeCorrection(kept, *corrected);
      if (stepOf(kept.entry.body) == m_step.id) take(kept);
    }
    return std::move(m_out);
  }

 private:
  void describeJoint() {
    const Sheet& sheet = m_job.sheet;
    const Joint& joint = *sheet.joint(m_step.joint);
    m_out.step = static_cast<int>(m_index) + 1;
    m_out.name = joint.name;
    m_out.fastener = fastenerText(sheet, joint);
    describeSpecifications(sheet, joint);
    m_out.torque = torqueAt(m_job, m_index, joint.order.front());
    m_out.differs = !m_job.steps[m_index].torque &&
                    std::any_of(joint.order.begin(), joint.order.end(), [&](const std::string& label) {
                      return joint.specificationAt(label) != joint.specificationAt(joint.order.front());
                    });
    m_out.forThisJobOnly = m_job.steps[m_index].torque.has_value();
    m_out.positions = joint.order.size();
    m_out.done = m_job.steps[m_index].tightening.tightened.size();
    m_out.drawing = drawingOf(m_job, m_index);
  }

  /// What the sources say of its positions, each thing once.
  void describeSpecifications(const Sheet& sheet, const Joint& joint) {
    std::vector<std::string> conditions, printed, sources, interpretations;
    const auto once = [](std::vector<std::string>& list, std::string text) {
      if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end())
        list.push_back(std::move(text));
    };
    m_out.toleranceStated = true;
    for (const std::string& label : joint.order) {
      const Specification& specification = *sheet.specification(joint.specificationAt(label));
      const std::string& second = specification.printedSecond;
      once(conditions, specification.condition);
      once(printed, second.empty() ? specification.printed : specification.printed + " / " + second);
      once(sources, sourceText(sheet, specification, m_wording));
      once(interpretations, interpretationText(specification, m_wording));
      m_out.toleranceStated = m_out.toleranceStated && specification.toleranceStated;
    }
    m_out.condition = listed(conditions), m_out.printed = listed(printed), m_out.source = listed(sources);
    for (const std::string& each : interpretations)
      m_out.interpretation += (m_out.interpretation.empty() ? "" : " ") + each;
  }

  void take(const Kept& kept) {
    if (const auto* pulled = std::get_if<Tightened>(&kept.entry.body))
      m_out.lines.push_back(lineOf(kept, *pulled, kept.entry.sequence));
    else if (isOfCourse(kept.entry.body) && !kept.overtaken)
      m_out.course.push_back(m_wording(
          {"%1 (entry %2)",
           {say(describe(kept.entry, m_job, m_people), m_wording), std::to_string(kept.entry.sequence)}}));
  }

  static bool isOfCourse(const Body& body) {
    return std::holds_alternative<HandStarted>(body) || std::holds_alternative<PassCounted>(body) ||
           std::holds_alternative<ConditionConfirmed>(body) || std::holds_alternative<CheckPassMade>(body) ||
           std::holds_alternative<GapsRead>(body) || std::holds_alternative<Witnessed>(body);
  }

  /// What a correction says instead, as a line of its own after the one it corrects.
  void takeCorrection(const Kept& kept, const Corrected& corrected) {
    const auto old = std::find_if(m_out.lines.begin(), m_out.lines.end(),
                                  [&](const TighteningLine& line) { return line.entry == corrected.of; });
    if (old == m_out.lines.end()) return;
    const auto now = bodyFromJson(Tightened::kKind, corrected.now, "now", From::Chain);
    if (!now) return;
    TighteningLine line = lineOf(kept, std::get<Tightened>(*now), corrected.of);
    line.tool = old->tool;
    line.corrects = corrected.of;
    line.overtaken = old->overtaken;
    const auto after = std::find_if(old + 1, m_out.lines.end(), [&](const TighteningLine& other) {
      return other.corrects != corrected.of;
    });
    m_out.lines.insert(after, std::move(line));
  }

  /// `made`: the entry that the position was pulled in.
  TighteningLine lineOf(const Kept& kept, const Tightened& body, int made) const {
    const Entry& entry = kept.entry;
    const JobTorque torque = torqueThen(m_job, m_index, body.position, made);
    TighteningLine line;
    line.position = body.position;
    line.order = orderNumber(body.position);
    line.pass = body.pass;
    line.low = torque.low, line.target = body.target, line.high = torque.high;
    line.setting = body.setting, line.known = body.known, line.reading = body.reading;
    line.within = body.within;
    line.tool = entry.by.front().tool;
    line.person = doersOf(entry, m_people);
    line.time = entry.time, line.done = entry.done;
    line.entry = entry.sequence, line.hash = hex(kept.hash);
    line.correctedBy = kept.correctedBy, line.overtaken = kept.overtaken;
    return line;
  }

  int orderNumber(const std::string& position) const {
    const auto& order = orderOf(m_job, m_step);
    return static_cast<int>(std::find(order.begin(), order.end(), position) - order.begin()) + 1;
  }

  const Job& m_job;
  const Step& m_step;
  std::size_t m_index;
  std::span<const Person> m_people;
  const Wording& m_wording;
  JointContent m_out;
};

}  // namespace

std::vector<JointContent> jointsOf(const Job& job, std::span<const Person> people, const Wording& wording) {
  std::vector<JointContent> out;
  for (std::size_t i = 0; i < job.sheet.steps.size(); ++i)
    if (job.sheet.steps[i].kind == StepKind::Tighten)
      out.push_back(StepReader(job, i, people, wording).read());
  return out;
}

}  // namespace cw
