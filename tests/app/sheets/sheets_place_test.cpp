#include "app/sheets/sheets_place.h"

#include "core/procedure/sheet_file.h"
#include "tests/app/desk_test.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class SheetsDesk : public DeskTest {
 protected:
  /// The sample's next revision as a file.
  QString fileOf(const std::string& revision) {
    Sheet sheet = test::sampleSheet();
    sheet.revision = revision;
    const std::string path = (sample.folder() / ("sheet-" + revision + ".json")).string();
    test::need(writeFile(path, writeSheet(sheet)));
    return toQt(path);
  }
  SheetStatus statusOf(const std::string& revision) {
    return test::need(workspace.shop().sheets().find(test::sampleSheet().id, revision)).status;
  }
};

TEST_F(SheetsDesk, ShowWhatIsPrintedBesideWhatWasMadeOfIt) {
  open();
  const SheetsPlace place(workspace, navigator);
  EXPECT_THAT(text(*place.page()).toStdString(),
              AllOf(HasSubstr("60-70 in. lbs."), HasSubstr("65\u202fin·lbf, allowed 60–70\u202fin·lbf"),
                    HasSubstr("WARNING: Parts move"), HasSubstr("Test manual, page 12"),
                    HasSubstr("Review against this shop")));
}

TEST_F(SheetsDesk, OpenASpecificationInFigures) {
  open();
  const SheetsPlace place(workspace, navigator);
  std::string printed, thread;
  QObject::connect(&navigator, &Navigator::figuresWanted,
                   [&](const Specification& specification, const Fastener& fastener) {
                     printed = specification.printed;
                     thread = fastener.thread;
                   });
  press(place, "figuresButton");
  EXPECT_EQ(printed, "60-70 in. lbs.");
  EXPECT_EQ(thread, "1/4-20 UNC");
}

TEST_F(SheetsDesk, GoFromFileToIssueByTwoPeople) {
  open();
  SheetsPlace place(workspace, navigator);
  place.importFrom(fileOf("B"));
  sign(place, QStringLiteral("tilda"), pin);
  ASSERT_EQ(rows(*place.page()), 2);
  place.page()->choose(1);
  press(place, "submitButton");
  sign(place, QStringLiteral("tilda"), pin);
  EXPECT_EQ(statusOf("B"), SheetStatus::InReview);
  press(place, "issueButton");
  sign(place, QStringLiteral("tilda"), pin);
  EXPECT_FALSE(said(place, "signSaid").isEmpty()) << "the author may not issue it";
  EXPECT_EQ(statusOf("B"), SheetStatus::InReview);
  sign(place, QStringLiteral("lena"), pin);
  EXPECT_EQ(statusOf("B"), SheetStatus::Issued);
  EXPECT_EQ(statusOf("A"), SheetStatus::Superseded);
}

TEST_F(SheetsDesk, RefuseAFileThatIsNoSheetInOneSentence) {
  open();
  SheetsPlace place(workspace, navigator);
  const std::string path = (sample.folder() / "bad.json").string();
  test::need(writeFile(path, "{\"format\":\"clampwright.sheet\""));
  place.importFrom(toQt(path));
  EXPECT_FALSE(said(place).isEmpty());
  EXPECT_EQ(rows(*place.page()), 1);
}

TEST_F(SheetsDesk, GoToPaperWithRoomToWrite) {
  open();
  SheetsPlace place(workspace, navigator);
  const std::string path = (sample.folder() / "sheet.pdf").string();
  place.savePdf({path, PageSize::A4});
  EXPECT_EQ(test::need(readFile(path)).substr(0, 5), "%PDF-");
  place.savePdf({"/no/such/folder/sheet.pdf", PageSize::A4});
  EXPECT_TRUE(said(place).contains(QLatin1String("/no/such/folder/sheet.pdf")));
}

TEST_F(SheetsDesk, CanBeLookedAt) {
  open();
  SheetsPlace place(workspace, navigator);
  showAll(place, QStringLiteral("sheets"));
}

}  // namespace
}  // namespace cw
