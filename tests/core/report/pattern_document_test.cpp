#include "core/report/pattern_document.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

using testing::HasSubstr;

std::string allLines(const Pattern& pattern) {
  std::string out;
  for (const std::string& line : lines(patternDocument(pattern, plain))) out += line + "\n";
  return out;
}

TEST(PatternDocument, SaysTheWayFromPositionToPosition) {
  const std::string text = allLines({});
  EXPECT_THAT(text, HasSubstr("1  5  3  7  2  6  4  8"));
  EXPECT_THAT(text, HasSubstr("start at 1"));
  EXPECT_THAT(text, HasSubstr("opposite: 5"));
  EXPECT_THAT(text, HasSubstr("a quarter turn"));
  EXPECT_THAT(text, HasSubstr("until nothing moves"));
}

TEST(PatternDocument, ShowsGapsOfAnOrderByHandAndNoWay) {
  Pattern pattern;
  pattern.byHand = {"1", "5", "5"};
  const std::string text = allLines(pattern);
  EXPECT_THAT(text, HasSubstr("1  5  5"));
  EXPECT_THAT(text, testing::Not(HasSubstr("start at")));
}

TEST(PatternDocument, GivesEachToolItsColumn) {
  Pattern pattern;
  pattern.tools = 2;
  EXPECT_THAT(allLines(pattern), HasSubstr("Tool 2"));
}

TEST(PatternDocument, RefusesInASentence) {
  Pattern pattern;
  pattern.layout = Layout{Circle{2, millimetres(80)}};
  EXPECT_THAT(allLines(pattern), HasSubstr("make no circle"));
}

}  // namespace
}  // namespace cw
