#include "core/fastener/import.h"

#include <gmock/gmock.h>

#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

const std::string kGradeHeader =
    "name,aliases,threads,size_from,size_up_to,size_unit,proof,yield,tensile,stress_unit,known,source,author,"
    "note\n";
const std::string kThreadHeader =
    "designation,diameter,pitch,threads_per_inch,stress_area,unit,known,source,author,note\n";
const std::string kConditionHeader =
    "name,aliases,label,nut_factor_low,nut_factor_typical,nut_factor_high,thread_friction_low,thread_"
    "friction_"
    "typical,thread_friction_high,bearing_friction_low,bearing_friction_typical,bearing_friction_high,known,"
    "source,"
    "author,note\n";

std::vector<std::string> refusals(const std::string& csv) {
  std::vector<std::string> out;
  for (const Error& error : rehearseImport(shippedCatalogue(), csv).refused) out.push_back(sentence(error));
  return out;
}

TEST(Import, TakesAShopsRowsWithTheirAuthor) {
  const auto rehearsal = rehearseImport(
      shippedCatalogue(),
      kGradeHeader + "pump stud,ps1,both,0.25,1,in,,80,100,ksi,seen,pump drawing 12,R. Alba,own\n");
  ASSERT_THAT(rehearsal.refused, IsEmpty());
  EXPECT_EQ(rehearsal.kind, RowKind::Grade);
  const auto catalogue = imported(shippedCatalogue(), rehearsal);
  ASSERT_THAT(catalogue, IsOk());
  const auto grade = catalogue->grade("PS1", *catalogue->thread("M20"));
  ASSERT_THAT(grade, IsOk());
  EXPECT_EQ(grade->yield, quantity(80, kKsi));
  EXPECT_EQ(grade->provenance.author, "R. Alba");
  EXPECT_THAT(shippedCatalogue().grade("PS1", *catalogue->thread("M20")), FailsWith(ErrorCode::NotFound));
}

TEST(Import, TakesWhatASpreadsheetSaves) {
  std::string csv = kThreadHeader + "M12x0.75,12,0.75,,,mm,memory,own drawing,R. Alba,\n";
  for (std::size_t at = 0; (at = csv.find('\n', at)) != std::string::npos; at += 2)
    csv.replace(at, 1, "\r\n");
  const auto catalogue =
      imported(shippedCatalogue(), rehearseImport(shippedCatalogue(), "\xEF\xBB\xBF" + csv));
  ASSERT_THAT(catalogue, IsOk());
  EXPECT_THAT(catalogue->thread("m12x.75"), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(catalogue->thread("m12x0.750"), IsOk());
}

TEST(Import, ListsEveryBadRowAndTakesNone) {
  const auto rehearsal =
      rehearseImport(shippedCatalogue(), kThreadHeader +
                                             "M11,11,1.5,,,mm,seen,drawing,R. Alba,\n"
                                             "M12x0.75,12,-0.75,,,mm,seen,drawing,R. Alba,\n"
                                             "M12x0.6,NaN,0.6,,,mm,seen,drawing,R. Alba,\n"
                                             "M12x0.5,12 mm,0.5,,,mm,seen,drawing,R. Alba,\n"
                                             "M13,13,1.5,,,mm,seen,,R. Alba,\n"
                                             "M15,15,1.5,,,mm,seen,drawing,,\n"
                                             "M17,17,1.5,,,mm,guess,drawing,R. Alba,\n");
  EXPECT_EQ(rehearsal.rows, 7u);
  std::vector<std::string> sentences;
  for (const Error& error : rehearsal.refused) sentences.push_back(sentence(error));
  EXPECT_THAT(
      sentences,
      ElementsAre(
          "line 3, pitch: “-0.75” is not above zero; write a value above zero.",
          HasSubstr("line 4, diameter: “NaN” is not a number"),
          "line 5, diameter: “12 mm” carries its own unit; write the number alone; the unit column holds for "
          "the whole row.",
          "line 6, source: the cell is empty; fill in the source.",
          "line 7, author: the cell is empty; fill in the author.",
          "line 8, known: “guess” does not say how the value is known; write seen (read in the source) or "
          "memory."));
  EXPECT_THAT(imported(shippedCatalogue(), rehearsal),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("line 3")));
}

TEST(Import, RefusesMixedUnitsInOneRow) {
  EXPECT_THAT(
      refusals(kGradeHeader + "x,,metric,3,20,mm,,80,100,ksi,seen,drawing,R. Alba,\n"),
      ElementsAre(
          "line 2, stress_unit: ksi beside sizes in mm mixes two systems of units; mm with MPa, or in "
          "with ksi or psi."));
  EXPECT_THAT(refusals(kThreadHeader + "M12x0.75,12,0.75,20,,mm,seen,drawing,R. Alba,\n"),
              ElementsAre(HasSubstr("line 2, threads_per_inch: a row in mm has a value here")));
  EXPECT_THAT(refusals(kThreadHeader + "x,12,0.75,,,furlong,seen,drawing,R. Alba,\n"),
              ElementsAre(HasSubstr("line 2, unit: “furlong” is no unit here")));
}

TEST(Import, NeverReplacesARowThatIsThere) {
  EXPECT_THAT(
      refusals(kGradeHeader + "8.8,,metric,3,20,mm,600,660,830,MPa,seen,drawing,R. Alba,\n"),
      ElementsAre("line 2, name: the library that came with the program already has “8.8”; add it under "
                  "another name."));
  EXPECT_THAT(refusals(kThreadHeader + "M8x1.25,8,1.25,,,mm,seen,drawing,R. Alba,\n"), SizeIs(1));
  EXPECT_THAT(refusals(kConditionHeader + "own,Lubed,Own paste,0.1,0.12,0.14,,,,,,,seen,test,R. Alba,\n"),
              SizeIs(1));
}

TEST(Import, RefusesRowsOfOneFileThatContradictEachOther) {
  EXPECT_THAT(
      refusals(kGradeHeader + "own,,metric,3,20,mm,,600,830,MPa,seen,drawing,R. Alba,\n"
                              "own,,metric,20,30,mm,,600,830,MPa,seen,drawing,R. Alba,\n"
                              "own,,metric,25,36,mm,,600,830,MPa,seen,drawing,R. Alba,\n"
                              "other,own,metric,3,20,mm,,600,830,MPa,seen,drawing,R. Alba,\n"),
      ElementsAre(
          "line 4, name: two rows of “own” hold for the same sizes; let one end where the next begins.",
          "line 5, name: two rows answer to “own”; give one of them another name."));
}

TEST(Import, RefusesValuesThatCannotBe) {
  for (
      const auto& [csv, words] : std::vector<std::pair<std::string, std::string>>{
          {kGradeHeader + "x,,metric,20,3,mm,,600,830,MPa,seen,s,a,\n",
           "largest size is not above the smallest"},
          {kGradeHeader + "x,,metric,3,20,mm,,900,830,MPa,seen,s,a,\n", "yield is above the tensile"},
          {kGradeHeader + "x,,metric,3,20,mm,700,600,830,MPa,seen,s,a,\n", "proof stress is above the yield"},
          {kGradeHeader + "x,,pipe,3,20,mm,,600,830,MPa,seen,s,a,\n", "no thread system"},
          {kThreadHeader + "M2x2,2,2,,,mm,seen,s,a,\n", "pitch is too coarse"},
          {kThreadHeader + "M12x0.75,12,0.75,,84.3,mm,seen,s,a,\n", "does not belong to this diameter"},
          {kConditionHeader + "x,,X,0.2,0.1,0.3,,,,,,,seen,s,a,\n", "not in rising order"},
          {kConditionHeader + "x,,X,,,,0.1,0.2,0.6,0.1,0.2,0.3,seen,s,a,\n", "thread_friction_high"},
          {kConditionHeader + "x,,X,,,,0.1,0.2,0.3,,,,seen,s,a,\n", "only one of thread and bearing"},
          {kConditionHeader + "x,,X,,,,,,,,,,seen,s,a,\n", "neither nut factor nor thread friction"},
          {kConditionHeader + "x,,X,0.1,,0.3,,,,,,,seen,s,a,\n", "nut_factor_typical: the cell is empty"},
          {"thread,fastener,minimum,unit,known,source,author,note\nM8x0.9,nut,1,N.m,seen,s,a,\n",
           "no thread “M8x0.9”"},
          {"name,aliases,family,shear_strength,modulus,caution,unit,known,source,author,note\nx,,plastic,50,"
           "2500,,MPa,"
           "seen,s,a,\n",
           "a plastic has no caution"},
          {"kind,diameter,across_flats,bearing_diameter,unit,known,source,author,note\nx,8,,7,mm,seen,s,a,\n",
           "not larger than the thread"},
          {"diameter,close,normal,loose,unit,known,source,author,note\n7.5,9,8,10,mm,seen,s,a,\n",
           "do not grow"}})
    EXPECT_THAT(refusals(csv), ElementsAre(HasSubstr(words))) << csv;
}

TEST(Import, GivesTheBadValueBesideItsPlace) {
  const auto rehearsal =
      rehearseImport(shippedCatalogue(), kThreadHeader + "M12x0.75,12,-0.75,,,mm,seen,drawing,R. Alba,\n");
  ASSERT_THAT(rehearsal.refused, SizeIs(1));
  EXPECT_EQ(rehearsal.refused[0].place, "line 2, pitch");
  EXPECT_EQ(rehearsal.refused[0].value, "-0.75");
}

TEST(Import, ListsRowsThatAreBrokenAmongThoseThatAreBad) {
  EXPECT_THAT(
      refusals(kThreadHeader + "M11,11,1.5,,,mm,seen,drawing,R. Alba,\n"
                               "M12x0.75,12,0.75\n"
                               "M13,13,x,,,mm,seen,drawing,R. Alba,\n"
                               "M14x\"1,14,1,,,mm,seen,drawing,R. Alba,\n"
                               "M15\xff,15,1,,,mm,seen,drawing,R. Alba,\n"
                               "M17,17,1,,,mm,seen,drawing,R. Alba,\n"
                               "M19,\"19,1,,,mm,seen,drawing,R. Alba,\n"),
      ElementsAre(HasSubstr("line 3: the row has 3 cells"), HasSubstr("line 4, pitch"),
                  HasSubstr("line 5: a quote stands inside"), HasSubstr("line 6: the text is not UTF-8"),
                  HasSubstr("line 8: a quote is opened and never closed")));
}

TEST(Import, RefusesWhatASpreadsheetWouldCompute) {
  for (const char* cell : {"=1+1", "=HYPERLINK(\"\"http://x\"\")", "@SUM(A1)", "+A1", "-A1", "-2+3"})
    EXPECT_THAT(refusals(kThreadHeader + "M12x0.75,12,0.75,,,mm,seen,\"" + cell + "\",R. Alba,\n"),
                ElementsAre(HasSubstr("line 2, source: “")))
        << cell;
  EXPECT_THAT(refusals(kThreadHeader + "M12x0.75,12,0.75,,,mm,seen,\"two\nlines\",R. Alba,\n"),
              ElementsAre(HasSubstr("holds a line end or a control character")));
  EXPECT_THAT(refusals(kThreadHeader + "M12x0.75,12,0.75,,,mm,seen,A = B - C,R. Alba,\n"), IsEmpty());
}

TEST(Import, FitsNewRowsInBesideTheShopsOwn) {
  const std::string first = kGradeHeader + "own,o1,metric,3,20,mm,,600,830,MPa,seen,drawing,R. Alba,\n";
  const Library own = rehearseImport(shippedCatalogue(), first).library;
  const auto refused = [&](const std::string& row) {
    std::vector<std::string> out;
    for (const Error& error : rehearseImport(shippedCatalogue(), kGradeHeader + row, own).refused)
      out.push_back(sentence(error));
    return out;
  };
  EXPECT_THAT(refused("own,o1,metric,20,30,mm,,600,830,MPa,seen,drawing,R. Alba,\n"), IsEmpty());
  EXPECT_THAT(refused("own,o1,metric,10,30,mm,,600,830,MPa,seen,drawing,R. Alba,\n"),
              ElementsAre(HasSubstr("hold for the same sizes")));
  EXPECT_THAT(refused("O-1,,metric,10,30,mm,,600,830,MPa,seen,drawing,R. Alba,\n"),
              ElementsAre(HasSubstr("two rows answer")));
}

TEST(Import, KeepsTheCellsAsTheyWereWritten) {
  const auto rehearsal =
      rehearseImport(shippedCatalogue(),
                     "source,name,aliases,family,shear_strength,modulus,caution,unit,known,author,note\n"
                     "drawing,own bronze,,bronze,30.50,15000,,ksi,seen,R. Alba,\"a, b\"\n");
  ASSERT_THAT(rehearsal.refused, IsEmpty());
  ASSERT_THAT(rehearsal.taken, SizeIs(1));
  EXPECT_EQ(rehearsal.taken[0].csv, "own bronze,,bronze,30.50,15000,,ksi,seen,drawing,R. Alba,\"a, b\"\n");
  EXPECT_EQ(rehearsal.taken[0].line, 2u);
}

TEST(Import, NamesTheColumnsThatWereMeant) {
  EXPECT_THAT(
      refusals("designation,diameter,pitch\nM8,8,1.25\n"),
      ElementsAre(HasSubstr("a table of threads has designation, diameter, pitch, threads_per_inch")));
  EXPECT_THAT(refusals("a,\"b\n"), ElementsAre(HasSubstr("a quote is opened and never closed")));
}

}  // namespace
}  // namespace cw
