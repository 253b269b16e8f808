#include "core/procedure/quick_joint.h"

#include "core/procedure/printed_torque.h"
#include "core/procedure/sheet_file.h"
#include "core/units/format.h"
#include "tests/support/matchers.h"
#include "tests/support/quick_joint.h"

namespace cw {
namespace {

using test::quickCover;
using test::quickSheetOf;

const std::string kPng = std::string("\x89PNG\r\n\x1A\n", 8) + std::string(1000, '\0') + "end";

std::string reading(const std::string& printed) {
  const PrintedTorque read = readPrinted(printed);
  const auto part = [](const std::optional<StatedTorque>& torque) {
    return torque ? codeText(*torque) : std::string("-");
  };
  return part(read.low) + " | " + part(read.aim) + " | " + part(read.high) +
         (read.toleranceStated ? " stated" : "");
}

TEST(PrintedTorque, IsProposedAsFarAsTheSourceSaysIt) {
  EXPECT_EQ(reading("60-70 in. lbs."), "60 lbf.in | 65 lbf.in | 70 lbf.in stated");
  EXPECT_EQ(reading("20 ± 2 N·m"), "18 N.m | 20 N.m | 22 N.m stated");
  EXPECT_EQ(reading("60 in-lb"), "54 lbf.in | 60 lbf.in | 66 lbf.in");
  EXPECT_EQ(reading("not over 40 ft-lb"), "- | - | 40 lbf.ft");
  EXPECT_EQ(reading("at least 5 Nm"), "5 N.m | - | -");
  EXPECT_EQ(reading("35 lbs"), "- | - | -");
  EXPECT_EQ(reading("securely"), "- | - | -");
  EXPECT_EQ(reading("60 in-lb (7 Nm)"), "- | - | -");  // two columns, no range
  EXPECT_EQ(reading(""), "- | - | -");
}

TEST(QuickJoint, IsASheetOfOneJointThatReadsBack) {
  const Sheet sheet = quickSheetOf();
  EXPECT_EQ(sheet, test::need(readSheet(writeSheet(sheet))));
  EXPECT_THAT(sheet.joints.front().order, testing::SizeIs(6));
  EXPECT_EQ(sheet.joints.front().rule, "star");
  EXPECT_THAT(checkQuickSheet(sheet), IsOk());
}

TEST(QuickJoint, WithoutNameOrSourceIsRefused) {
  QuickJoint joint = quickCover();
  joint.name = "";
  EXPECT_THAT(quickSheet(joint, Id()), FailsWith(ErrorCode::InvalidInput));
  joint = quickCover();
  joint.source.document = "";
  EXPECT_THAT(quickSheet(joint, Id()), FailsWith(ErrorCode::InvalidInput));
  joint = quickCover();
  joint.source.page = "";
  EXPECT_THAT(judgeQuickSheet(quickSheetOf(joint), shippedCatalogue()), FailsWith(ErrorCode::NotPermitted));
}

TEST(QuickJoint, IsJudgedByTheGuard) {
  EXPECT_EQ(test::need(judgeQuickSheet(quickSheetOf(), shippedCatalogue())).verdict, Verdict::InBand);
  const auto swapped = test::need(judgeQuickSheet(quickSheetOf(test::swappedCover()), shippedCatalogue()));
  EXPECT_EQ(swapped.verdict, Verdict::BelowBand);
  EXPECT_TRUE(swapped.blocks());
  ASSERT_THAT(swapped.findings, testing::SizeIs(1));
  EXPECT_THAT(sentence(swapped.findings.front()), testing::HasSubstr("did you mean"));
  QuickJoint plug = quickCover();
  plug.fastener.ungrounded = Ungrounded::Plug;
  const auto unjudged = test::need(judgeQuickSheet(quickSheetOf(plug), shippedCatalogue()));
  EXPECT_EQ(unjudged.verdict, Verdict::NotJudged);
  EXPECT_FALSE(unjudged.blocks());
}

TEST(QuickJoint, WithAnUnknownNameOrAValueThatIsNotPrintedIsRefusedOutright) {
  QuickJoint joint = quickCover();
  joint.fastener.grade = "88";
  EXPECT_THAT(judgeQuickSheet(quickSheetOf(joint), shippedCatalogue()), FailsWith(ErrorCode::NotPermitted));
  joint = quickCover();
  joint.specification.printed = "31 Nm";
  EXPECT_THAT(judgeQuickSheet(quickSheetOf(joint), shippedCatalogue()), FailsWith(ErrorCode::NotPermitted));
}

TEST(QuickJoint, WithAToleranceAsPrintedIsNotTakenForASecondTorque) {
  QuickJoint joint = quickCover();
  joint.specification.printed = "21 ± 2 Nm";
  EXPECT_THAT(judgeQuickSheet(quickSheetOf(joint), shippedCatalogue()), IsOk());
}

TEST(QuickJoint, MayNotHoldMoreThanOneJoint) {
  EXPECT_THAT(checkQuickSheet(test::sampleSheet()), FailsWith(ErrorCode::InvalidInput));
  Sheet twice = quickSheetOf();
  twice.steps.push_back(twice.steps.front());
  EXPECT_THAT(checkQuickSheet(twice), FailsWith(ErrorCode::InvalidInput));
}

TEST(QuickJoint, BecomesADraftByAnotherAuthor) {
  const Sheet draft = draftFromQuickSheet(quickSheetOf(), "tilda");
  EXPECT_EQ(draft.id, quickSheetOf().id);
  EXPECT_EQ(draft.revision, "A");
  EXPECT_EQ(draft.author, "tilda");
  EXPECT_EQ(draft.specifications.front().interpretedBy, "mira");
}

TEST(Photograph, TravelsInTheSheetByteForByte) {
  QuickJoint joint = quickCover();
  joint.source.photograph = test::need(photograph("page 41.png", kPng));
  const Sheet again = test::need(readSheet(writeSheet(quickSheetOf(joint))));
  ASSERT_TRUE(again.sources.front().photograph);
  EXPECT_EQ(again.sources.front().photograph->bytes, kPng);
}

TEST(Photograph, ThatWasAlteredIsNoticed) {
  QuickJoint joint = quickCover();
  joint.source.photograph = test::need(photograph("page 41.png", kPng));
  std::string text = writeSheet(quickSheetOf(joint));
  const auto at = text.find("AAAA");
  ASSERT_NE(at, std::string::npos);
  text[at] = 'B';
  const auto read = readSheet(text);
  ASSERT_FALSE(read);
  EXPECT_EQ(read.error().place, "sources[0].photograph.sha256");
}

TEST(Photograph, IsAPictureOfLimitedSize) {
  EXPECT_THAT(photograph("notes.txt", "60 in-lb"), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(photograph("", ""), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(photograph("big.jpg", "\xFF\xD8\xFF" + std::string(kMostPhotographBytes, 'x')),
              FailsWith(ErrorCode::OutOfRange));
}

}  // namespace
}  // namespace cw
