#pragma once
#include <string>
#include <vector>

#include "core/procedure/sheet_file.h"
#include "core/record/draft.h"
#include "core/record/next.h"
#include "core/record/seal.h"
#include "core/units/parse.h"

namespace cw::test {

inline StatedTorque inLbf(std::string digits) {
  return {std::move(digits), &kPoundInch};
}

// Bodies as somebody states them, without what the program works out.
inline ToolSet toolSet(std::string step, std::string tool, StatedTorque setting) {
  ToolSet out;
  out.step = std::move(step), out.tool = std::move(tool), out.setting = std::move(setting);
  return out;
}
inline PassCounted counted(std::string step, int count) {
  PassCounted out;
  out.step = std::move(step), out.count = count;
  return out;
}
inline CheckPassMade checkPass(std::string step, std::vector<std::string> moved) {
  CheckPassMade out;
  out.step = std::move(step), out.moved = std::move(moved);
  return out;
}
/// What the sheet's second person saw on the wrench before the final pass.
inline Witnessed settingSeen(std::string tool, StatedTorque setting) {
  Witnessed out;
  out.step = "s5", out.manner = Manner::Independent, out.what = {"setting"};
  out.tool = std::move(tool), out.setting = std::move(setting);
  return out;
}
inline GapsRead gapsOf(const std::vector<const char*>& millimetres) {
  GapsRead out;
  out.step = "s5";
  for (const char* each : millimetres) out.gaps.push_back({each, &kMillimetre});
  return out;
}

inline Witnessed marksSeen() {
  Witnessed out;
  out.step = "s6", out.what = {"marks"};
  return out;
}
/// A wrench that is refused, used by `lead`'s word.
inline ToolSet allowedTool(ToolSet set, std::string lead, std::string reason) {
  set.allowedBy = std::move(lead), set.reason = std::move(reason);
  return set;
}
/// A correction as a line states it: only the fields that were wrong.
inline Corrected correction(int of, std::string_view field, Json value, std::string reason = "a slip") {
  Json now;
  now.set(std::string(field), std::move(value));
  return {of, std::move(now), std::move(reason)};
}
inline Tightened clicked(std::string step, std::string position) {
  Tightened out;
  out.step = std::move(step), out.position = std::move(position);
  return out;
}
inline Tightened read(std::string step, std::string position, StatedTorque reading) {
  Tightened out = clicked(std::move(step), std::move(position));
  out.known = Known::Read, out.reading = std::move(reading);
  return out;
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

/// Deviation that leaves a step out or does it otherwise, with no torque of its own.
inline Deviated otherwise(std::string step, std::string lead) {
  Deviated out;
  out.step = std::move(step), out.allowedBy = std::move(lead);
  out.what = "done otherwise", out.reason = "the part is worn";
  return out;
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
  SteppingClock& clock() { return m_clock; }

  /// Judges and, if allowed, takes in what `sign` says, who gives the PIN to start and to sign in.
  Result<void> say(const std::string& sign, Body body) { return say(draftOf(sign, std::move(body))); }
  Result<void> say(Body body) { return say("mira", std::move(body)); }
  /// The same of a draft; `withPin`: who else gives a PIN for it.
  Result<void> say(const Draft& draft, std::set<std::string> withPin = {}) {
    CW_TRY(entry, entryOf(draft, std::move(withPin)));
    CW_TRY(judged, judge(m_job, std::move(entry), From::Line));
    apply(m_job, std::move(judged));
    return {};
  }

  Draft draftOf(const std::string& sign, Body body) {
    Draft draft;
    // A counter in the random part keeps the hashes of a test the same in every run.
    draft.id = *Id::parse("01900000-0000-7000-8000-" + hex(sha256(std::to_string(++m_ids))).substr(0, 12));
    draft.enteredBy = sign;
    draft.body = std::move(body);
    return draft;
  }
  Result<Entry> entryOf(const Draft& draft, std::set<std::string> withPin = {}) {
    if (std::holds_alternative<SignedIn>(draft.body) || std::holds_alternative<JobStarted>(draft.body))
      withPin.insert(draft.enteredBy);
    // A lead who signed in is here, and gives the PIN for each word.
    for (const std::string& sign : namedIn(draft.body).people)
      if (sign != draft.enteredBy && m_job.signedIn.contains(sign)) withPin.insert(sign);
    return compose(m_job, draft, floor(), {std::move(withPin), m_job.signedIn}, m_clock.now());
  }

  Result<void> start() {
    JobStarted started;
    started.workOrder = "WO 1";
    started.machine = "P-1";
    started.model = "Test pump";
    started.registered.value = true;
    return say(started);
  }

  /// Everything up to and including the given step; "" for all, finished. Empty if all was allowed.
  std::string workThrough(const std::string& lastStep);

  SealContext context() {
    return {"Test shop", "0.0", {"mira", "Mira Sol", {Role::Technician}, false, Vouch::Pin}, m_clock.now()};
  }
  std::vector<Person>& people() { return m_people; }
  std::vector<TorqueTool>& tools() { return m_tools; }

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
  add(toolSet("s5", "T-07", inLbf("33")));
  add(counted("s5", 4));
  add(toolSet("s5", "T-07", inLbf("65")));
  add(SignedIn{}, "otto");
  add(settingSeen("T-07", inLbf("65")), "otto");
  for (const char* position : {"1", "3", "2", "4"}) add(clicked("s5", position));
  add(checkPass("s5", {"2"}));
  add(checkPass("s5", {}));
  add(marksSeen(), "otto");
  add(Finished{"all well", {}, {}});
  if (m_job.entries.empty())
    if (auto started = start(); !started) return sentence(started.error());
  for (auto& [sign, body] : all) {
    const std::string step = stepOf(body);
    if (!lastStep.empty() && (step > lastStep || std::holds_alternative<Finished>(body))) break;
    if (auto said = say(sign, std::move(body)); !said) return sentence(said.error());
  }
  return {};
}

/// The sample's four steps, then its cover up to the moment before the first pull, in turn with `hold` looked
/// at.
inline std::string untilThePulls(Bench& bench) {
  if (auto refused = bench.workThrough("s4"); !refused.empty()) return refused;
  for (const Body& body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                            toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                            toolSet("s5", "T-07", inLbf("65"))})
    if (const auto said = bench.say(body); !said) return sentence(said.error());
  if (const auto in = bench.say("otto", SignedIn{}); !in) return sentence(in.error());
  const auto seen = bench.say("otto", settingSeen("T-07", inLbf("65")));
  return seen ? std::string() : sentence(seen.error());
}

/// Sequence of the last entry of a kind that holds a field of that value; 0 if there is none.
inline int entryOfKind(const Job& job, std::string_view kind, std::string_view field = {},
                       const Json& value = {}) {
  int out = 0;
  for (const Kept& kept : job.entries) {
    const Json body = bodyToJson(kept.entry.body);
    const Json* found = body.find(std::string(field));
    if (kindOf(kept.entry.body) == kind && (field.empty() || (found != nullptr && *found == value)))
      out = kept.entry.sequence;
  }
  return out;
}

}  // namespace cw::test
