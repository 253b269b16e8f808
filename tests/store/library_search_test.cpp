#include "core/store/library_search.h"

#include <random>

#include "core/fastener/catalogue.h"
#include "core/store/connection.h"
#include "core/store/typed_words.h"
#include "tests/support/matchers.h"
#include "tests/support/need.h"

namespace cw {
namespace {

using test::need;
using testing::ElementsAre;
using testing::IsEmpty;

class ShippedSearch : public testing::Test {
 protected:
  std::vector<std::string> names(std::string_view typed, std::size_t most = 200) {
    std::vector<std::string> out;
    const auto found = need(m_search.find(typed, most));
    for (const FoundRow& row : found.rows)
      out.push_back(m_search.entries()[static_cast<std::size_t>(row.number)].name);
    return out;
  }
  std::string first(std::string_view typed) {
    const auto all = names(typed, 1);
    return all.empty() ? "" : all.front();
  }

  LibrarySearch m_search = need(LibrarySearch::of(shippedCatalogue().rows()));
};

TEST_F(ShippedSearch, FindsEveryThreadByWhatItIsCalled) {
  for (const Thread& thread : shippedCatalogue().rows().threads)
    EXPECT_EQ(first(thread.designation), thread.designation);
}

TEST_F(ShippedSearch, FindsEveryRowByItsNameAndByEachBeginningOfIt) {
  for (const SearchEntry& entry : m_search.entries())
    for (std::size_t length = 1; length <= entry.name.size(); ++length) {
      const std::string beginning = entry.name.substr(0, length);
      if (static_cast<unsigned char>(entry.name[length - 1]) >= 0x80 || beginning == "#") continue;
      EXPECT_THAT(names(beginning, 1000), testing::Contains(entry.name)) << beginning;
    }
}

TEST_F(ShippedSearch, TakesTheShopsSpellings) {
  EXPECT_EQ(first("m8x1.25"), "M8");
  EXPECT_EQ(first("M8×1"), "M8x1");
  EXPECT_EQ(first("3/8-16"), "3/8-16 UNC");
  EXPECT_EQ(first("3/8 16"), "3/8-16 UNC");
  EXPECT_EQ(first("#10"), "#10-24 UNC");
  EXPECT_EQ(first("8.8"), "8.8");
  EXPECT_EQ(first("a2 70"), "A2-70");
  EXPECT_EQ(first("B7"), "ASTM A193 B7");
  EXPECT_EQ(first("grade 5"), "SAE 5");
  EXPECT_EQ(first("lubed"), "oiled");
  EXPECT_EQ(first("nylon"), "polyamide 66");
  EXPECT_EQ(first("silicon bronze"), "ASTM F468 651");
}

TEST_F(ShippedSearch, PutsTheNearestFirst) {
  const auto found = need(m_search.find("M8", 200)).rows;
  EXPECT_TRUE(std::is_sorted(found.begin(), found.end(), [](const FoundRow& a, const FoundRow& b) {
    return std::pair(a.distance, a.number) < std::pair(b.distance, b.number);
  }));
  EXPECT_THAT(names("M8", 3), ElementsAre("M8", "M8 6g", "M8 6H"));
}

TEST_F(ShippedSearch, NarrowsWithEachWord) {
  const auto wide = names("M10"), narrow = names("M10 bearing");
  EXPECT_LT(narrow.size(), wide.size());
  for (const std::string& name : narrow) EXPECT_THAT(wide, testing::Contains(name));
  EXPECT_THAT(names("bearing M10"), testing::UnorderedElementsAreArray(narrow));
  EXPECT_THAT(names("M8 brass"), IsEmpty());
}

TEST_F(ShippedSearch, ListsEverythingWhereNothingWasTyped) {
  EXPECT_EQ(names("", 10000).size(), m_search.entries().size());
  EXPECT_EQ(names(" \t", 5).size(), 5u);
}

// Whatever a keyboard or a clipboard brings is text, never an operator of the search.
TEST_F(ShippedSearch, TakesAnyTextWithoutAnError) {
  using namespace std::string_literals;
  for (const std::string& text : {"\""s,
                                  "\"\"\""s,
                                  "M8\""s,
                                  "\"M8"s,
                                  "'"s,
                                  "M8' OR 1=1 --"s,
                                  "*"s,
                                  "M8*"s,
                                  "^M8"s,
                                  "name:M8"s,
                                  "M8 AND"s,
                                  "OR"s,
                                  "NOT NOT"s,
                                  "NEAR(M8 M10)"s,
                                  "M8 NEAR"s,
                                  "("s,
                                  ")"s,
                                  "{name}: M8"s,
                                  "-M8"s,
                                  "+"s,
                                  "M8 + M10"s,
                                  "\\"s,
                                  "%"s,
                                  "_"s,
                                  ";DROP TABLE library_words"s,
                                  "\0M8"s,
                                  "M8\0x1"s,
                                  "\xff\xfe"s,
                                  "💥"s,
                                  "½"s,
                                  std::string(100000, 'm'),
                                  std::string(2000, '"')})
    EXPECT_THAT(m_search.find(text, 50), IsOk()) << testing::PrintToString(text.substr(0, 40));
  EXPECT_EQ(first("M8*"), "M8");
  EXPECT_EQ(first("\"M8\""), "M8");
  EXPECT_EQ(first("M8 *"), "M8");
}

TEST_F(ShippedSearch, TakesRandomTextWithoutAnError) {
  std::mt19937 random(7);
  const std::string letters = "Mm8x1.#/-\"'*^:()+{}\\ \t%ANDORNT~,;=\x01\x7f\xc3\x97";
  for (int round = 0; round < 3000; ++round) {
    std::string text;
    for (std::size_t length = random() % 24; length > 0; --length) text += letters[random() % letters.size()];
    ASSERT_THAT(m_search.find(text, 20), IsOk()) << testing::PrintToString(text);
  }
}

TEST(TypedWords, AreQuotedAndOpenAtTheirEnd) {
  EXPECT_EQ(everyBeginning("m8 pas"), "\"m8\"* \"pas\"* ");
  EXPECT_EQ(everyBeginning(" say \"so\" "), "\"say\"* \"\"\"so\"\"\"* ");
  EXPECT_EQ(everyBeginning("* - \""), "");
}

}  // namespace
}  // namespace cw
