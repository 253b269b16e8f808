#pragma once
#include <string>
#include <vector>

#include "core/procedure/sheet_file.h"
#include "core/record/draft.h"
#include "core/record/rules.h"
#include "core/record/seal.h"
#include "core/units/parse.h"

namespace cw::test {

inline StatedTorque inLbf(std::string digits) {
  return {std::move(digits), &kPoundInch};
}

/// A small sheet of every step kind: four screws at 50, 60 to 70 in·lbf, two passes and a check pass of at
/// most two rounds, with a second person before the final pass. Invented.
inline Sheet sampleSheet() {
  Sheet sheet;
  sheet.id = *Id::parse("01900000-0000-7000-8000-000000000001");
  sheet.title = "Close the test cover";
  sheet.revision = "A";
  sheet.model = "Test pump";
  sheet.serials = "all";
  sheet.notice = "Invented data, not for use.";
  sheet.author = "tilda";
  sheet.sources = {{"manual", "Test manual", "12", "3", "2024-05-01", {}}};
  sheet.parts = {{"gasket", "Cover gasket", 1, true, false, {}},
                 {"compound", "Thread compound", 1, false, true, {}}};
  Fastener screw;
  screw.id = "screw";
  screw.kind = FastenerKind::Screw;
  screw.thread = "1/4-20 UNC";
  screw.grade = "SAE 5";
  sheet.fasteners = {screw};
  Specification torque;
  torque.id = "torque";
  torque.printed = "60-70 in. lbs.";
  torque.source = "manual";
  torque.reading = Reading::Range;
  torque.low = inLbf("60");
  torque.aim = inLbf("65");
  torque.high = inLbf("70");
  torque.toleranceStated = true;
  torque.condition = "dry";
  torque.interpretedBy = "tilda";
  sheet.specifications = {torque};
  Joint cover;
  cover.id = "cover";
  cover.name = "Test cover";
  cover.layout.shape = Circle{4, millimetres(80), {}, 1, Direction::Clockwise};
  cover.fastener = "screw";
  cover.specification = "torque";
  cover.order = {"1", "3", "2", "4"};
  cover.rule = "star";
  cover.passes.shares = {0.5, 1.0};
  cover.passes.check = CheckPass{2};
  sheet.joints = {cover};

  const auto step = [&](std::string id, StepKind kind, std::string text) -> Step& {
    Step one;
    one.id = std::move(id);
    one.kind = kind;
    one.text = std::move(text);
    sheet.steps.push_back(one);
    return sheet.steps.back();
  };
  Step& fit = step("s1", StepKind::Act, "Fit the new gasket.");
  fit.warnings = {"Parts move: the drive must be isolated and locked out."};
  fit.part = "gasket";
  step("s2", StepKind::Check, "Look whether the face is clean.");
  Step& gap = step("s3", StepKind::Measure, "Measure the step between the faces.");
  gap.unit = "mm";
  gap.low = "0";
  gap.high = "0.10";
  step("s4", StepKind::Apply, "Put compound on the threads.").part = "compound";
  Step& tighten = step("s5", StepKind::Tighten, "Tighten the cover.");
  tighten.joint = "cover";
  tighten.hold = HoldDemand{Witness::Independent, {"setting"}, {}};
  step("s6", StepKind::Hold, "Look at the marks.").hold = HoldDemand{Witness::Watched, {"marks"}, {}};
  return sheet;
}

inline std::vector<Person> samplePeople() {
  const auto person = [](std::string sign, std::string name, std::set<Role> roles) {
    return Person{std::move(sign), std::move(name), std::move(roles), false, true, ""};
  };
  Person apprentice = person("ada", "Ada Quill", {Role::Technician});
  apprentice.apprentice = true;
  return {person("mira", "Mira Sol", {Role::Technician}), person("otto", "Otto Brand", {Role::Inspector}),
          person("lena", "Lena Fjord", {Role::ShopLead}), person("wim", "Wim Post", {Role::ServiceWriter}),
          apprentice};
}

inline std::vector<TorqueTool> sampleTools() {
  TorqueTool wrench;
  wrench.id = "T-07";
  wrench.kind = "click wrench";
  wrench.isoClass = "A";
  wrench.scales = {{inLbf("20"), inLbf("150"), inLbf("1")}};
  wrench.deviation = 0.04;
  Calibration calibration;
  calibration.date = *parseDate("2026-01-10");
  calibration.due = *parseDate("2027-01-10");
  calibration.certificate = "C-1";
  calibration.uncertainty = 0.01;
  wrench.calibrations = {calibration};
  TorqueTool overdue = wrench;
  overdue.id = "T-08";
  overdue.calibrations[0].due = *parseDate("2026-02-01");
  return {wrench, overdue};
}

/// A job at a bench of its own: says what is done and moves the clock by a second each time.
class Bench {
 public:
  explicit Bench(Sheet sheet = sampleSheet())
      : m_clock(*parseRfc3339("2026-03-04T08:00:00.000+01:00"), std::chrono::seconds(1)),
        m_people(samplePeople()),
        m_tools(sampleTools()),
        m_job(*emptyJob(*Id::parse("01900000-0000-7000-8000-00000000000a"),
                        *Id::parse("01900000-0000-7000-8000-00000000000b"), writeSheet(sheet))) {}

  Job& job() { return m_job; }
  ShopFloor floor() const { return {m_people, m_tools}; }
  const std::vector<Person>& people() const { return m_people; }
  const std::vector<TorqueTool>& tools() const { return m_tools; }
  SteppingClock& clock() { return m_clock; }

  /// Judges and, if allowed, takes in what `sign` says.
  Result<void> say(const std::string& sign, Body body) {
    const Entry entry = entryOf(sign, std::move(body));
    CW_CHECK(mayAppend(m_job, entry, floor()));
    apply(m_job, entry);
    return {};
  }
  Result<void> say(Body body) { return say("mira", std::move(body)); }

  Entry entryOf(const std::string& sign, Body body) {
    Draft draft;
    // A counter in the random part keeps the hashes of a test the same in every run.
    draft.id = *Id::parse("01900000-0000-7000-8000-" + hex(sha256(std::to_string(++m_ids))).substr(0, 12));
    draft.enteredBy = sign;
    draft.body = std::move(body);
    return compose(m_job, draft, floor(), m_clock.now());
  }

  Result<void> start() {
    JobStarted started;
    started.workOrder = "WO 1";
    started.machine = "P-1";
    started.sheetDigest = hex(sha256(m_job.sheetBytes));
    return say(started);
  }

  /// Everything up to and including the given step; "" for all, finished. Empty if all was allowed.
  std::string workThrough(const std::string& lastStep);

  SealContext context() { return {"Test shop", "0.0", m_people, m_tools, m_clock.now()}; }

 private:
  SteppingClock m_clock;
  std::vector<Person> m_people;
  std::vector<TorqueTool> m_tools;
  Job m_job;
  int m_ids = 0;
};

inline std::string Bench::workThrough(const std::string& lastStep) {
  std::vector<std::pair<std::string, Body>> all;
  const auto add = [&](Body body, std::string sign = "mira") {
    all.emplace_back(std::move(sign), std::move(body));
  };
  add(WarningsRead{"s1"});
  add(ActDone{"s1", true, "", ""});
  add(CheckMade{"s2", Answer::Yes, ""});
  add(Measured{"s3", "0.05", "mm", ""});
  add(Applied{"s4", "B-77", "2026-12-31"});
  add(HandStarted{"s5", 4, {}});
  add(ConditionConfirmed{"s5", "dry"});
  add(ToolSet{"s5", 1, "T-07", inLbf("33"), {}, "", ""});
  add(PassCounted{"s5", 1, 4});
  add(ToolSet{"s5", 2, "T-07", inLbf("65"), {}, "", ""});
  add(SignedIn{}, "otto");
  add(Witnessed{"s5", Manner::Independent, {"setting"}, "T-07", inLbf("65"), std::nullopt, true}, "otto");
  for (const char* position : {"1", "3", "2", "4"}) {
    Tightened pulled;
    pulled.step = "s5";
    pulled.position = position;
    add(pulled);
  }
  add(CheckPassMade{"s5", 1, {"2"}});
  add(CheckPassMade{"s5", 2, {}});
  add(Witnessed{"s6", Manner::Watched, {"marks"}, "", std::nullopt, std::nullopt, true}, "otto");
  add(Finished{"all well"});
  if (m_job.entries.empty())
    if (auto started = start(); !started) return sentence(started.error());
  for (auto& [sign, body] : all) {
    const std::string step = stepOf(body);
    if (!lastStep.empty() && (step > lastStep || std::holds_alternative<Finished>(body))) break;
    if (auto said = say(sign, std::move(body)); !said) return sentence(said.error());
  }
  return {};
}

}  // namespace cw::test
