#include "core/store/sheets.h"

#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::SampleShop;
using testing::HasSubstr;

/// Revision B of the sample sheet, and the deeds of the people it needs.
class SheetsTest : public testing::Test {
 protected:
  SheetsTest() : m_sheet(test::sampleSheet()) { m_sheet.revision = "B"; }

  Sheets& sheets() { return m_shop->sheets(); }
  Deed by(const std::string& sign) { return {sign, m_shop.clock().now()}; }
  std::string bytes() const { return writeSheet(m_sheet); }
  SheetStatus status(const std::string& revision) { return need(sheets().find(m_sheet.id, revision)).status; }
  void submitB() {
    need(sheets().saveDraft(bytes(), by("tilda")));
    need(sheets().submit(m_sheet.id, "B", by("tilda")));
  }

  SampleShop m_shop;
  Sheet m_sheet;
};

TEST_F(SheetsTest, KeepTheExactBytes) {
  std::string odd = bytes();
  odd.insert(1, "\n\t  \r\n");
  const SheetRow row = need(sheets().saveDraft(odd, by("tilda")));
  EXPECT_EQ(need(sheets().bytes(row.digest)), odd);
  EXPECT_EQ(row.digest, hex(sha256(odd)));
}

TEST_F(SheetsTest, TakeNoTextThatTurnsRoundOrSteersAScreen) {
  m_sheet.steps[0].warnings = {"Hot\u202e oil."};
  const auto refused = sheets().saveDraft(bytes(), by("tilda"));
  EXPECT_THAT(refused,
              FailsWith(ErrorCode::InvalidInput, testing::HasSubstr("steps[0].warnings[0]: there is")));
  EXPECT_THAT(sheets().find(m_sheet.id, "B"), FailsWith(ErrorCode::NotFound));
}

TEST_F(SheetsTest, ADraftIsSavedOverAndOver) {
  need(sheets().saveDraft(bytes(), by("tilda")));
  m_sheet.title = "Close the cover, better";
  const SheetRow row = need(sheets().saveDraft(bytes(), by("tilda")));
  EXPECT_EQ(need(sheets().find(m_sheet.id, "B")).title, "Close the cover, better");
  EXPECT_EQ(need(sheets().bytes(row.digest)), bytes());
  EXPECT_EQ(need(sheets().saveDraft(bytes(), by("tilda"))).digest, row.digest) << "the same bytes again";
  EXPECT_EQ(need(sheets().history(m_sheet.id, "B")).size(), 2u);
}

TEST_F(SheetsTest, IssuingSupersedesTheOneBefore) {
  submitB();
  need(sheets().issue(m_sheet.id, "B", by("lena")));
  EXPECT_EQ(status("A"), SheetStatus::Superseded);
  EXPECT_EQ(status("B"), SheetStatus::Issued);
  EXPECT_EQ(need(sheets().issued(m_sheet.id)).revision, "B");
  EXPECT_EQ(need(sheets().find(m_sheet.id, "B")).independent, true);
}

TEST_F(SheetsTest, AnIssuedRevisionDoesNotChange) {
  m_sheet.revision = "A";
  m_sheet.title = "Another title";
  EXPECT_THAT(sheets().saveDraft(bytes(), by("tilda")),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("give the changed sheet a new revision")));
  EXPECT_THAT(sheets().deleteDraft(m_sheet.id, "A"), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(sheets().submit(m_sheet.id, "A", by("tilda")), FailsWith(ErrorCode::OutOfTurn));
}

TEST_F(SheetsTest, NobodyIssuesTheirOwnWork) {
  submitB();
  EXPECT_THAT(sheets().issue(m_sheet.id, "B", by("tilda")),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("had a hand")));
  EXPECT_THAT(sheets().issue(m_sheet.id, "B", by("mira")), FailsWith(ErrorCode::NotPermitted));
  EXPECT_EQ(status("B"), SheetStatus::InReview);
  EXPECT_EQ(status("A"), SheetStatus::Issued);
}

TEST_F(SheetsTest, WhoSubmittedItHadAHand) {
  need(sheets().saveDraft(bytes(), by("tilda")));
  need(sheets().submit(m_sheet.id, "B", by("lena")));
  EXPECT_THAT(sheets().issue(m_sheet.id, "B", by("lena")), FailsWith(ErrorCode::NotPermitted));
}

TEST_F(SheetsTest, WhoSentItBackMayIssueItLater) {
  submitB();
  need(sheets().sendBack(m_sheet.id, "B", by("lena")));
  m_sheet.title = "Close the cover, better";
  submitB();
  EXPECT_THAT(sheets().issue(m_sheet.id, "B", by("lena")), IsOk());
}

TEST_F(SheetsTest, AShopOfOneIssuesItsOwnMarkedSo) {
  submitB();
  for (Person person : test::shopPeople()) {
    person.active = person.sign == "tilda";
    need(m_shop->people().change(person));
  }
  need(sheets().issue(m_sheet.id, "B", by("tilda")));
  EXPECT_EQ(need(sheets().find(m_sheet.id, "B")).independent, false);
}

TEST_F(SheetsTest, GoOneWayOnly) {
  need(sheets().saveDraft(bytes(), by("tilda")));
  EXPECT_THAT(sheets().issue(m_sheet.id, "B", by("lena")),
              FailsWith(ErrorCode::OutOfTurn, HasSubstr("draft")));
  EXPECT_EQ(status("A"), SheetStatus::Issued) << "nothing was superseded";
  EXPECT_THAT(sheets().withdraw(m_sheet.id, "B", by("lena")), FailsWith(ErrorCode::OutOfTurn));
  need(sheets().withdraw(m_sheet.id, "A", by("lena")));
  EXPECT_THAT(sheets().issued(m_sheet.id), FailsWith(ErrorCode::NotFound));
}

TEST_F(SheetsTest, ADraftCanBeDeleted) {
  const SheetRow row = need(sheets().saveDraft(bytes(), by("tilda")));
  need(sheets().deleteDraft(m_sheet.id, "B"));
  EXPECT_THAT(sheets().find(m_sheet.id, "B"), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(sheets().bytes(row.digest), FailsWith(ErrorCode::NotFound));
}

TEST_F(SheetsTest, OnlyTrainersAndLeadsWriteThem) {
  EXPECT_THAT(sheets().saveDraft(bytes(), by("mira")), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(sheets().saveDraft("{", by("tilda")), FailsWith(ErrorCode::InvalidInput));
}

TEST_F(SheetsTest, AreListedWithTheirStatus) {
  submitB();
  const auto rows = need(sheets().all());
  ASSERT_EQ(rows.size(), 2u);
  EXPECT_EQ(rows[0].revision, "A");
  EXPECT_EQ(wordOf(rows[0].status), "issued");
  EXPECT_EQ(wordOf(rows[1].status), "in-review");
}

TEST_F(SheetsTest, RememberWhoDidWhatWhen) {
  submitB();
  const auto events = need(sheets().history(m_sheet.id, "B"));
  ASSERT_EQ(events.size(), 2u);
  EXPECT_EQ(events[0].status, SheetStatus::Draft);
  EXPECT_EQ(events[1].status, SheetStatus::InReview);
  EXPECT_EQ(events[1].deed.by, "tilda");
  EXPECT_LT(events[0].deed.at, events[1].deed.at);
}

}  // namespace
}  // namespace cw
