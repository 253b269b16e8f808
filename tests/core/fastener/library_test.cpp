#include <gmock/gmock.h>

#include "core/base/resource.h"
#include "core/fastener/catalogue.h"
#include "core/fastener/folded_name.h"
#include "core/fastener/profile.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

const Library& shipped() {
  return shippedCatalogue().rows();
}

TEST(ShippedLibrary, EveryRowIsRead) {
  Library library;
  for (const std::string_view path : resourcesBelow("library/"))
    for (const Finding& finding : addTable(library, resource(path)))
      ADD_FAILURE() << path << " " << sentence(finding);
  EXPECT_THAT(Catalogue::make(library), IsOk());
}

TEST(ShippedLibrary, HasATableOfEachKind) {
  for (const RowKind kind : kRowKinds) EXPECT_GT(countOf(shipped(), kind), 0u) << nameOf(kind);
}

TEST(ShippedLibrary, EveryTableOpensWithItsSource) {
  for (const std::string_view path : resourcesBelow("library/"))
    EXPECT_TRUE(resource(path).starts_with("# source: ")) << path;
}

TEST(ShippedLibrary, IsWrittenAndReadBackUnchanged) {
  for (const RowKind kind : kRowKinds) {
    Library again;
    EXPECT_THAT(addTable(again, tableOf(shipped(), kind)), IsEmpty()) << nameOf(kind);
    EXPECT_EQ(tableOf(again, kind), tableOf(shipped(), kind));
    EXPECT_EQ(countOf(again, kind), countOf(shipped(), kind)) << nameOf(kind);
  }
}

TEST(ShippedThreads, GrowFromRootToMajorDiameter) {
  for (const Thread& thread : shipped().threads) {
    EXPECT_LT(thread.rootDiameter, thread.minorDiameter) << thread.designation;
    EXPECT_LT(thread.minorDiameter, thread.pitchDiameter) << thread.designation;
    EXPECT_LT(thread.pitchDiameter, thread.diameter) << thread.designation;
    EXPECT_LT(thread.stressArea, kPi / 4 * (thread.pitchDiameter * thread.pitchDiameter))
        << thread.designation;
    EXPECT_GT(thread.stressArea, kPi / 4 * (thread.rootDiameter * thread.rootDiameter)) << thread.designation;
  }
}

TEST(ShippedThreads, AreFoundByTheirOwnName) {
  for (const Thread& thread : shipped().threads) {
    const auto found = shippedCatalogue().thread(thread.designation);
    ASSERT_THAT(found, IsOk());
    EXPECT_EQ(found->pitch, thread.pitch);
    EXPECT_EQ(shippedCatalogue().thread(thread.designation + "-LH")->hand, Hand::Left);
  }
}

TEST(ShippedThreads, SayWhereTheirStressAreaComesFrom) {
  EXPECT_THAT(stressAreaSource(*shippedCatalogue().thread("M8")), HasSubstr("ISO 898-1:2013 tables"));
  EXPECT_THAT(stressAreaSource(*shippedCatalogue().thread("M24x1.5")), HasSubstr("formula"));
  EXPECT_THAT(shippedCatalogue().thread("M24x1.5")->stressArea,
              IsNear(squareMillimetres(400.891), squareMillimetres(0.001)));
}

TEST(ShippedRows, ThatBelongToAThreadNameAKnownOne) {
  for (const SizeLimits& limits : shipped().limits)
    EXPECT_EQ(shippedCatalogue().thread(limits.thread)->designation, limits.thread);
  for (const PrevailingTorque& torque : shipped().prevailingTorques)
    EXPECT_EQ(shippedCatalogue().thread(torque.thread)->designation, torque.thread);
}

TEST(ShippedRows, CarryASourceAndNoAuthor) {
  const auto check = [](const auto& rows) {
    for (const auto& row : rows) {
      EXPECT_FALSE(row.provenance.source.empty());
      EXPECT_TRUE(row.provenance.author.empty());
    }
  };
  check(shipped().threads);
  check(shipped().grades);
  check(shipped().conditions);
  check(shipped().materials);
  check(shipped().heads);
  check(shipped().holes);
  check(shipped().limits);
  check(shipped().prevailingTorques);
  check(shipped().toolClasses);
}

TEST(ShippedHeads, FitEveryTabulatedSizeOfScrew) {
  for (const Thread& thread : shipped().threads) {
    if (thread.designation == "M7" || thread.diameter < inches(0.25) || thread.diameter > inches(1.5))
      continue;
    if (const auto face = shippedCatalogue().bearingFace("hex", thread); face)
      EXPECT_LT(face->hole, face->outer) << thread.designation;
    else
      ADD_FAILURE() << sentence(face.error());
  }
}

TEST(ShippedConditions, AnswerToTheShopsWords) {
  for (const char* name :
       {"dry", "oiled", "moly paste", "nickel anti-seize", "copper anti-seize", "threadlocker",
        "zinc-plated dry", "waxed", "phosphate and oil", "cadmium-plated dry", "stainless dry"})
    EXPECT_THAT(shippedCatalogue().condition(name), IsOk());
}

TEST(FoldedThread, LeavesOneSpellingOfMany) {
  EXPECT_EQ(foldedThread("m10 × 1.50 - lh").key, "M10X1.5");
  EXPECT_TRUE(foldedThread("m10 × 1.50 - lh").leftHand);
  EXPECT_EQ(foldedThread(" 1 1/8 - 7 un c").key, "1-1/8-7UNC");
  EXPECT_EQ(foldedThread("M20").key, "M20");
  EXPECT_EQ(foldedThread("M8x1.").key, "M8X1");
  EXPECT_EQ(foldedThread("").key, "");
}

}  // namespace
}  // namespace cw
