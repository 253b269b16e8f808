#include "core/store/shop_library.h"

#include "core/base/csv.h"
#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::RawSqlite;
using test::SampleShop;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

const std::string kGrades = csvLine(columnsOf(RowKind::Grade));
const std::string kThreads = csvLine(columnsOf(RowKind::Thread));

std::string ownGrade(const std::string& name, const std::string& yield = "80") {
  return kGrades + name + ",,both,0.25,1,in,," + yield + ",100,ksi,seen,pump drawing 12,Lena,own heat\n";
}

class OwnRows : public testing::Test {
 protected:
  ShopLibrary& library() { return m_shop->library(); }
  Deed by(const std::string& sign) { return {sign, m_shop.clock().now(), "why"}; }
  Result<Grade> grade(const std::string& name) {
    const Catalogue& catalogue = *need(library().catalogue());
    return catalogue.grade(name, need(catalogue.thread("M20")));
  }
  std::vector<std::string> names(const std::string& typed) {
    std::vector<std::string> out;
    const auto found = need(library().find(typed, 100));
    for (const LibraryHit& hit : found.rows) out.push_back(hit.entry.name);
    return out;
  }
  std::int64_t rowOf(const std::string& typed) { return need(library().find(typed, 1)).rows.at(0).shopRow; }
  std::string count(const std::string& table) {
    return RawSqlite(m_shop.file()).ask("SELECT count(*) FROM " + table);
  }

  SampleShop m_shop;
};

TEST_F(OwnRows, AreFoundByNameLikeTheShippedOnes) {
  EXPECT_THAT(grade("pump stud"), FailsWith(ErrorCode::NotFound));
  EXPECT_EQ(need(library().import(ownGrade("pump stud"), by("tilda"))), 1u);
  EXPECT_EQ(need(grade("Pump Stud")).yield, quantity(80, kKsi));
  EXPECT_EQ(need(grade("Pump Stud")).provenance.source, "pump drawing 12");
  EXPECT_THAT(grade("8.8"), IsOk());
  EXPECT_THAT(names("pump"), ElementsAre("pump stud"));
  m_shop.reopen();
  EXPECT_THAT(grade("pump stud"), IsOk());
}

TEST_F(OwnRows, AreSeenByAnotherProgramAtOnce) {
  const auto other = m_shop.another();
  need(library().catalogue());
  need(other->library().import(ownGrade("pump stud"), by("lena")));
  EXPECT_THAT(grade("pump stud"), IsOk());
}

TEST_F(OwnRows, NeverTakeANameThatIsTaken) {
  for (const char* name : {"8.8", "SAE 5", "sae5", "grade 5", "A2 70"})
    EXPECT_THAT(library().import(ownGrade(name), by("lena")),
                FailsWith(ErrorCode::Conflict, HasSubstr("already has")))
        << name;
  need(library().import(ownGrade("pump stud"), by("lena")));
  EXPECT_THAT(library().import(ownGrade("PumpStud"), by("lena")),
              FailsWith(ErrorCode::Conflict, HasSubstr("two rows answer")));
  EXPECT_EQ(count("library_revision"), "1");
}

TEST_F(OwnRows, ComeAllOrNone) {
  const std::string csv = ownGrade("one") + ownGrade("two").substr(kGrades.size()) +
                          ownGrade("three", "200").substr(kGrades.size());
  EXPECT_THAT(library().import(csv, by("lena")),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("line 4, yield")));
  EXPECT_EQ(count("library_revision"), "0");
  EXPECT_EQ(count("library_words"), "0");
  EXPECT_THAT(need(library().rehearse(csv)).refused, SizeIs(1));
}

TEST_F(OwnRows, AreWrittenByTrainersAndLeadsOnly) {
  EXPECT_THAT(library().import(ownGrade("x"), by("mira")), FailsWith(ErrorCode::NotPermitted));
  need(library().import(ownGrade("x"), by("tilda")));
  const std::int64_t row = rowOf("x");
  EXPECT_THAT(library().withdraw(row, by("mira")), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(library().change(row, {}, by("mira")), FailsWith(ErrorCode::NotPermitted));
}

TEST_F(OwnRows, KeepEveryStateTheyHad) {
  need(library().import(ownGrade("pump stud"), by("tilda")));
  const std::int64_t row = rowOf("pump");
  auto cells = need(library().history(row)).back().cells;
  cells.at(7) = "85";
  need(library().change(row, cells, by("lena")));
  EXPECT_EQ(need(grade("pump stud")).yield, quantity(85, kKsi));
  cells.at(0) = "pump bolt";
  need(library().change(row, cells, by("lena")));
  EXPECT_THAT(grade("pump stud"), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(names("pump"), ElementsAre("pump bolt"));
  need(library().withdraw(row, by("lena")));
  EXPECT_THAT(grade("pump bolt"), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(names(""), IsEmpty());
  std::vector<std::string> told;
  for (const LibraryRevision& each : need(library().history(row)))
    told.push_back(each.event + " " + each.cells[0] + " " + each.cells[7] + " " + each.deed.by);
  EXPECT_THAT(told, ElementsAre("added pump stud 80 tilda", "changed pump stud 85 lena",
                                "changed pump bolt 85 lena", "withdrawn pump bolt 85 lena"));
  EXPECT_THAT(library().withdraw(row, by("lena")), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(library().change(row, cells, by("lena")), FailsWith(ErrorCode::NotFound));
  need(library().import(ownGrade("pump bolt"), by("lena")));
  EXPECT_THAT(grade("pump bolt"), IsOk()) << "the name is free again";
}

TEST_F(OwnRows, AreJudgedWhenTheyChange) {
  need(library().import(ownGrade("one"), by("lena")));
  need(library().import(ownGrade("two"), by("lena")));
  const std::int64_t row = rowOf("two");
  auto cells = need(library().history(row)).back().cells;
  cells[7] = "-1";
  EXPECT_THAT(library().change(row, cells, by("lena")), FailsWith(ErrorCode::OutOfRange, HasSubstr("yield")));
  cells[7] = "80", cells[0] = "one";
  EXPECT_THAT(library().change(row, cells, by("lena")), FailsWith(ErrorCode::Conflict));
  cells[0] = "8.8";
  EXPECT_THAT(library().change(row, cells, by("lena")), FailsWith(ErrorCode::Conflict));
  EXPECT_THAT(library().change(row, {"short"}, by("lena")), FailsWith(ErrorCode::InvalidInput));
  EXPECT_EQ(count("library_revision"), "2");
}

// A later program may ship a row under a name that a shop has taken: the shop's row stands aside, and says
// so.
TEST_F(OwnRows, AreLeftOutWhereTheProgramNowHasTheirName) {
  need(library().import(ownGrade("pump stud"), by("lena")));
  m_shop.close();
  RawSqlite file(m_shop.file());
  ASSERT_EQ(
      file.run("INSERT INTO library_revision(row, kind, event, line, at, by, remark) SELECT 99, kind, event, "
               "replace(line, 'pump stud', '8.8'), at, by, remark FROM library_revision"),
      "");
  m_shop.reopen();
  EXPECT_EQ(need(grade("8.8")).yield, megapascals(660));
  EXPECT_THAT(grade("pump stud"), IsOk());
  EXPECT_THAT(*need(library().leftOut()), SizeIs(1));
  EXPECT_THAT(library().place(99), FailsWith(ErrorCode::NotFound));
}

TEST_F(OwnRows, GoFromShopToShop) {
  need(library().import(ownGrade("pump stud"), by("lena")));
  need(library().import(kThreads + "M12x0.75,12,0.750,,,mm,seen,drawing,Lena,\n", by("lena")));
  SampleShop second;
  for (const RowKind kind : {RowKind::Grade, RowKind::Thread}) {
    const std::string table = need(library().table(kind));
    need(second->library().import(table, by("lena")));
    EXPECT_EQ(need(second->library().table(kind)), table);
  }
  EXPECT_THAT(need(second->library().catalogue())->thread("M12x0.75"), IsOk());
}

TEST_F(OwnRows, MayRestOnAThreadOfTheShop) {
  need(library().import(kThreads + "M12x0.75,12,0.75,,,mm,seen,drawing,Lena,\n", by("lena")));
  const std::string table = csvLine(columnsOf(RowKind::PrevailingTorque));
  need(library().import(table + "M12x0.75,own nut,2,N.m,seen,drawing,Lena,\n", by("lena")));
  const Catalogue& catalogue = *need(library().catalogue());
  EXPECT_THAT(catalogue.prevailingTorque(need(catalogue.thread("M12x0.75")), "own nut"), IsOk());
  EXPECT_THAT(library().import(table + "M12x0.8,own nut,2,N.m,seen,drawing,Lena,\n", by("lena")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("line 2, thread")));
}

TEST_F(OwnRows, StandAmongTheShippedOnesByNearness) {
  need(library().import(kThreads + "M8x0.8,8,0.8,,,mm,seen,drawing,Lena,\n", by("lena")));
  const LibrarySearch shipped = need(LibrarySearch::of(shippedCatalogue().rows()));
  const auto hits = need(findInLibrary(shipped, &library(), "M8x", 100)).rows;
  ASSERT_THAT(hits, SizeIs(testing::Ge(3u)));
  EXPECT_EQ(need(findInLibrary(shipped, &library(), "M8x0.8", 1)).rows.at(0).entry.name, "M8x0.8");
  EXPECT_EQ(hits.front().entry.name, "M8x1") << "the shipped ones first";
}

TEST_F(OwnRows, TakeAnyTextAsASearch) {
  need(library().import(ownGrade("\"pump \"\"stud\"\" 100%\""), by("lena")));
  for (const char* text : {"\"", "*", "pump \"stud", "name:pump", "NEAR(", "') --", "^", "pump AND"})
    EXPECT_THAT(library().find(text, 10), IsOk()) << text;
  EXPECT_THAT(names("100%"), SizeIs(1));
}

// The words of the shop's rows are cut and indexed as those of the shipped ones.
TEST_F(OwnRows, AreIndexedLikeTheShippedOnes) {
  EXPECT_THAT(RawSqlite(m_shop.file()).ask("SELECT sql FROM sqlite_schema WHERE name = 'library_words'"),
              HasSubstr(std::string(kLibraryWords)));
  need(library().import(ownGrade("x"), by("lena")));
  EXPECT_THAT(need(inspectFile(m_shop.file())), IsEmpty());
}

}  // namespace
}  // namespace cw
