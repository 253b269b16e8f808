#include "app/library/library_place.h"

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
    return DeskTest::text(*place.page()).replace(QChar(0x2009), QLatin1Char(' ')).toStdString();
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
