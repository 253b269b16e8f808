#include "core/report/content.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/report/describe.h"
#include "core/report/joint_content.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

RecordContent sealedContent(Script& job, std::vector<Addendum> addenda = {}) {
  EXPECT_EQ(job.refusal(), "");
  const auto record = readRecord(sealedBytes(job));
  EXPECT_TRUE(record.has_value());
  return contentOf(*record, addenda, plain);
}

RecordContent plainContent() {
  Script job = ringJob(4);
  return sealedContent(job);
}

const ExceptionGroup* groupOf(const RecordContent& content, ExceptionKind kind) {
  for (const ExceptionGroup& group : content.exceptions)
    if (group.kind == kind) return &group;
  return nullptr;
}

/// Entries named by a group of exceptions.
std::vector<int> entriesOf(const RecordContent& content, ExceptionKind kind) {
  std::vector<int> out;
  if (const ExceptionGroup* group = groupOf(content, kind))
    for (const ExceptionLine& line : group->lines) out.push_back(line.entry);
  return out;
}

TEST(RecordContent, StatesNoAngleThatNobodyEntered) {
  Sheet sheet = sampleSheet();
  sheet.specifications[0].method = Method::TorqueAndAngle;
  sheet.specifications[0].angle = StatedAngle{"77", &kDegree};
  Script job(sheet);
  const auto joints = jointsOf(job.bench().job(), {}, plain);
  ASSERT_EQ(joints.size(), 1u);
  EXPECT_THAT(joints[0].interpretation, Not(HasSubstr("77")));
  EXPECT_THAT(joints[0].interpretation, HasSubstr("which was not recorded"));
}

TEST(RecordContent, SaysWhatJobItIsAbout) {
  const RecordContent content = plainContent();
  EXPECT_EQ(content.workOrder, "WO 1");
  EXPECT_EQ(content.machine, "P-1");
  EXPECT_EQ(content.sheetTitle, "Close the test cover");
  EXPECT_EQ(content.notice, "Invented data, not for use.");
  EXPECT_THAT(content.sources, ElementsAre("Test manual, page 12, revision 3"));
  EXPECT_EQ(content.keyId, keyId(publicOf(steadyKey())));
  EXPECT_EQ(content.entries.back().hash, content.head);
}

TEST(RecordContent, OfAnUneventfulJobHasNoException) {
  const RecordContent content = plainContent();
  EXPECT_THAT(content.exceptions, IsEmpty());
  EXPECT_EQ(content.outcome, "Complete as the sheet says");
}

TEST(RecordContent, StatesEachSpecificationOfAJointWithSeveral) {
  Sheet sheet = sampleSheet();
  Specification light = sheet.specifications.front();
  light.id = "light", light.printed = "50-56 in. lbs.", light.condition = "oiled",
  light.why = "Smaller screw.";
  light.low = inLbf("50"), light.aim = inLbf("53"), light.high = inLbf("56"), light.toleranceStated = false;
  sheet.specifications.push_back(light);
  sheet.joints.front().positions["4"].specification = "light";
  Bench bench(sheet);
  ASSERT_TRUE(bench.start());
  const JointContent joint = jointsOf(bench.job(), bench.people(), plain).front();
  EXPECT_TRUE(joint.differs);
  EXPECT_FALSE(joint.toleranceStated);
  EXPECT_THAT(joint.printed, testing::AllOf(HasSubstr("60-70 in. lbs."), HasSubstr("50-56 in. lbs.")));
  EXPECT_THAT(joint.condition, testing::AllOf(HasSubstr("dry"), HasSubstr("oiled")));
  EXPECT_THAT(joint.interpretation, testing::AllOf(HasSubstr("Smaller screw."), HasSubstr("is assumed")));
}

TEST(RecordContent, OfATrialVersionSaysThatItsRulesAreNotChecked) {
  std::ifstream in(std::string(CW_TEST_DATA) + "/record/full.json", std::ios::binary);
  const std::string bytes(std::istreambuf_iterator<char>(in), {});
  const auto record = readRecord(bytes);
  ASSERT_TRUE(record.has_value());
  const RecordContent content = contentOf(*record, {}, plain);
  EXPECT_TRUE(content.trial);
  EXPECT_THAT(content.notice, HasSubstr("Sealed by a trial version; its rules are not checked."));
  EXPECT_EQ(content.outcome, "Sealed by a trial version; its rules are not checked");
  EXPECT_EQ(content.sealedBy, "");
  EXPECT_EQ(content.joints.front().lines.size(), 4u);
  EXPECT_THAT(content.people, Contains(testing::Field(&PersonLine::name, "Mira Sol")));
  for (const EntryLine& line : content.entries) EXPECT_THAT(line.what, Not(HasSubstr("%")));
}

TEST(RecordContent, EveryEntryHasItsSentenceAndItsPlace) {
  const RecordContent content = plainContent();
  int sequence = 0;
  for (const EntryLine& line : content.entries) {
    EXPECT_EQ(line.sequence, ++sequence);
    EXPECT_THAT(line.what, Not(IsEmpty()));
    EXPECT_THAT(line.what, Not(HasSubstr("%"))) << "a place was left unfilled";
    EXPECT_EQ(line.hash.size(), 64u);
  }
}

TEST(RecordContent, NamesPeopleWithRolesAndWhatTheyDid) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  ASSERT_EQ(content.people.size(), 3u);
  EXPECT_EQ(content.people[0].name, "Mira Sol");
  EXPECT_THAT(content.people[0].roles, ElementsAre("technician"));
  EXPECT_THAT(content.people[0].part, ElementsAre("did the work", "finished the job"));
  EXPECT_EQ(content.people[1].name, "Lena Fjord");
  EXPECT_THAT(content.people[1].part, ElementsAre("gave a word as lead"));
  EXPECT_EQ(content.people[2].name, "Otto Brand");
  EXPECT_THAT(content.people[2].part, ElementsAre("second person"));
}

TEST(RecordContent, ToolsStandAsTheyWereWhenUsed) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  ASSERT_EQ(content.tools.size(), 2u);
  EXPECT_EQ(content.tools[0].tool.id, "T-07");
  EXPECT_EQ(content.tools[0].tool.lastCalibration()->certificate, "C-1");
  EXPECT_EQ(content.tools[0].standing, "in date on 2026-03-04");
  EXPECT_EQ(content.tools[0].settings.size(), 2u);
  EXPECT_THAT(content.tools[1].standing, HasSubstr("its calibration ran out on 2026-02-01; allowed by Lena"));
}

TEST(RecordContent, PartsSayWhatWasUsed) {
  const RecordContent content = plainContent();
  ASSERT_EQ(content.parts.size(), 2u);
  EXPECT_EQ(content.parts[0].used, "Done, with a new part: Cover gasket.");
  EXPECT_EQ(content.parts[1].used, "Applied: Thread compound. Batch B-77. Good until 2026-12-31.");
}

TEST(RecordContent, EachExceptionNamesItsEntry) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  EXPECT_THAT(entriesOf(content, ExceptionKind::OutOfTolerance), ElementsAre(6, entries.outside));
  EXPECT_THAT(entriesOf(content, ExceptionKind::Deviation), ElementsAre(entries.deviation));
  EXPECT_THAT(entriesOf(content, ExceptionKind::ToolOverride), ElementsAre(entries.override));
  EXPECT_THAT(entriesOf(content, ExceptionKind::Disagreement), ElementsAre(entries.disagreement));
  EXPECT_THAT(entriesOf(content, ExceptionKind::TakenApart), ElementsAre(entries.apart));
  EXPECT_THAT(entriesOf(content, ExceptionKind::Correction), ElementsAre(entries.correction));
  EXPECT_THAT(entriesOf(content, ExceptionKind::SetAside), ElementsAre(3));
  EXPECT_THAT(entriesOf(content, ExceptionKind::AnsweredNo), ElementsAre(4));
  EXPECT_THAT(content.outcome, testing::StartsWith("Not complete: no second person looked at step 6, with "));
}

TEST(RecordContent, ExceptionsComeGravestFirst) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  ASSERT_GT(content.exceptions.size(), 5u);
  EXPECT_TRUE(std::is_sorted(content.exceptions.begin(), content.exceptions.end(),
                             [](const auto& a, const auto& b) { return a.kind < b.kind; }));
}

TEST(RecordContent, ACorrectionStandsBesideWhatItCorrects) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  const auto& lines = content.joints.at(0).lines;
  const auto old = std::find_if(lines.begin(), lines.end(),
                                [&](const TighteningLine& line) { return line.entry == entries.wrong; });
  ASSERT_NE(old, lines.end());
  EXPECT_EQ(old->correctedBy, entries.correction);
  EXPECT_EQ(old->reading->digits, "64");
  EXPECT_EQ((old + 1)->corrects, entries.wrong);
  EXPECT_EQ((old + 1)->reading->digits, "67");
  const ExceptionGroup* group = groupOf(content, ExceptionKind::Correction);
  ASSERT_NE(group, nullptr);
  EXPECT_THAT(group->lines.front().text, testing::AllOf(HasSubstr("64"), HasSubstr("67")));
}

TEST(RecordContent, WhatWasTakenApartIsOvertakenAndCountedOnce) {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  const RecordContent content = sealedContent(job);
  const JointContent& joint = content.joints.at(0);
  EXPECT_EQ(joint.done, 4u);
  EXPECT_EQ(joint.lines.size(), 10u);  // 5 pulls and a correction, then 4 again
  EXPECT_EQ(std::count_if(joint.lines.begin(), joint.lines.end(), [](const auto& l) { return l.holds(); }),
            4);
  for (const DrawnPosition& position : joint.drawing.positions)
    EXPECT_EQ(position.state, PositionState::Redone) << position.label;
}

TEST(RecordContent, PullsFasterThanAWrenchCanBeMovedAreOneLine) {
  Bench bench;  // its clock moves by a second an entry
  ASSERT_EQ(bench.workThrough(""), "");
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", plain);
  const ExceptionGroup* group = groupOf(content, ExceptionKind::ShortGap);
  ASSERT_NE(group, nullptr);
  ASSERT_EQ(group->lines.size(), 1u);
  EXPECT_THAT(group->lines[0].text, HasSubstr("4 positions signed within 3 s"));
}

TEST(RecordContent, LateEntriesAreOneLineARun) {
  Bench bench;
  ASSERT_TRUE(bench.start());
  for (Body body : {Body(WarningsRead{"s1"}), Body(ActDone{"s1", true, "", ""}),
                    Body(CheckMade{"s2", Answer::Yes, ""})}) {
    Draft late = bench.draftOf("mira", body);
    late.done = *parseRfc3339("2026-03-04T07:30:00+01:00");
    const auto said = bench.say(late);
    ASSERT_TRUE(said) << sentence(said.error());
  }
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", plain);
  const ExceptionGroup* group = groupOf(content, ExceptionKind::LateEntry);
  ASSERT_NE(group, nullptr);
  ASSERT_EQ(group->lines.size(), 1u);
  EXPECT_THAT(group->lines[0].text, HasSubstr("Entries 2–4: done from 2026-03-04 07:30:00 +01:00"));
}

TEST(RecordContent, ARunningJobIsMarkedNotSealed) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s3"), "");
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", plain);
  EXPECT_FALSE(content.sealed);
  EXPECT_EQ(content.outcome, "In progress, not sealed");
  EXPECT_EQ(content.keyId, "");
}

TEST(RecordContent, CarriesItsAddenda) {
  Script job = ringJob(4);
  const Moment then = *parseRfc3339("2026-04-01T09:00:00+02:00");
  const RecordContent content = sealedContent(job, {{1, "wim", "Wim Post", then, "The serial is 4711."}});
  ASSERT_EQ(content.addenda.size(), 1u);
  EXPECT_EQ(content.addenda[0].text, "The serial is 4711.");
}

TEST(RecordContent, IsSaidInTheWordingGiven) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  const Wording german = [](const Message& message) {
    return message.text == "Checked: yes." ? std::string("Geprüft: ja.") : plain(message);
  };
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", german);
  EXPECT_EQ(content.entries.back().what, "Geprüft: ja.");
}

TEST(JointDrawing, FitsItsFrameAndFollowsTheOrder) {
  const JointDrawing drawing = drawingOf(sampleSheet().joints.front());
  EXPECT_EQ(drawing.positions.size(), 4u);
  EXPECT_EQ(drawing.positions[2].order, 2);  // order 1 3 2 4
  for (const DrawnPosition& position : drawing.positions) {
    EXPECT_LE(std::abs(position.at.x) + drawing.radius, 1.0);
    EXPECT_LE(std::abs(position.at.y) + drawing.radius, 1.0);
  }
  EXPECT_LT(drawing.positions[0].at.y, -0.5);  // position 1 is at twelve o'clock, y runs down
}

TEST(JointDrawing, MarksOfNeighboursDoNotTouch) {
  Script job = ringJob(40);
  const JointDrawing drawing = drawingOf(job.bench().job(), 4);
  for (const DrawnPosition& a : drawing.positions)
    for (const DrawnPosition& b : drawing.positions)
      if (a.label != b.label) {
        EXPECT_GT(std::hypot(a.at.x - b.at.x, a.at.y - b.at.y), 2 * drawing.radius);
      }
}

TEST(JointDrawing, ShowsWhereTheJobIs) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                     toolSet("s5", "T-07", inLbf("65"))})
    ASSERT_TRUE(bench.say(body));
  ASSERT_TRUE(bench.say("otto", SignedIn{}));
  ASSERT_TRUE(bench.say("otto", settingSeen("T-07", inLbf("65"))));
  Tightened pulled;
  pulled.step = "s5", pulled.position = "1";
  ASSERT_TRUE(bench.say(pulled));
  const JointDrawing drawing = drawingOf(bench.job(), 4);
  EXPECT_EQ(drawing.positions[0].state, PositionState::Done);
  EXPECT_EQ(drawing.positions[1].state, PositionState::ToDo);
  EXPECT_EQ(drawing.positions[2].state, PositionState::Now);  // 3 follows 1
}

}  // namespace
}  // namespace cw
