#include <gmock/gmock.h>

#include "core/report/csv.h"
#include "core/report/describe.h"
#include "core/report/record_document.h"
#include "tests/support/every_kind.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;
using testing::IsEmpty;

/// What the sentences of an entry leave out, because it stands elsewhere or says nothing to a reader.
const std::set<std::string> kNotSaid{
    "started.model",         // on the front page
    "started.serial",        // on the front page
    "started.hours",         // on the front page
    "started.sheet_digest",  // in the sheet's own lines
    "tightened.pass",        // the last one always
    "tightened.target",      // in the joint's readings
    "tightened.setting",     // of one that was read: in the table
    "corrected.now",         // said as the entry that it should have been
    "tool-set.as_used",      // among the tools
};

/// How a stated text or quantity is spelled in a sentence; nothing for a field that is said in words of its
/// own.
struct Spelled {
  std::vector<std::pair<std::string, std::string>> out;
  std::span<const Person> people;
  const Job& job;

  void operator()(std::string_view key, const std::string& value) { put(key, value); }
  void operator()(std::string_view key, const PersonSign& value) {
    if (!value.empty()) put(key, nameOf(value.text, people));
  }
  void operator()(std::string_view key, const ToolId& value) { put(key, value); }
  void operator()(std::string_view key, const PositionLabel& value) { put(key, value); }
  void operator()(std::string_view, const StepId&) {}  // the step stands beside the sentences
  void operator()(std::string_view key, const StatedTorque& value) {
    if (!value.empty()) put(key, text(value));
  }
  void operator()(std::string_view key, const StatedLength& value) { put(key, text(value)); }
  void operator()(std::string_view key, int value) { put(key, std::to_string(value)); }
  void operator()(std::string_view, bool) {}
  void operator()(std::string_view key, const Json&) { put(key, "a whole object"); }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view, E) {}
  template <class T>
  void operator()(std::string_view key, const std::optional<T>& value) {
    if (value) (*this)(key, *value);
  }
  template <class T>
  void operator()(std::string_view key, const std::vector<T>& value) {
    for (const T& one : value) (*this)(key, one);
  }
  template <class T>
  void operator()(std::string_view key, const Derived<T>& value) {
    (*this)(key, value.value);
  }
  template <class T>
  void operator()(std::string_view key, const AsAtUse<T>& value) {
    (*this)(key, value.value);
  }

 private:
  void put(std::string_view key, const std::string& value) {
    if (value.empty()) return;
    const Joint* joint = key == "joint" ? job.sheet.joint(value) : nullptr;
    const auto moment = key == "before" ? parseRfc3339(value) : Result<Moment>(fail({}));
    out.emplace_back(key, joint != nullptr ? joint->name : moment ? timeText(*moment) : value);
  }
};

TEST(EveryKindInWords, SaysEveryValueThatWasStated) {
  std::set<std::string> leftOut;
  KindsSeen seen;
  for (const Job& job : everyKindJobs()) {
    const std::vector<Person> people = peopleIn(job);
    for (const Kept& kept : job.entries) {
      const std::string said = say(describe(kept.entry, job, people), plain);
      EXPECT_THAT(said, testing::Not(HasSubstr("%")));
      Spelled spelled{{}, people, job};
      std::visit([&]<class T>(const T& body) { T::fields(body, spelled); }, kept.entry.body);
      for (const auto& [key, value] : spelled.out) {
        const std::string field = std::string(kindOf(kept.entry.body)) + "." + key;
        if (said.find(value) != std::string::npos) continue;
        leftOut.insert(field);
        EXPECT_TRUE(kNotSaid.contains(field)) << field << " “" << value << "” is not in: " << said;
      }
      seen.in("described", kept.entry.body);
    }
  }
  EXPECT_EQ(leftOut, kNotSaid);
  EXPECT_THAT(seen.missing("described"), IsEmpty());
}

TEST(EveryKindInWords, SaysEachWordOfAListOtherwise) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  Entry entry = *bench.job().last();
  std::set<std::string> sentences;
  for (const Known known : {Known::Clicked, Known::Read, Known::Instrument}) {
    Tightened body = clicked("s5", "1");
    body.known = known;
    entry.body = body;
    sentences.insert(say(describe(entry, bench.job(), {}), plain));
  }
  for (const Manner manner : {Manner::Watched, Manner::Independent, Manner::Self}) {
    Witnessed body = marksSeen();
    body.manner = manner;
    entry.body = body;
    sentences.insert(say(describe(entry, bench.job(), {}), plain));
  }
  for (const Stop stop : {Stop::Dropped, Stop::Quarantined, Stop::Retired}) {
    ToolStopped body;
    body.why.value = stop;
    entry.body = body;
    sentences.insert(say(describe(entry, bench.job(), {}), plain));
  }
  for (const Absence absence : {Absence::NotApplicable, Absence::NotRecorded}) {
    entry.body = LeftBlank{"s1", absence, "x", ""};
    sentences.insert(say(describe(entry, bench.job(), {}), plain));
  }
  for (const auto reason : {Reason::NewWork, Reason::Warranty, Reason::Comeback, Reason::RetorqueDue}) {
    JobStarted body;
    body.reason = reason;
    entry.body = body;
    sentences.insert(say(describe(entry, bench.job(), {}), plain));
  }
  EXPECT_EQ(sentences.size(), 15u);
}

TEST(EveryKindInWords, SaysTheWrenchThatASecondPersonSawWithoutItsSetting) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s5"), "");
  Witnessed body = marksSeen();
  body.tool = "T-07";
  ASSERT_THAT(bench.say("otto", body), IsOk());
  EXPECT_THAT(say(describe(*bench.job().last(), bench.job(), {}), plain), HasSubstr("T-07"));
}

std::string allText(const Document& document) {
  std::string out;
  for (const std::string& line : lines(document)) out += line + "\n";
  return out;
}

TEST(EveryKindOnPaper, StandsInContentTableAndDocument) {
  KindsSeen seen;
  for (const Job& job : everyKindJobs()) {
    RecordContent content;
    if (job.calledOff) {
      content = contentOf(job, {}, "Test shop", plain);
    } else {
      const std::string sealed = need(sealRecord(job, Bench().context(), steadyKey()));
      content = contentOf(need(readRecord(sealed)), {}, plain);
    }
    ASSERT_EQ(content.entries.size(), job.entries.size());
    const std::string csv = csvOfTightenings(content);
    const Document document = recordDocument(content, plain);
    const std::string paper = allText(document);
    for (std::size_t i = 0; i < job.entries.size(); ++i) {
      const Kept& kept = job.entries[i];
      const EntryLine& line = content.entries[i];
      EXPECT_EQ(line.hash, hex(kept.hash));
      EXPECT_EQ(line.what, say(describe(kept.entry, job, peopleIn(job)), plain));
      seen.in("content", kept.entry.body);
      EXPECT_THAT(paper, HasSubstr(line.what)) << kindOf(kept.entry.body);
      seen.in("document", kept.entry.body);
      const auto* corrected = std::get_if<Corrected>(&kept.entry.body);
      const Body& of = corrected != nullptr ? job.kept(corrected->of).entry.body : kept.entry.body;
      EXPECT_EQ(csv.find(line.hash) != std::string::npos, std::holds_alternative<Tightened>(of))
          << kindOf(kept.entry.body);
      seen.in("table", kept.entry.body);
    }
    for (const Person& person : peopleIn(job))
      EXPECT_THAT(content.people, testing::Contains(testing::Field(&PersonLine::sign, person.sign)));
  }
  EXPECT_THAT(seen.missing("content"), IsEmpty());
  EXPECT_THAT(seen.missing("document"), IsEmpty());
  EXPECT_THAT(seen.missing("table"), IsEmpty());
}

}  // namespace
}  // namespace cw
