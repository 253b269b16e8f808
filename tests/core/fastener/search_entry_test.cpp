#include "core/fastener/search_entry.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "core/fastener/catalogue.h"

namespace cw {
namespace {

using testing::HasSubstr;

SearchEntry entryNamed(const std::string& name) {
  const auto entries = searchEntries(shippedCatalogue().rows());
  const auto found = std::find_if(entries.begin(), entries.end(),
                                  [&](const SearchEntry& entry) { return entry.name == name; });
  return found == entries.end() ? SearchEntry{} : *found;
}

TEST(SearchEntries, AreOneForEachRow) {
  std::size_t rows = 0;
  for (const RowKind kind : kRowKinds) rows += countOf(shippedCatalogue().rows(), kind);
  EXPECT_EQ(searchEntries(shippedCatalogue().rows()).size(), rows);
}

TEST(SearchEntries, CarryDesignationAliasAndNote) {
  EXPECT_EQ(entryNamed("M8").alias, "M8x1.25");
  EXPECT_EQ(entryNamed("M8").note, "coarse");
  EXPECT_EQ(entryNamed("#10-32 UNF").alias, "#10-32");
  EXPECT_THAT(entryNamed("SAE 5").alias, HasSubstr("grade 5"));
  EXPECT_THAT(entryNamed("oiled").alias, HasSubstr("lubed"));
  EXPECT_THAT(entryNamed("polyamide 66").note, HasSubstr("plastic; creeps"));
  EXPECT_EQ(entryNamed("hex M12").kind, RowKind::Head);
}

TEST(SearchEntries, PointAtTheirRow) {
  const SearchEntry entry = entryNamed("dry");
  EXPECT_EQ(shippedCatalogue().rows().conditions.at(entry.row).name, "dry");
}

}  // namespace
}  // namespace cw
