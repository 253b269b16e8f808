#include "app/records/records_place.h"

#include "tests/app/desk_test.h"
#include "tests/support/quick_job.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

class Records : public DeskTest {
 protected:
  Id finished() {
    const Id job = sample.startJob();
    EXPECT_EQ(sample.work(job), "");
    return job;
  }
  Id sealed() {
    const Id job = finished();
    test::need(sample->records().seal(job, sample.key(), "test"));
    return job;
  }
};

TEST_F(Records, SaysWhatToDoWhenThereIsNone) {
  open();
  const RecordsPlace place(workspace, navigator);
  EXPECT_THAT(said(place, "deskNothing").toStdString(), HasSubstr("Do one at the bench"));
}

TEST_F(Records, SaysThatNoShopIsOpen) {
  const RecordsPlace place(workspace, navigator);
  EXPECT_THAT(said(place, "deskNothing").toStdString(), HasSubstr("No shop file is open"));
}

TEST_F(Records, ListsFinishedJobsAndNotThoseInProgress) {
  sealed();
  sample.startJob();
  open();
  const RecordsPlace place(workspace, navigator);
  EXPECT_EQ(rows(*place.page()), 1);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("WO 1"));
}

TEST_F(Records, AreFoundByBeginningsOfWords) {
  sealed();
  open();
  const RecordsPlace place(workspace, navigator);
  place.page()->search()->setText(QStringLiteral("test cov"));
  EXPECT_EQ(rows(*place.page()), 1);
  place.page()->search()->setText(QStringLiteral("flange"));
  EXPECT_EQ(rows(*place.page()), 0);
  EXPECT_THAT(said(place, "deskNothing").toStdString(), StartsWith("Nothing fits"));
}

TEST_F(Records, AreFoundByTheToolThatIsNamedInThem) {
  sealed();
  open();
  const RecordsPlace place(workspace, navigator);
  auto& named = child<QComboBox>(place, "namedChoice");
  const auto chooseTool = [&](const QString& id) {
    named.setCurrentIndex(named.findData(QStringList{QStringLiteral("tool"), id}));
    emit named.activated(named.currentIndex());
  };
  chooseTool(QStringLiteral("T-07"));
  EXPECT_EQ(rows(*place.page()), 1);
  chooseTool(QStringLiteral("T-08"));
  EXPECT_EQ(rows(*place.page()), 0);
}

TEST_F(Records, ShowTheJobThatIsWanted) {
  sealed();
  const Id second = sealed();
  open();
  const RecordsPlace place(workspace, navigator);
  place.page()->search()->setText(QStringLiteral("nothing"));
  navigator.openRecord(second);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr(second.text()));
}

TEST_F(Records, AreSealedHereIfTheBenchDidNot) {
  finished();
  open();
  const RecordsPlace place(workspace, navigator);
  ASSERT_TRUE(offers(place, "sealButton"));
  EXPECT_FALSE(offers(place, "verifyButton"));
  press(place, "sealButton");
  EXPECT_THAT(said(place).toStdString(), StartsWith("Sealed."));
  EXPECT_FALSE(offers(place, "sealButton"));
  press(place, "verifyButton");
  EXPECT_THAT(said(place).toStdString(), StartsWith("Yes. All "));
}

TEST_F(Records, NameTheFirstBadEntryOfAnAlteredOne) {
  const Id job = sealed();
  open();
  const JobRow row = test::need(workspace.shop().findJobs({})).front();
  KeptRecord kept = test::need(keptRecord(workspace, row));
  const std::size_t at = kept.record.find("\"position\":\"3\"");
  ASSERT_NE(at, std::string::npos);
  kept.record[at + 12] = '4';
  const SealAnswer answer = verifyKept(kept, workspace.shop().identity().key);
  EXPECT_FALSE(answer.yes);
  EXPECT_THAT(answer.sentence.toStdString(), StartsWith("No. The first bad entry is "));
  EXPECT_FALSE(verifyKept(test::need(keptRecord(workspace, row)), publicOf(makeKey())).yes)
      << "another shop's key";
  EXPECT_EQ(row.job, job);
}

TEST_F(Records, TakeAnAddendumUnderNameAndPin) {
  sealed();
  open();
  const RecordsPlace place(workspace, navigator);
  press(place, "addendumButton");
  sign(place, QStringLiteral("wim"), QStringLiteral("0000"), QStringLiteral("The serial is S-101."));
  EXPECT_FALSE(said(place, "signSaid").isEmpty());
  EXPECT_THAT(text(*place.page()).toStdString(), Not(HasSubstr("The serial is S-101.")));
  sign(place, QStringLiteral("wim"), pin, QStringLiteral("The serial is S-101."));
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("The serial is S-101."));
  press(place, "verifyButton");
  EXPECT_THAT(said(place).toStdString(), StartsWith("Yes."));
}

TEST_F(Records, AreSavedAsTheSealedBytesAndAsATable) {
  const Id job = sealed();
  open();
  RecordsPlace place(workspace, navigator);
  const std::string json = (sample.folder() / "record.json").string();
  const std::string csv = (sample.folder() / "tightenings.csv").string();
  place.saveJson(toQt(json));
  place.saveCsv(toQt(csv));
  EXPECT_EQ(test::need(readFile(json)), test::need(workspace.shop().records().bytes(job)));
  EXPECT_THAT(test::need(readFile(csv)), HasSubstr("lbf.in"));
  const std::string pdf = (sample.folder() / "record.pdf").string();
  place.savePdf({pdf, PageSize::Letter});
  EXPECT_THAT(test::need(readFile(pdf)), AllOf(StartsWith("%PDF-"), HasSubstr("torque-record.json")));
  place.savePdf({"/no/such/folder/record.pdf", PageSize::A4});
  EXPECT_THAT(said(place).toStdString(), HasSubstr("/no/such/folder/record.pdf"));
  place.saveJson(QStringLiteral("/no/such/folder/record.json"));
  EXPECT_THAT(said(place).toStdString(), HasSubstr("/no/such/folder/record.json"));
}

TEST_F(Records, CanBeLookedAt) {
  sealed();
  finished();
  open();
  RecordsPlace place(workspace, navigator);
  place.page()->choose(1);
  showAll(place, QStringLiteral("records"));
  press(place, "verifyButton");
  press(place, "addendumButton");
  showAll(place, QStringLiteral("records_addendum"));
}

TEST_F(Records, CanBeLookedAtWhenThereIsNone) {
  open();
  RecordsPlace place(workspace, navigator);
  showAll(place, QStringLiteral("records_empty"));
}

TEST_F(Records, AQuickJointIsMarkedAndBecomesADraftSheet) {
  test::addQuickWrench(sample);
  test::sealedQuickJoint(sample);
  open();
  RecordsPlace place(workspace, navigator);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("no issued sheet"));
  EXPECT_THAT(place.page()->list()->model()->index(0, 2).data().toString().toStdString(),
              HasSubstr("no issued sheet"));
  showAll(place, QStringLiteral("records_quick"));
  press(place, "promoteButton");
  sign(place, QStringLiteral("tilda"), pin);
  const auto sheets = test::need(sample->sheets().all());
  EXPECT_THAT(sheets,
              testing::Contains(testing::AllOf(testing::Field(&SheetRow::title, "Inspection cover"),
                                               testing::Field(&SheetRow::status, SheetStatus::Draft))));
}

TEST_F(Records, AJobBySheetIsNoQuickJoint) {
  sealed();
  open();
  const RecordsPlace place(workspace, navigator);
  EXPECT_FALSE(offers(place, "promoteButton"));
}

}  // namespace
}  // namespace cw
