#include "core/fastener/condition_text.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

Result<Condition> written(const char* text, DecimalMark mark = DecimalMark::Point) {
  return writtenCondition(text, shippedCatalogue(), mark);
}

TEST(ConditionText, IsANameOfTheCatalogueOrAnAlias) {
  EXPECT_EQ(written("lubed").value().name, "oiled");
  EXPECT_EQ(written("k-class set").value().name, "structural set") << "a K without a number is a name";
  EXPECT_THAT(sentence(written("oild").error()), testing::HasSubstr("oiled"));
}

TEST(ConditionText, IsAnOwnNutFactorOrFriction) {
  EXPECT_EQ(written("K 0.2").value().nutFactor, (Range{0.2, 0.2, 0.2}));
  EXPECT_EQ(written("k=0.18 to 0.22").value().nutFactor, (Range{0.18, 0.2, 0.22}));
  EXPECT_EQ(written("µ 0.12 / 0.10").value().threadFriction, (Range{0.12, 0.12, 0.12}));
  EXPECT_EQ(written("μ 0.12 / 0.10").value().bearingFriction, (Range{0.10, 0.10, 0.10})) << "the Greek letter too";
  EXPECT_EQ(written("mu 0,12", DecimalMark::Comma).value().threadFriction, (Range{0.12, 0.12, 0.12}));
}

TEST(ConditionText, IsReadBackFromItsName) {
  for (const char* text : {"K 0.2", "K 0.18 to 0.22", "µ 0.12", "µ 0.1 to 0.16 / 0.08 to 0.12"}) {
    EXPECT_EQ(written(text).value().name, text);
    EXPECT_EQ(written(written(text).value().name.c_str()).value().nutFactor, written(text).value().nutFactor);
  }
}

TEST(ConditionText, RefusesWhatWasNeverMeasured) {
  for (const char* text :
       {"K 0", "K -0.2", "K 1.5", "K 0.3 to 0.2", "µ 0.6", "µ 0.12 / 0.7", "K 0.2x", "µ 1e-1"})
    EXPECT_FALSE(written(text)) << text;
}

}  // namespace
}  // namespace cw
