#include "app/library/library_place.h"

#include <QSignalSpy>

#include "core/base/csv.h"
#include "core/fastener/catalogue.h"
#include "tests/app/desk_test.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class LibraryDesk : public DeskTest {
 protected:
  /// What stands on the right after that was typed into the search.
  static std::string typed(const LibraryPlace& place, const char* text) {
    place.page()->search()->setText(QString::fromUtf8(text));
    return DeskTest::text(*place.page()).replace(QChar(0x202F), QLatin1Char(' ')).toStdString();
  }
};

TEST_F(LibraryDesk, ShowsTheShippedRowsWithoutAShop) {
  const LibraryPlace place(workspace);
  EXPECT_GT(rows(*place.page()), 100);
  EXPECT_THAT(typed(place, ""), HasSubstr("Thread"));
}

TEST_F(LibraryDesk, FindsOneThingOfEveryKindAsOneTypes) {
  open();
  const LibraryPlace place(workspace);
  EXPECT_THAT(typed(place, "M8x1.25"),
              AllOf(HasSubstr("M8"), HasSubstr("6.647"), HasSubstr("36.6 mm²"), HasSubstr("Clearance hole")));
  EXPECT_THAT(typed(place, "3/8-16"), AllOf(HasSubstr("3/8-16 UNC"), HasSubstr("16 threads per inch")));
  EXPECT_THAT(typed(place, "8.8"),
              AllOf(HasSubstr("Strength grade"), HasSubstr("640"), HasSubstr("16 to 39")));
  EXPECT_THAT(typed(place, "moly p"),
              AllOf(HasSubstr("Condition"), HasSubstr("Nut factor K"), HasSubstr("0.13")));
  EXPECT_THAT(typed(place, "nylon"), AllOf(HasSubstr("Tapped material"), HasSubstr("CAUTION: creeps")));
  EXPECT_THAT(typed(place, "socket head M8"), AllOf(HasSubstr("Bearing face"), HasSubstr("mm (")));
  EXPECT_THAT(typed(place, "clearance hole M8"), AllOf(HasSubstr("Normal fit"), HasSubstr("9 mm")));
  EXPECT_THAT(typed(place, "M8 6g"), AllOf(HasSubstr("Limits of size"), HasSubstr("Pitch diameter, mm")));
  EXPECT_THAT(typed(place, "prevailing 7/16-20"),
              AllOf(HasSubstr("8 in·lbf"), HasSubstr("use a new fastener")));
  EXPECT_THAT(typed(place, "class A click"), AllOf(HasSubstr("Torque tool class"), HasSubstr("±4")));
}

TEST_F(LibraryDesk, SaysWhereAValueIsFromAndHowItIsKnown) {
  const LibraryPlace place(workspace);
  EXPECT_THAT(typed(place, "8.8"), AllOf(HasSubstr("ISO 898-1"), HasSubstr("seen in the source")));
  EXPECT_THAT(typed(place, "A4-100"), HasSubstr("From memory: check your edition"));
}

TEST_F(LibraryDesk, SaysWhenNothingFits) {
  const LibraryPlace place(workspace);
  typed(place, "zzz");
  EXPECT_THAT(said(place, "deskNothing").toStdString(), HasSubstr("Nothing fits"));
}

/// The sample shop's library in hand.
class OwnLibrary : public LibraryDesk {
 protected:
  OwnLibrary() { open(); }

  void fill(const char* column, const char* text) {
    child<QLineEdit>(place, (std::string(column) + "Cell").c_str()).setText(QString::fromUtf8(text));
  }
  /// A copy of grade 8.8 in the form, under that name.
  void copyGrade(const char* name) {
    typed(place, "8.8");
    press(place, "copyRowButton");
    fill("name", name);
    press(place, "rowSignButton");
    sign(place, QStringLiteral("tilda"), pin);
  }
  bool knows(const char* grade) {
    const Catalogue& catalogue = *test::need(workspace.catalogue());
    return catalogue.grade(grade, test::need(catalogue.thread("M10"))).has_value();
  }
  QString csvFile(const std::string& name, const std::string& text) {
    const std::string path = (sample.folder() / name).string();
    test::need(writeFile(path, text));
    return toQt(path);
  }
  void import(const QString& path) {
    QSignalSpy answered(&place, &LibraryPlace::imported);
    place.importFrom(path);
    ASSERT_TRUE(answered.wait(30000));
  }

  const std::string header = csvLine(columnsOf(RowKind::Grade));
  LibraryPlace place{workspace};
};

TEST_F(OwnLibrary, CopiesAShippedRowUnderANameOfItsOwn) {
  copyGrade("pump stud");
  EXPECT_TRUE(knows("pump stud"));
  EXPECT_THAT(text(*place.page()).toStdString(), AllOf(HasSubstr("pump stud"), HasSubstr("Tilda Ros"),
                                                       HasSubstr("History"), HasSubstr("Added")));
  EXPECT_TRUE(offers(place, "changeRowButton"));
}

TEST_F(OwnLibrary, SaysUnderTheFieldWhatIsWrong) {
  copyGrade("SAE 5");
  EXPECT_THAT(said(place, "signSaid").toStdString(), HasSubstr("already has"));
  EXPECT_TRUE(child<QLineEdit>(place, "nameCell").isVisibleTo(&place))
      << "the form stays, with what was typed";
  EXPECT_EQ(child<QLineEdit>(place, "nameCell").text(), QStringLiteral("SAE 5"));
  fill("name", "pump stud");
  fill("yield", "much");
  press(place, "rowSignButton");
  sign(place, QStringLiteral("tilda"), pin);
  EXPECT_THAT(said(place, "signSaid").toStdString(), HasSubstr("not a number"));
  EXPECT_FALSE(knows("pump stud"));
}

TEST_F(OwnLibrary, LetsNobodyElseWrite) {
  typed(place, "8.8");
  press(place, "copyRowButton");
  fill("name", "pump stud");
  press(place, "rowSignButton");
  sign(place, QStringLiteral("mira"), pin);
  EXPECT_THAT(said(place, "signSaid").toStdString(), HasSubstr("may not do this"));
  EXPECT_FALSE(knows("pump stud"));
}

TEST_F(OwnLibrary, ChangesAndWithdrawsARowOfTheShop) {
  copyGrade("pump stud");
  press(place, "changeRowButton");
  fill("yield", "650");
  press(place, "rowSignButton");
  sign(place, QStringLiteral("lena"), pin);
  typed(place, "pump stud");
  EXPECT_THAT(text(*place.page()).toStdString(), AllOf(HasSubstr("650"), HasSubstr("Changed")));
  press(place, "withdrawRowButton");
  sign(place, QStringLiteral("lena"), pin, QStringLiteral("Wrong drawing."));
  EXPECT_FALSE(knows("pump stud"));
  EXPECT_THAT(said(place, "deskNothing").toStdString(), HasSubstr("Nothing fits"));
}

TEST_F(OwnLibrary, OffersNoChangeOfWhatCameWithTheProgram) {
  typed(place, "8.8");
  EXPECT_TRUE(offers(place, "copyRowButton"));
  EXPECT_FALSE(offers(place, "changeRowButton"));
  EXPECT_FALSE(offers(place, "withdrawRowButton"));
}

TEST_F(OwnLibrary, ListsEveryBadRowOfATableAndTakesNone) {
  import(csvFile("bad.csv", header + "one,,both,0.25,1,in,,80,100,ksi,seen,drawing,Lena,\n"
                                     "two,,both,0.25,1,in,,x,100,ksi,seen,drawing,Lena,\n"
                                     "three,,both,0.25,1,mm,,80,100,ksi,seen,drawing,Lena,\n"
                                     "8.8,,both,0.25,1,in,,80,100,ksi,seen,drawing,Lena,\n"));
  EXPECT_THAT(text(*place.page()).toStdString(),
              AllOf(HasSubstr("taken in: 3"), HasSubstr("line 3"), HasSubstr("line 4"), HasSubstr("line 5"),
                    HasSubstr("Yield stress"), HasSubstr("mixes two systems")));
  EXPECT_FALSE(knows("one"));
  showAll(place, QStringLiteral("library_import_refused"));
}

TEST_F(OwnLibrary, TakesATableInAndWritesItOut) {
  const std::string table = header + "one,,both,0.25,1,in,,80,100,ksi,seen,drawing,Lena,\n";
  import(csvFile("good.csv", table));
  EXPECT_THAT(text(*place.page()).toStdString(), HasSubstr("Nothing is wrong with it"));
  EXPECT_FALSE(knows("one")) << "nothing is taken in before somebody signs";
  QSignalSpy answered(&place, &LibraryPlace::imported);
  sign(place, QStringLiteral("tilda"), pin);
  ASSERT_TRUE(answered.wait(30000));
  EXPECT_TRUE(knows("one"));
  typed(place, "one");
  const QString out = csvFile("out.csv", "");
  place.exportTo(out);
  EXPECT_EQ(test::need(readFile(fromQt(out))), table);
}

TEST_F(OwnLibrary, CanBeLookedAt) {
  copyGrade("pump stud");
  showAll(place, QStringLiteral("library_own"));
  press(place, "changeRowButton");
  fill("yield", "much");
  press(place, "rowSignButton");
  sign(place, QStringLiteral("tilda"), pin);
  showAll(place, QStringLiteral("library_form"));
}

TEST_F(LibraryDesk, CanBeLookedAt) {
  open();
  LibraryPlace place(workspace);
  showAll(place, QStringLiteral("library"));
  for (const auto& [text, name] : {std::pair{"8.8", "library_grade"},
                                   {"nylon", "library_material"},
                                   {"M8", "library_thread"},
                                   {"oiled", "library_condition"}}) {
    typed(place, text);
    showAll(place, QLatin1String(name));
  }
}

}  // namespace
}  // namespace cw
