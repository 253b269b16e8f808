#include "core/pattern/explain.h"

#include <gmock/gmock.h>

#include <set>

namespace cw {
namespace {

using ::testing::ElementsAre;

std::vector<std::string> explained(const Layout& layout, OrderRule rule) {
  std::vector<std::string> out;
  const auto order = tighteningOrder(layout, rule);
  const auto seenPositions = positions(layout);
  if (order && seenPositions)
    for (const Message& words : explainOrder(*seenPositions, order->positions)) out.push_back(plain(words));
  return out;
}

TEST(ExplainOrder, NamesTheMovesOfAStar) {
  EXPECT_THAT(
      explained({Circle{8, millimetres(200)}}, OrderRule::Star),
      ElementsAre("start at 1", "opposite: 5", "a quarter turn anticlockwise: 3", "opposite: 7",
                  "between 1 and 3: 2", "opposite: 6", "a quarter turn anticlockwise: 4", "opposite: 8"));
}

TEST(ExplainOrder, NamesTheNeighbourAlreadyTightened) {
  EXPECT_EQ(explained({Circle{12, millimetres(200)}}, OrderRule::Star)[4], "beside 1, clockwise: 2");
  EXPECT_EQ(explained({Circle{12, millimetres(200)}}, OrderRule::StarLater)[4], "beside 4, anticlockwise: 3");
}

TEST(ExplainOrder, SpeaksOfThePartAsItIsSeen) {
  Layout layout{Circle{5, millimetres(200)}};
  EXPECT_EQ(explained(layout, OrderRule::Circular)[1], "the next one clockwise: 2");
  layout.view.mirrored = true;
  EXPECT_EQ(explained(layout, OrderRule::Circular)[1], "the next one anticlockwise: 2");
}

TEST(ExplainOrder, WorksOutwardFromTheMiddle) {
  EXPECT_THAT(explained({Line{5, millimetres(40)}}, OrderRule::CentreOut),
              ElementsAre("start at 3", "out from the middle: 4", "opposite: 2",
                          "opposite and further out: 5", "opposite: 1"));
}

TEST(ExplainOrder, UsesTheLabelsOnThePart) {
  Layout layout{Circle{4, millimetres(200)}};
  layout.labels.style = LabelStyle::Letters;
  EXPECT_EQ(explained(layout, OrderRule::Star)[1], "opposite: C");
}

TEST(InWords, TellsEveryRuleFromTheOthers) {
  std::set<std::string> sentences;
  for (const OrderRule rule : kOrderRules) sentences.insert(plain(inWords(rule)));
  EXPECT_EQ(sentences.size(), std::size(kOrderRules));
  EXPECT_EQ(sentences.count(""), 0u);
}

}  // namespace
}  // namespace cw
