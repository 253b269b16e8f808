#include <gmock/gmock.h>

#include <fstream>
#include <nlohmann/json.hpp>

#include "core/pattern/order.h"

namespace cw {
namespace {

using ::testing::ElementsAreArray;

/// One row of tests/data/published/sequences.json; each row there names its source and whether its order
/// was read in the source's text or is from memory.
struct Published {
  std::string id, family;
  Layout layout;
  std::vector<std::size_t> order;
};

Layout layoutOf(const nlohmann::json& geometry) {
  if (geometry["type"] == "circle") return {Circle{geometry["n"], millimetres(200)}};
  return {Rows{geometry["ny"], geometry["nx"], millimetres(geometry["dy"]), millimetres(geometry["dx"])}};
}

std::vector<Published> published() {
  std::ifstream file(CW_TEST_DATA "/published/sequences.json");
  const auto document = nlohmann::json::parse(file);
  std::vector<Published> rows;
  for (const auto& row : document["sequences"])
    rows.push_back({row["id"], row["family"], layoutOf(row["geometry"]), row["order"]});
  return rows;
}

OrderRule ruleOf(const std::string& family) {
  if (family == "star2000") return OrderRule::Star;
  if (family == "legacy2010") return OrderRule::StarLater;
  if (family == "quadrant") return OrderRule::Quadrant;
  if (family == "army12") return OrderRule::ArmyCircle;
  if (family == "wheel") return OrderRule::Wheel;
  return OrderRule::CentreOut;
}

class PublishedOrder : public testing::TestWithParam<Published> {};

TEST_P(PublishedOrder, IsReturnedByItsRule) {
  const auto order = tighteningOrder(GetParam().layout, ruleOf(GetParam().family));
  ASSERT_TRUE(order) << sentence(order.error());
  EXPECT_THAT(order->positions, ElementsAreArray(GetParam().order));
}

INSTANTIATE_TEST_SUITE_P(Sequences, PublishedOrder, testing::ValuesIn(published()), [](const auto& row) {
  std::string name = row.param.id;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

std::vector<std::size_t> made(const Shape& shape, OrderRule rule) {
  const auto order = tighteningOrder({shape}, rule);
  return order ? order->positions : std::vector<std::size_t>();
}

// US Army TM 5-3805-298-23-2, WP 0176, straight line of nine: from the middle outward, right before left.
TEST(OrderOnALine, IsTheArmyOrder) {
  const Line line{9, millimetres(40)};
  for (const OrderRule rule : {OrderRule::CentreOut, OrderRule::Balanced})
    EXPECT_THAT(made(line, rule), testing::ElementsAre(5, 6, 4, 7, 3, 8, 2, 9, 1)) << name(rule);
}

// ASME PCC-1 (2000), rotational order table; from memory, not in the data file.
TEST(StarOrder, ContinuesThePrintedTable) {
  EXPECT_THAT(made(Circle{20, millimetres(300)}, OrderRule::Star),
              testing::ElementsAre(1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19));
  EXPECT_THAT(made(Circle{24, millimetres(300)}, OrderRule::Star),
              testing::ElementsAre(1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6,
                                   18, 12, 24));
}

// Common practice, no source: six studs against the numbering, eight studs in pairs.
TEST(WheelPairs, WorkRoundAgainstTheNumbering) {
  EXPECT_THAT(made(Circle{6, millimetres(140)}, OrderRule::WheelPairs),
              testing::ElementsAre(1, 4, 6, 3, 5, 2));
  EXPECT_THAT(made(Circle{8, millimetres(165)}, OrderRule::WheelPairs),
              testing::ElementsAre(1, 5, 8, 4, 7, 3, 6, 2));
}

// Typed coordinates of a published circle give the published order: the rule needs no shape.
TEST(BalancedOrder, FindsThePublishedStarInTypedCoordinates) {
  for (const Published& row : published()) {
    if (row.family != "star2000") continue;
    const auto points = holes(row.layout.shape);
    ASSERT_TRUE(points);
    EXPECT_THAT(made(FreePoints{*points}, OrderRule::Balanced), ElementsAreArray(row.order)) << row.id;
  }
}

}  // namespace
}  // namespace cw
