#include "core/fastener/catalogue.h"

#include <gmock/gmock.h>

#include "core/units/unit.h"

namespace cw {
namespace {

using testing::HasSubstr;

TEST(CatalogueThread, IsFoundHoweverItIsWritten) {
  const auto& catalogue = shippedCatalogue();
  for (const auto& [written, designation] :
       std::vector<std::pair<std::string, std::string>>{{"M8", "M8"},
                                                        {"m8", "M8"},
                                                        {"M8x1.25", "M8"},
                                                        {"M 8 × 1.250", "M8"},
                                                        {"M8x1", "M8x1"},
                                                        {"m8X1.0", "M8x1"},
                                                        {"3/8-16", "3/8-16 UNC"},
                                                        {"3/8-16unc", "3/8-16 UNC"},
                                                        {"#10-32", "#10-32 UNF"},
                                                        {"No. 10-32", "#10-32 UNF"},
                                                        {"1 1/8-7", "1-1/8-7 UNC"},
                                                        {"2-4.5", "2-4.5 UNC"},
                                                        {"1-8", "1-8 UNC"},
                                                        {"M8-LH", "M8-LH"},
                                                        {"m8x1 lh", "M8x1-LH"}}) {
    const auto thread = catalogue.thread(written);
    ASSERT_TRUE(thread.has_value()) << sentence(thread.error());
    EXPECT_EQ(thread->designation, designation) << written;
    EXPECT_EQ(thread->hand == Hand::Left, designation.ends_with("-LH"));
  }
}

TEST(CatalogueThread, ThatIsNotTabulatedNamesThoseOfItsSize) {
  EXPECT_EQ(sentence(shippedCatalogue().thread("M8x0.9").error()),
            "thread: the library has no thread “M8x0.9”; in that size it has M8 and M8x1.");
  EXPECT_EQ(sentence(shippedCatalogue().thread("3/8").error()),
            "thread: the library has no thread “3/8”; in that size it has 3/8-16 UNC and 3/8-24 UNF.");
  EXPECT_THAT(sentence(shippedCatalogue().thread("W8").error()), HasSubstr("did you mean M8"));
  EXPECT_THAT(sentence(shippedCatalogue().thread("").error()), HasSubstr("write it like"));
}

TEST(CatalogueGrade, PicksTheRowOfTheSize) {
  const auto& catalogue = shippedCatalogue();
  const auto proof = [&](const char* thread, const char* grade) {
    return catalogue.grade(grade, *catalogue.thread(thread))->proof;
  };
  EXPECT_EQ(proof("M16", "8.8"), megapascals(580));
  EXPECT_EQ(proof("M18", "8.8"), megapascals(600));
  EXPECT_EQ(proof("1-8", "SAE 5"), quantity(85, kKsi));
  EXPECT_EQ(proof("1-1/8-7", "grade 5"), quantity(74, kKsi));
  EXPECT_EQ(proof("5/8-11", "ASTM A193 B7"), std::nullopt);
  EXPECT_EQ(catalogue.grade("b7", *catalogue.thread("M20"))->yield, quantity(105, kKsi));
}

TEST(CatalogueGrade, IsRefusedInOneSentenceWhereItDoesNotExist) {
  const auto& catalogue = shippedCatalogue();
  const auto refusal = [&](const char* thread, const char* grade) {
    return sentence(catalogue.grade(grade, *catalogue.thread(thread)).error());
  };
  EXPECT_EQ(refusal("M42", "8.8"), "grade: 8.8 does not exist for M42; it is made from M1.6 to M39.");
  EXPECT_EQ(
      refusal("M8", "SAE 5"),
      "grade: SAE 5 is a grade for inch threads and M8 is metric; take a metric grade such as 8.8 or A2-70.");
  EXPECT_EQ(
      refusal("3/8-16", "8.8"),
      "grade: 8.8 is a grade for metric threads and 3/8-16 UNC is an inch thread; take an inch grade such as "
      "SAE 5 or ASTM A193 B7.");
  EXPECT_THAT(refusal("M8", "8.9"), HasSubstr("did you mean 8.8"));
}

TEST(CatalogueCondition, IsFoundByNameAndAlias) {
  const auto& catalogue = shippedCatalogue();
  EXPECT_EQ(catalogue.condition("Lubed")->name, "oiled");
  EXPECT_EQ(catalogue.condition("nickel antiseize")->name, "nickel anti-seize");
  EXPECT_THAT(sentence(catalogue.condition("oild").error()), HasSubstr("did you mean oiled"));
}

TEST(CatalogueMaterial, CarriesItsCaution) {
  const auto& catalogue = shippedCatalogue();
  EXPECT_EQ(catalogue.material("356-t6")->name, "cast aluminium A356-T6");
  EXPECT_THAT(catalogue.material("nylon")->caution, HasSubstr("insert"));
  EXPECT_THAT(sentence(catalogue.material("brss").error()), HasSubstr("did you mean brass"));
}

TEST(CatalogueBearingFace, IsTheHeadOverItsHole) {
  const auto& catalogue = shippedCatalogue();
  const auto face = catalogue.bearingFace("hex", *catalogue.thread("M12x1.25"));
  ASSERT_TRUE(face.has_value()) << sentence(face.error());
  EXPECT_DOUBLE_EQ(inMillimetres(face->outer), 16.63);
  EXPECT_DOUBLE_EQ(inMillimetres(face->hole), 13.5);
  EXPECT_FALSE(face->provenance.seen);
  EXPECT_DOUBLE_EQ(
      inMillimetres(catalogue.bearingFace("hex", *catalogue.thread("M12"), HoleFit::Close)->hole), 13);
}

TEST(CatalogueBearingFace, OfAnInchHexIsTakenFromItsFlats) {
  const auto& catalogue = shippedCatalogue();
  const auto face = catalogue.bearingFace("Hex", *catalogue.thread("3/8-16"));
  ASSERT_TRUE(face.has_value()) << sentence(face.error());
  EXPECT_NEAR(in(kInch, face->outer), 0.95 * 9 / 16, 1e-12);
}

TEST(CatalogueBearingFace, ThatIsNotThereSaysWhatIs) {
  const auto& catalogue = shippedCatalogue();
  const auto refusal = [&](const char* thread, const char* kind) {
    return sentence(catalogue.bearingFace(kind, *catalogue.thread(thread)).error());
  };
  EXPECT_EQ(refusal("M8", "pan"),
            "bearing face: the library has no bearing face “pan”; for such a thread it has hex, hex nut, hex "
            "flange, "
            "socket head and washer.");
  EXPECT_EQ(refusal("M64", "hex flange"),
            "bearing face: the library has no hex flange for M64; state the bearing diameter, or add a row.");
}

TEST(Catalogue, FindsLimitsPrevailingTorquesAndToolClasses) {
  const auto& catalogue = shippedCatalogue();
  EXPECT_EQ(inMillimetres(catalogue.sizeLimits(*catalogue.thread("M10-LH"), "6H")->pitch.most), 9.206);
  EXPECT_EQ(catalogue.prevailingTorque(*catalogue.thread("7/16-20"), "self-locking nut, reused")->minimum,
            (StatedTorque{"8", &kPoundInch}));
  EXPECT_EQ(catalogue.toolClass("II", "a")->deviationAt(newtonMetres(10)), 0.06);
  EXPECT_EQ(catalogue.toolClass("II", "a")->deviationAt(newtonMetres(10.1)), 0.04);
  EXPECT_FALSE(catalogue.toolClass("III", "A").has_value());
}

}  // namespace
}  // namespace cw
