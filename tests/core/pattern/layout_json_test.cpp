#include "core/pattern/layout_json.h"

#include "core/pattern/passes_json.h"
#include "tests/support/matchers.h"

namespace cw {

void PrintTo(const Layout& layout, std::ostream* out) {
  *out << canonical(toJson(layout));
}
void PrintTo(const PassPlan& plan, std::ostream* out) {
  *out << canonical(toJson(plan));
}

namespace {

using testing::HasSubstr;

Result<Layout> layoutFrom(std::string_view text) {
  const Json json = *parseJson(text);
  auto reader = JsonReader::of(json, "layout");
  return readLayout(*reader);
}

Result<PassPlan> passesFrom(std::string_view text) {
  const Json json = *parseJson(text);
  auto reader = JsonReader::of(json, "passes");
  return readPasses(*reader);
}

Length mm(double value) {
  return quantity(value, kMillimetre);
}

Layout layoutOf(Shape shape) {
  Layout out;
  out.shape = std::move(shape);
  return out;
}

Circle circle(std::size_t count, Length diameter) {
  return {count, diameter, quantity(22.5, kDegree), 2, Direction::Anticlockwise};
}

const Layout kLayouts[] = {
    layoutOf(circle(8, mm(160))),
    layoutOf(Rows{2, 5, mm(40), mm(25)}),
    layoutOf(Rows{1, 1, Length(), Length()}),
    layoutOf(Perimeter{mm(240), mm(160), 4, 3}),
    layoutOf(Line{9, mm(30)}),
    layoutOf(ConcentricCircles{{circle(4, mm(50)), circle(12, mm(150))}}),
    layoutOf(FreePoints{{{mm(-3.25), mm(7)}, {mm(0.1), mm(-12)}}}),
};

class LayoutJson : public testing::TestWithParam<Layout> {};
INSTANTIATE_TEST_SUITE_P(, LayoutJson, testing::ValuesIn(kLayouts));

TEST_P(LayoutJson, ReadsBackEveryShape) {
  const std::string written = canonical(toJson(GetParam()));
  EXPECT_EQ(layoutFrom(written), GetParam()) << written;
}

TEST_P(LayoutJson, ReadsBackWhatGoesWithIt) {
  Layout layout = GetParam();
  layout.view = {true, quantity(90, kDegree)};
  layout.labels.style = LabelStyle::Letters;
  layout.outline = PolygonOutline{{{mm(-1), Length()}, {mm(1), Length()}, {Length(), mm(2)}}};
  EXPECT_EQ(layoutFrom(canonical(toJson(layout))), layout);
  layout.outline = RoundOutline{mm(200)};
  layout.labels.style = LabelStyle::Numbers;
  EXPECT_EQ(layoutFrom(canonical(toJson(layout))), layout);
}

TEST(LayoutFile, ReadsBackOwnLabelsHolesLeftOutAndGroups) {
  Layout layout = layoutOf(circle(5, mm(90)));
  layout.leftOut = {3};
  layout.groups = {{1, 2}, {3, 4}};
  layout.labels = {LabelStyle::Own, {"top", "right", "foot", "left"}};
  EXPECT_EQ(layoutFrom(canonical(toJson(layout))), layout);
}

TEST(LayoutFile, HoldsALayoutAlone) {
  const std::string_view text =
      R"({"format":"clampwright.layout","version":1,"unit":"mm","line":{"count":2,"spacing":"30"}})";
  EXPECT_THAT(readLayoutFile(text), IsOkAnd(layoutOf(Line{2, mm(30)})));
  EXPECT_THAT(readLayoutFile("{}"), FailsWith(ErrorCode::InvalidInput, HasSubstr("format: ")));
  EXPECT_THAT(readLayoutFile(R"({"format":"clampwright.layout","version":2})"),
              FailsWith(ErrorCode::NewerVersion, HasSubstr("version 2")));
}

TEST(LayoutFile, WritesLengthsInTheAuthorsUnit) {
  const auto layout = layoutFrom(R"({"unit":"in","circle":{"count":8,"diameter":"7.50"}})");
  ASSERT_THAT(layout, IsOk());
  EXPECT_EQ(canonical(toJson(*layout)), R"({"circle":{"count":8,"diameter":"7.5"},"unit":"in"})");
}

TEST(LayoutFile, RefusesWhatItWouldLose) {
  EXPECT_THAT(layoutFrom(R"({"unit":"in","line":{"count":2,"spacing":"1"},"view":{"tilt":"3"}})"),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("layout.view: the field “tilt” is not known")));
  EXPECT_THAT(layoutFrom(R"({"unit":"in","line":{"count":2,"spacing":"1"},"labels":"runes"})"),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("layout.labels: “runes”")));
  EXPECT_THAT(layoutFrom(R"({"unit":"in","line":{"count":2,"spacing":"1"},"left_out":[0]})"),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("layout.left_out[0]: 0 is out of range")));
}

TEST(PassesJson, ReadsBackEveryPart) {
  PassPlan plan;
  EXPECT_EQ(passesFrom(canonical(toJson(plan))), plan);
  plan.byHand = false;
  plan.snug = 0.15;
  plan.shares = {0.333, 0.666, 1};
  plan.check = CheckPass{3};
  plan.retorque = Retorque{seconds(5400)};
  plan.gaps = GapReadings{8, {1, 2}, {"0.03", &kInch}};
  EXPECT_EQ(passesFrom(canonical(toJson(plan))), plan) << canonical(toJson(plan));
  plan.check.reset(), plan.retorque.reset(), plan.gaps.reset(), plan.snug.reset();
  EXPECT_EQ(passesFrom(canonical(toJson(plan))), plan);
}

TEST(PassesJson, RefusesSharesThatAreNoPlan) {
  EXPECT_THAT(passesFrom(R"({"shares_percent":["70","30","100"]})"),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("passes.shares_percent[1]: 30 %")));
  EXPECT_THAT(passesFrom(R"({"shares_percent":["100"],"check":{"limit":0}})"),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("passes.check.limit: 0 is out of range")));
  EXPECT_THAT(passesFrom(R"({"shares_percent":["100"],"snug_percent":"x"})"),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("passes.snug_percent: ")));
}

}  // namespace
}  // namespace cw
