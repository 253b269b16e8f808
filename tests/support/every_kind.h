#pragma once
#include <set>
#include <stdexcept>

#include "tests/support/quick_joint.h"
#include "tests/support/report_job.h"

namespace cw::test {

/// Sees every field of a body: what it is called, where it stands, and what its type says of it.
struct FieldFact {
  std::string key;
  const char* begin = nullptr;
  std::size_t size = 0, alignment = 1;
  bool stays = false;        ///< a correction may not touch it
  bool programsOwn = false;  ///< nobody states it
};
/// Does the program work it out, or take it from the shop?
template <class T>
inline constexpr bool kProgramsOwn = false;
template <class T>
inline constexpr bool kProgramsOwn<Derived<T>> = true;
template <class T>
inline constexpr bool kProgramsOwn<AsAtUse<T>> = true;

class FieldFacts {
 public:
  template <class T>
  void operator()(std::string_view key, const T& field) {
    facts.push_back({std::string(key), reinterpret_cast<const char*>(&field), sizeof(T), alignof(T),
                     kStays<T>, kProgramsOwn<T>});
  }
  std::vector<FieldFact> facts;
};
template <class T>
std::vector<FieldFact> fieldsOf(const T& body) {
  FieldFacts out;
  T::fields(body, out);
  return out.facts;
}

/// Gives each field a value that is not its default and that no other field has, where there are so many. A
/// type of field that is not listed here does not compile.
class Filler {
 public:
  void operator()(std::string_view key, std::string& out) { out = std::string(key) + "-" + number(); }
  void operator()(std::string_view, bool& out) { out = true; }
  void operator()(std::string_view, int& out) { out = std::stoi(number()); }
  void operator()(std::string_view key, Json& out) { out.set(std::string(key), number()); }
  void operator()(std::string_view, StatedTorque& out) { out = inLbf(number()); }
  void operator()(std::string_view, StatedLength& out) { out = {number(), &kMillimetre}; }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view, E& out) { out = Words<E>::kAll.back().first; }
  template <class T>
  void operator()(std::string_view key, std::optional<T>& out) {
    (*this)(key, out.emplace());
  }
  template <class T>
  void operator()(std::string_view key, std::vector<T>& out) {
    out.resize(2);
    for (T& one : out) (*this)(key, one);
  }
  template <class Tag>
  void operator()(std::string_view key, Name<Tag>& out) {
    (*this)(key, out.text);
  }
  template <class T>
  void operator()(std::string_view key, Derived<T>& out) {
    (*this)(key, out.value);
  }
  template <class T>
  void operator()(std::string_view key, AsAtUse<T>& out) {
    (*this)(key, out.value);
  }

 private:
  std::string number() { return std::to_string(++m_count); }
  int m_count = 100;
};
template <class T>
T filled() {
  T out;
  Filler filler;
  T::fields(out, filler);
  return out;
}

/// A job played at a bench, for what it makes happen.
class PlayedJob {
 public:
  explicit PlayedJob(Sheet sheet) : bench(std::move(sheet)) {
    bench.people().push_back({"nils", "Nils Roth", {Role::ShopLead}, false, true, ""});
    TorqueTool wide = sampleTools().front();
    wide.id = "T-20";
    wide.scales = {{{"1", &kNewtonMetre}, {"50", &kNewtonMetre}, {"0.1", &kNewtonMetre}}};
    bench.tools().push_back(wide);
  }

  /// Sequence of the entry that this became; throws with the refusal.
  int say(const std::string& sign, Body body) { return say(bench.draftOf(sign, std::move(body))); }
  int say(Body body) { return say("mira", std::move(body)); }
  int say(const Draft& draft, const std::set<std::string>& withPin = {}) {
    if (const auto said = bench.say(draft, withPin); !said)
      throw std::runtime_error(std::string(kindOf(draft.body)) + ": " + sentence(said.error()));
    return bench.job().count();
  }
  /// By the phoned word of whoever the body names.
  int sayByPhone(Body body) {
    Draft draft = bench.draftOf("mira", std::move(body));
    draft.byPhone = true;
    return say(draft);
  }
  void wait(std::chrono::seconds time) {
    Moment now = bench.clock().now();
    now.utc += time;
    bench.clock().set(now);
  }
  void pull(const char* position, const char* reading = "") {
    wait(std::chrono::seconds(5));
    const auto& step = bench.job().sheet.steps[next(bench.job()).step].id;
    say(*reading == '\0' ? clicked(step, position) : test::read(step, position, inLbf(reading)));
  }

  Bench bench;
};

/// The sample sheet with gaps to read, a torque and a condition of its own at position 4, and a count to be
/// looked at.
inline Sheet everySheet() {
  Sheet sheet = sampleSheet();
  Specification light = sheet.specifications.front();
  light.id = "light", light.printed = "50-56 in. lbs.", light.condition = "oiled";
  light.low = inLbf("50"), light.aim = inLbf("53"), light.high = inLbf("56");
  sheet.specifications.push_back(light);
  Joint& cover = sheet.joints.front();
  cover.positions["4"].specification = "light";
  cover.passes.gaps = GapReadings{4, {1, 2}, {"0.8", &kMillimetre}};
  sheet.steps[4].hold = HoldDemand{Witness::Independent, {"setting", "count"}, {}};
  return sheet;
}

inline Witnessed wholeLook(std::string tool, const char* setting, int count) {
  Witnessed out = settingSeen(std::move(tool), inLbf(setting));
  out.what.push_back("count"), out.count = count;
  return out;
}

/// What can happen on the way to the final pass, and lets the next look be made.
inline void playBeforeTheFinalPass(PlayedJob& job) {
  JobStarted start;
  start.workOrder = "WO 1", start.machine = "P-1", start.model = "Other pump", start.serial = "S-9";
  start.hours = "12 h", start.registered.value = true;
  start.reason = Reason::Comeback, start.parent = "01900000-0000-7000-8000-0000000000aa";
  start.fitAllowedBy = "lena", start.fitReason = "the covers are the same";
  job.say(job.bench.draftOf("mira", start), {"lena"});
  Moment back = job.bench.clock().now();
  back.utc -= std::chrono::hours(1);
  job.bench.clock().set(back);
  job.say(ClockWentBack{});
  job.say(WarningsRead{"s1"});
  job.say(SetAside{"s1", "the gasket comes at noon"});
  job.say(CheckMade{"s2", Answer::No, "oil on the face"});
  job.say(CheckMade{"s2", Answer::Yes, "wiped clean"});
  job.say(correction(job.say(Measured{"s3", "0.15", "mm", "F-2"}), "value", "0.05", "read the wrong line"));
  job.say(Applied{"s4", "B-77", "2026-12-31"});
  job.say(HandStarted{"s5", 3, {"4"}});
  const int repaired =
      job.sayByPhone(Repaired{"cover", "4", "thread chased", "burr at the first turn", "nils"});
  job.say("nils", SignedIn{});
  job.say("nils", Confirmed{{repaired}});
  job.say(HandStarted{"s5", 4, {}});
  job.say(ConditionConfirmed{"s5", "dry"});
  job.say(ConditionConfirmed{"s5", "oiled"});
  job.say(toolSet("s5", "T-07", inLbf("33")));
  job.say(counted("s5", 3));
  job.say(toolSet("s5", "T-07", inLbf("27")));
  job.say(counted("s5", 1));
  GapsRead uneven = gapsOf({"1", "1", "2", "1"});
  uneven.allowedBy = "lena", uneven.reason = "the flange is bent";
  job.say(uneven);
}

/// The final pass with a wrench that is dropped in it, and all that can follow.
inline void playFromTheFinalPass(PlayedJob& job) {
  job.say(job.bench.draftOf(
              "mira", allowedTool(toolSet("s5", "T-08", inLbf("65")), "lena", "the other wrench is away")),
          {"lena"});
  job.say("otto", SignedIn{});
  Witnessed differs = wholeLook("T-08", "65", 3);
  differs.what = {"setting"}, differs.notSo = {"count"};
  job.say("otto", differs);
  job.say("otto", wholeLook("T-08", "65", 4));
  job.pull("1");
  job.pull("3", "75");
  job.pull("3", "66");
  job.bench.tools()[1].dueNow = *parseDate("2026-03-04");
  job.say(*stoppedTool(job.bench.job(), job.bench.floor()));
  job.say(toolSet("s5", "T-07", inLbf("65")));
  job.say("otto", wholeLook("T-07", "65", 4));
  job.pull("2");
  const auto pullLast = [&] {
    job.say(toolSet("s5", "T-07", inLbf("53")));
    job.say("otto", wholeLook("T-07", "53", 4));
    job.pull("4");
  };
  pullLast();
  job.say(gapsOf({"0.1", "0.1", "0.2", "0.1"}));
  job.say(checkPass("s5", {"2"}));
  job.say(checkPass("s5", {}));
  job.say(Reopened{"s5", "4", "signed and never pulled"});
  pullLast();
  job.say(gapsOf({"0.1", "0.1", "0.1", "0.1"}));
  job.say(checkPass("s5", {}));
  job.say("otto", marksSeen());
  job.say(TakenApart{"s6", "the marks were wiped off"});
  job.say(Paused{"no paint", true, "paint", "drained"});
  job.say(SignedIn{});
  job.say(Resumed{true});
  job.say("lena", SignedIn{});
  job.say(LeftBlank{"s6", Absence::NotRecorded, "no paint to be had", "lena"});
  job.say(ActDone{"s1", true, "G-5", "2027-01-31"});
  job.say(Finished{"all well", "lena", "the marks can be painted later"});
}

/// A quick joint against the guard's word, with a torque of its own.
inline PlayedJob playedQuickJoint() {
  PlayedJob job(quickSheetOf());
  JobStarted start;
  start.workOrder = "WO 2", start.machine = "P-1", start.quick = true, start.guard.value = "above-band";
  start.guardAllowedBy = "lena", start.guardReason = "asked the maker";
  job.say(job.bench.draftOf("mira", start), {"lena"});
  const std::string step = job.bench.job().sheet.steps.front().id;
  const auto newtonMetres = [](const char* digits) { return StatedTorque{digits, &kNewtonMetre}; };
  job.say(HandStarted{step, 6, {}});
  job.say(ConditionConfirmed{step, "oiled"});
  job.say(Deviated{step, "less torque", "soft face", "lena", newtonMetres("17"), newtonMetres("18"),
                   newtonMetres("19")});
  job.say(toolSet(step, "T-20", newtonMetres("9")));
  job.say(counted(step, 6));
  job.say(toolSet(step, "T-20", newtonMetres("18")));
  while (next(job.bench.job()).stage == Stage::TightenPosition)
    job.pull(std::string(next(job.bench.job()).position).c_str());
  job.say(Finished{});
  return job;
}

/// A shop of one, with an entry made later, and one by an apprentice and another.
inline PlayedJob playedAlone() {
  PlayedJob job(sampleSheet());
  JobStarted start;
  start.workOrder = "WO 3", start.machine = "P-1", start.model = "Test pump", start.alone.value = true;
  job.say(start);
  job.say(WarningsRead{"s1"});
  Draft late = job.bench.draftOf("mira", ActDone{"s1", true, "", ""});
  job.wait(std::chrono::hours(1));
  late.done = job.bench.job().last()->time;
  job.say(late);
  Draft together = job.bench.draftOf("mira", CheckMade{"s2", Answer::Yes, ""});
  together.by = {{"ada", ""}, {"mira", ""}}, together.supervisor = "mira";
  job.say(together);
  for (const char* step : {"s3", "s4"}) job.say(Deviated{step, "by eye", "no gauge here", "", {}, {}, {}});
  job.say(HandStarted{"s5", 4, {}});
  job.say(ConditionConfirmed{"s5", "dry"});
  job.say(toolSet("s5", "T-07", inLbf("33")));
  job.say(counted("s5", 4));
  job.say(toolSet("s5", "T-07", inLbf("65")));
  const auto rest = [&] {
    job.say(Paused{"break", false, "", ""});
    job.wait(std::chrono::minutes(11));
    job.say(SignedIn{});
    job.say(Resumed{});
  };
  rest();
  Witnessed self = settingSeen("T-07", inLbf("65"));
  self.manner = Manner::Self;
  job.say(self);
  for (const char* position : {"1", "3", "2", "4"}) job.pull(position);
  job.say(checkPass("s5", {}));
  rest();
  Witnessed marks = marksSeen();
  marks.manner = Manner::Self;
  job.say(marks);
  job.say(Finished{});
  return job;
}

/// Jobs in which every kind of entry happens with every field that it has. Invented.
inline std::vector<Job> everyKindJobs() {
  PlayedJob all(everySheet());
  playBeforeTheFinalPass(all);
  playFromTheFinalPass(all);
  PlayedJob mistake(sampleSheet());
  need(mistake.bench.start());
  mistake.say(CalledOff{"the wrong machine"});
  return {all.bench.job(), playedQuickJoint().bench.job(), playedAlone().bench.job(), mistake.bench.job()};
}

/// Which kinds came through which stage.
class KindsSeen {
 public:
  void in(const std::string& stage, const Body& body) { m_seen[stage].insert(std::string(kindOf(body))); }
  /// Kinds that did not come through, apart from `without`.
  std::set<std::string> missing(const std::string& stage, const std::set<std::string>& without = {}) {
    std::set<std::string> out;
    for (const auto kind : bodyKinds())
      if (!m_seen[stage].contains(std::string(kind)) && !without.contains(std::string(kind)))
        out.insert(std::string(kind));
    return out;
  }

 private:
  std::map<std::string, std::set<std::string>> m_seen;
};

}  // namespace cw::test
