#include "app/records/records_place.h"

#include <QScrollBar>
#include <QTextCursor>

#include "app/fields/sign_form.h"
#include "core/record/pdf_seal.h"
#include "core/store/connection.h"
#include "tests/app/desk_test.h"
#include "tests/support/many_jobs.h"
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
    test::need(sample->records().seal(job, {"mira", std::string(test::kPin)}, sample.key(), "test"));
    return job;
  }
  /// What somebody with a database shell does.
  void sqlInShop(const std::string& statement) {
    test::need(sample->database().connection().run(statement, {}));
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

TEST_F(Records, AreListedHoweverManyNewerJobsAreInProgress) {
  sealed();
  test::addJobs(sample.file(), 205);
  open();
  const RecordsPlace place(workspace, navigator);
  EXPECT_EQ(rows(*place.page()), 1);
  EXPECT_EQ(said(place, "deskCount").toStdString(), "1 listed");
}

TEST_F(Records, SayOfHowManyTheyAreTheLatest) {
  const Id record = sealed();
  test::addJobs(sample.file(), 203, true);
  open();
  const RecordsPlace place(workspace, navigator);
  EXPECT_EQ(rows(*place.page()), 200);
  EXPECT_THAT(said(place, "deskCount").toStdString(), HasSubstr("200 of 204"));
  place.page()->search()->setText(QStringLiteral("P-1"));
  EXPECT_EQ(said(place, "deskCount").toStdString(), "112 listed");
  navigator.openRecord(record);
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr(record.text()))
      << "a record that is wanted is shown, however old it is";
}

TEST_F(Records, TheChosenOneIsNotLaidOutAgainWhileSomebodyTypes) {
  sealed(), sealed();
  open();
  RecordsPlace place(workspace, navigator);
  place.page()->choose(1);
  const std::string before = text(*place.page()).toStdString();
  QTextCursor marked = place.page()->thing()->textCursor();
  marked.movePosition(QTextCursor::NextWord, QTextCursor::KeepAnchor, 3);
  place.page()->thing()->setTextCursor(marked);
  press(place, "verifyButton");
  for (const char* typed : {"t", "te", "tes", "test", "test c"}) {
    place.page()->search()->setText(QLatin1String(typed));
    EXPECT_TRUE(place.page()->thing()->textCursor().hasSelection()) << typed;
    EXPECT_THAT(said(place).toStdString(), StartsWith("Yes.")) << "what was said of it still holds";
  }
  EXPECT_EQ(text(*place.page()).toStdString(), before);
  place.page()->search()->setText(QStringLiteral("nothing"));
  EXPECT_THAT(said(place, "deskNothing").toStdString(), StartsWith("Nothing fits"));
}

TEST_F(Records, SayThatThePeopleCannotBeReadWhereTheyWouldBeOffered) {
  sealed();
  open();
  test::sqlite(sample.file(), "UPDATE person SET page = '{}' WHERE sign = 'mira'");
  const RecordsPlace place(workspace, navigator);
  press(place, "addendumButton");
  EXPECT_THAT(said(place, "signSaid").toStdString(), HasSubstr("person mira"));
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
  EXPECT_TRUE(offers(place, "sealButton")) << "not before somebody says who they are";
  sign(place, QStringLiteral("mira"), QStringLiteral("0000"));
  EXPECT_FALSE(said(place, "signSaid").isEmpty());
  EXPECT_TRUE(offers(place, "sealButton"));
  sign(place, QStringLiteral("mira"), pin);
  EXPECT_THAT(said(place).toStdString(), StartsWith("Sealed."));
  EXPECT_FALSE(offers(place, "sealButton"));
  press(place, "verifyButton");
  EXPECT_THAT(said(place).toStdString(), StartsWith("Yes. All "));
}

TEST_F(Records, NameTheFirstBadEntryOfAnAlteredOne) {
  const Id job = sealed();
  open();
  const JobRow row = test::need(workspace.shop().findJobs({})).rows.front();
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
  EXPECT_THAT(said(place).toStdString(), HasSubstr("Every byte of it is signed"));
  EXPECT_EQ(readPdfSeal(test::need(readFile(pdf)), workspace.shop().identity().key).state,
            PdfState::AsGivenOut);
  place.savePdf({"/no/such/folder/record.pdf", PageSize::A4});
  EXPECT_THAT(said(place).toStdString(), HasSubstr("/no/such/folder/record.pdf"));
  place.saveJson(QStringLiteral("/no/such/folder/record.json"));
  EXPECT_THAT(said(place).toStdString(), HasSubstr("/no/such/folder/record.json"));
}

TEST_F(Records, GoOutUnsignedAndSaySoWhereTheKeyIsNotAtHand) {
  sealed();
  open();
  Settings().setKeyFile(toQt((sample.folder() / "no such key").string()));
  RecordsPlace place(workspace, navigator);
  const std::string pdf = (sample.folder() / "record.pdf").string();
  place.savePdf({pdf, PageSize::A4});
  EXPECT_THAT(said(place).toStdString(), HasSubstr("Its pages are not signed, only the data inside is."));
  EXPECT_EQ(readPdfSeal(test::need(readFile(pdf)), workspace.shop().identity().key).state,
            PdfState::Unsigned);
}

TEST_F(Records, ThatDoNotVerifyLeaveOnlyAsPagesThatSaySo) {
  const Id job = sealed();
  sqlInShop("DROP TRIGGER record_no_update");
  sqlInShop("UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), 'S-100', 'S-101') AS BLOB)");
  open();
  RecordsPlace place(workspace, navigator);
  EXPECT_FALSE(offers(place, "markedPdfButton"));
  const std::string out = (sample.folder() / "out").string();
  const auto refused = [&] {
    EXPECT_THAT(said(place).toStdString(),
                AllOf(StartsWith("Nothing was saved."), HasSubstr("first bad entry")));
    EXPECT_TRUE(offers(place, "markedPdfButton"));
    EXPECT_FALSE(std::filesystem::exists(out));
  };
  place.saveJson(toQt(out));
  refused();
  place.saveCsv(toQt(out));
  refused();
  place.savePdf({out, PageSize::A4});
  refused();
  showAll(place, QStringLiteral("records_unsound"));
  place.saveMarkedPdf({out, PageSize::A4});
  EXPECT_THAT(said(place).toStdString(), HasSubstr("Every page says that it does not verify"));
  EXPECT_EQ(readPdfSeal(test::need(readFile(out)), workspace.shop().identity().key).state,
            PdfState::Unsigned);
  EXPECT_EQ(test::need(workspace.shop().findJobs({})).rows.front().job, job);
}

TEST_F(Records, WithAnAddendumOfAnotherRecordDoNotLeave) {
  const Id first = sealed(), second = sealed();
  test::need(sample->records().addAddendum(first, "wim", test::kPin, "The serial is S-101.", sample.key()));
  sqlInShop("DROP TRIGGER addendum_no_update");
  sqlInShop("UPDATE addendum SET job = '" + second.text() + "'");
  open();
  RecordsPlace place(workspace, navigator);
  navigator.openRecord(second);
  place.saveCsv(toQt((sample.folder() / "out").string()));
  EXPECT_THAT(said(place).toStdString(),
              HasSubstr("The first bad addendum is 1: it does not belong to this record"));
  press(place, "verifyButton");
  EXPECT_THAT(said(place).toStdString(), HasSubstr("The first bad addendum is 1"));
}

TEST_F(Records, AreNotSavedOntoTheShopOrItsKey) {
  sealed();
  open();
  RecordsPlace place(workspace, navigator);
  const std::string key = (sample.folder() / "secret-key").string(), before = test::need(readFile(key));
  for (const std::string& path : {sample.file().string(), sample.file().string() + "-wal", key}) {
    place.saveJson(toQt(path));
    EXPECT_THAT(said(place).toStdString(), HasSubstr("nothing was replaced")) << path;
    place.savePdf({path, PageSize::A4});
    EXPECT_THAT(said(place).toStdString(), HasSubstr("nothing was replaced")) << path;
  }
  EXPECT_EQ(test::need(readFile(key)), before);
  EXPECT_TRUE(workspace.shop().findJobs({}).has_value());
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
