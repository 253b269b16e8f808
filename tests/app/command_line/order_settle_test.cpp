// order and settle: published orders and finite-element loads through the command line, and what each says of
// bad input.
#include <gmock/gmock.h>

#include <cmath>
#include <fstream>

#include "core/pattern/order.h"
#include "tests/app/command_line/call.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

std::vector<int> orderOf(const Json* list) {
  std::vector<int> out;
  if (list != nullptr && list->array() != nullptr)
    for (const Json& item : *list->array()) out.push_back(static_cast<int>(numberOf(item.number()->text)));
  return out;
}

std::vector<int> order(std::vector<std::string> words) {
  words.insert(words.begin(), {"--json", "order"});
  const Call made = call(std::move(words));
  EXPECT_EQ(made.exit, 0) << made.err;
  return orderOf(made.json().find("order"));
}

void expectSentence(const Call& made, const std::string& said, int exit = 2) {
  EXPECT_EQ(made.exit, exit) << made.out;
  EXPECT_EQ(made.out, "");
  EXPECT_EQ(std::count(made.err.begin(), made.err.end(), '\n'), 1) << made.err;
  EXPECT_THAT(made.err, HasSubstr(said));
}

TEST(OrderCommand, GivesThePublishedOrders) {
  // ASME PCC-1, both conventions of the star for twelve; US Army TM 5-3805-298-23-2, line of nine.
  EXPECT_THAT(order({"--circle", "12", "--rule", "star"}),
              ElementsAre(1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12));
  EXPECT_THAT(order({"--circle", "12"}), ElementsAre(1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12));
  EXPECT_THAT(order({"--circle", "12", "--rule", "star-later"}),
              ElementsAre(1, 7, 4, 10, 3, 9, 6, 12, 2, 8, 5, 11));
  EXPECT_THAT(order({"--line", "9"}), ElementsAre(5, 6, 4, 7, 3, 8, 2, 9, 1));
  EXPECT_THAT(order({"--circle", "5", "--rule", "wheel"}), ElementsAre(1, 3, 5, 2, 4));
}

TEST(OrderCommand, EveryRuleGivesEveryPositionOnce) {
  for (const OrderRule rule : kOrderRules)
    for (const char* count : {"12", "3", "16", "128"}) {
      if (rule == OrderRule::ArmyCircle && std::string(count) != "12") continue;
      std::vector<int> given = order({"--circle", count, "--rule", std::string(name(rule))});
      std::sort(given.begin(), given.end());
      std::vector<int> all;
      for (int i = 1; i <= std::stoi(count); ++i) all.push_back(i);
      EXPECT_EQ(given, all) << name(rule) << " of " << count;
    }
}

TEST(OrderCommand, LoosensInReverse) {
  const std::vector<int> there = order({"--circle", "8"});
  const std::vector<int> back = order({"--circle", "8", "--loosen"});
  EXPECT_EQ(back, std::vector<int>(there.rbegin(), there.rend()));
  const Json rounds = *call({"--json", "order", "--circle", "8", "--loosen"}).json().find("passes");
  ASSERT_EQ(rounds.array()->size(), 3U);
  EXPECT_EQ(rounds.array()->back().find("share")->number()->text, "0");
}

TEST(OrderCommand, SharesTheWorkAmongTools) {
  const Json made = call({"--json", "order", "--circle", "12", "--tools", "2"}).json();
  const Json* steps = made.find("tool_steps");
  ASSERT_NE(steps, nullptr);
  ASSERT_EQ(steps->array()->size(), 6U);
  std::vector<int> all;
  for (const Json& step : *steps->array()) {
    const std::vector<int> together = orderOf(&step);
    ASSERT_EQ(together.size(), 2U);
    EXPECT_EQ(std::abs(together[0] - together[1]), 6);  // opposite each other
    all.insert(all.end(), together.begin(), together.end());
  }
  std::sort(all.begin(), all.end());
  EXPECT_THAT(all, ElementsAre(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12));
}

TEST(OrderCommand, ReadsALayoutFileAndAnOrderByHand) {
  const TemporaryFolder folder;
  std::ofstream(folder.file("layout.json"))
      << R"({"format":"clampwright.layout","version":1,"unit":"mm","labels":["A","B","C","D"],)"
      << R"("points":[{"x":"0","y":"0"},{"x":"80","y":"5"},{"x":"75","y":"60"},{"x":"-4","y":"55"}]})";
  EXPECT_THAT(order({"--layout", folder.file("layout.json")}), ElementsAre(1, 3, testing::_, testing::_));
  EXPECT_THAT(order({"--layout", folder.file("layout.json"), "--order", "D B A C"}), ElementsAre(4, 2, 1, 3));
  expectSentence(call({"order", "--layout", folder.file("layout.json"), "--order", "D B A"}), "C");
  expectSentence(call({"order", "--layout", folder.file("layout.json"), "--order", "D B A C D"}), "D");
  std::ofstream(folder.file("far.json"))
      << R"({"format":"clampwright.layout","version":1,"unit":"mm","points":[{"x":"1000000000","y":"0"}]})";
  expectSentence(call({"order", "--layout", folder.file("far.json")}), "1000000");
  std::ofstream(folder.file("twice.json"))
      << R"({"format":"clampwright.layout","version":1,"unit":"mm","points":[{"x":"1","y":"0"},{"x":"1","y":"0"}]})";
  expectSentence(call({"order", "--layout", folder.file("twice.json")}), "2");
  std::ofstream(folder.file("line.json"))
      << R"({"format":"clampwright.layout","version":1,"unit":"mm","points":[{"x":"0","y":"0"},{"x":"1","y":"1"},{"x":"2","y":"2"}]})";
  expectSentence(call({"order", "--layout", folder.file("line.json"), "--rule", "star"}), "needs a ring");
}

TEST(OrderCommand, RefusesInASentence) {
  for (const auto& [words, said] : std::vector<std::pair<std::vector<std::string>, std::string>>{
           {{"--circle", "2"}, "3"},
           {{"--circle", "1"}, "3"},
           {{"--circle", "0"}, "0"},
           {{"--circle", "-4"}, "-4"},
           {{"--circle", "1e9"}, "1e9"},
           {{"--circle", "99999999999999999999"}, "count"},
           {{"--circle", "5.5"}, "5.5"},
           {{"--line", "0"}, "0"},
           {{"--rows", "2x"}, "count"},
           {{"--rows", "7"}, "2x5"},
           {{"--rows", "100x100"}, "2000"},
           {{"--circle", "8", "--rule", "spiral"}, "star"},
           {{"--rows", "2x5", "--rule", "star"}, "circle"},
           {{"--circle", "8", "--rule", "army-circle"}, "12"},
           {{"--circle", "8", "--tools", "9"}, "9"},
           {{"--circle", "3", "--tools", "4"}, "4"},
           {{"--circle", "8", "--tools", "0"}, "0"},
           {{"--circle", "8", "--order", "1 2 3"}, "4"},
           {{"--circle", "8", "--order", "1 1 2 3 4 5 6 7 8"}, "1"},
           {{"--circle", "8", "--line", "9"}, "--line"},
           {{"--layout", "/nowhere/at/all.json"}, "all.json"},
           {{}, "--circle"}}) {
    std::vector<std::string> all = {"order"};
    all.insert(all.end(), words.begin(), words.end());
    SCOPED_TRACE(testing::PrintToString(words));
    expectSentence(call(all), said);
  }
}

constexpr const char* kRing =
    R"({"format":"clampwright.settle","version":1,"part":{"shape":"annulus","inner_radius_mm":60,)"
    R"("outer_radius_mm":110,"thickness_mm":20,"modulus_GPa":205,"poisson":0.3},"gasket":{"shape":"annulus",)"
    R"("inner_radius_mm":62,"outer_radius_mm":80,"stiffness_N_per_m":1e9},"bolts":{"count":8,)"
    R"("circle_radius_mm":92.5,"hole_mm":17.5,"bearing_mm":22.5,"stiffness_N_per_m":3.77e8},"target_N":50000,)"
    R"("passes":[{"share":0.3,"order":[1,5,3,7,2,6,4,8]},{"share":1,"order":[1,5,3,7,2,6,4,8]}]})";

/// A file with the settle command run over it.
class SettleCommand : public testing::Test {
 protected:
  Call settle(const std::string& text) const {
    std::ofstream(m_folder.file("joint.json")) << text;
    return call({"--json", "settle", m_folder.file("joint.json")});
  }
  static std::string ringWith(const std::string& from, const std::string& to) {
    std::string out = kRing;
    EXPECT_NE(out.find(from), std::string::npos) << from;
    return out.replace(out.find(from), from.size(), to);
  }
  void expectRefused(const std::string& from, const std::string& to, const std::string& said) const {
    SCOPED_TRACE(to);
    expectSentence(settle(ringWith(from, to)), said);
  }
  static std::vector<double> numbers(const Json& list) {
    std::vector<double> out;
    for (const Json& item : *list.array()) out.push_back(numberOf(item.number()->text));
    return out;
  }

 private:
  TemporaryFolder m_folder;
};

TEST_F(SettleCommand, AnswersThePassesOfTheFile) {
  const Call made = settle(kRing);
  ASSERT_EQ(made.exit, 0) << made.err;
  const Json answer = made.json();
  const Json::Array& passes = *answer.find("passes")->array();
  ASSERT_EQ(passes.size(), 2U);
  for (const Json& pass : passes) {
    const std::vector<double> loads = numbers(*pass.find("loads_N"));
    ASSERT_EQ(loads.size(), 8U);
    const auto [least, most] = std::minmax_element(loads.begin(), loads.end());
    double sum = 0;
    for (const double load : loads) sum += load;
    EXPECT_NEAR(numberOf(pass.find("mean_N")->number()->text), sum / 8, 1e-6);
    EXPECT_EQ(numberOf(pass.find("min_N")->number()->text), *least);
    EXPECT_EQ(numberOf(pass.find("max_N")->number()->text), *most);
    EXPECT_NEAR(numberOf(pass.find("spread")->number()->text), (*most - *least) / (sum / 8), 1e-12);
  }
  // The last bolt of the last pass has just been brought to its target.
  EXPECT_NEAR(numbers(*passes[1].find("loads_N"))[7], 50'000, 1e-6);
  EXPECT_EQ(answer.find("flexibility_m_per_N")->array()->size(), 8U);
}

TEST_F(SettleCommand, AFlexibilityInPlaceOfPartAndGasketGivesTheSameLoads) {
  const Json whole = settle(kRing).json();
  const std::string text = kRing;
  const auto from = text.find("\"part\""), to = text.find("\"bolts\"");
  // The heads' squeeze stands in the matrix, so the bolts go in bare.
  const std::string file = text.substr(0, from) +
                           "\"flexibility_m_per_N\":" + canonical(*whole.find("flexibility_m_per_N")) + "," +
                           text.substr(to);
  const Call made = settle(file);
  ASSERT_EQ(made.exit, 0) << made.err;
  const std::vector<double> a = numbers(*whole.find("passes")->array()->back().find("loads_N"));
  const std::vector<double> b = numbers(*made.json().find("passes")->array()->back().find("loads_N"));
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_NEAR(a[i], b[i], 1e-6 * 50'000) << i;
}

TEST_F(SettleCommand, TwoSpringsByHand) {
  // Two bolts of stiffness k on C = [[a, b], [b, a]]: bolt 2 pulled to T unloads bolt 1 by T·S12/S22 with
  // S = (1/k + C)^-1, that is by T·b/(1/k + a) while bolt 1's nut stands still.
  const Call made = settle(
      R"({"format":"clampwright.settle","version":1,"flexibility_m_per_N":[[2e-9,1e-9],[1e-9,2e-9]],)"
      R"("bolts":{"count":2,"stiffness_N_per_m":5e8},"target_N":10000,"passes":[{"share":1,"order":[1,2]}]})");
  ASSERT_EQ(made.exit, 0) << made.err;
  const std::vector<double> loads = numbers(*made.json().find("passes")->array()->front().find("loads_N"));
  EXPECT_NEAR(loads[0], 10'000 * (1 - 1e-9 / 4e-9), 1e-6);
  EXPECT_NEAR(loads[1], 10'000, 1e-6);
}

TEST_F(SettleCommand, TakesRectanglesPositionsAndBands) {
  const Call made = settle(
      R"({"format":"clampwright.settle","version":1,"part":{"shape":"rectangle","length_mm":120,"width_mm":80,)"
      R"("thickness_mm":8,"modulus_GPa":70},"gasket":{"bands":[{"x_mm":[-46,46],"y_mm":[-26,26],"sign":1},)"
      R"({"x_mm":[-40,40],"y_mm":[-20,20],"sign":-1}],"stiffness_N_per_m":2e8,"lifts_off":true},)"
      R"("bolts":{"positions_mm":[[50,30],[-50,30],[-50,-30],[50,-30]],"hole_mm":6.6,"bearing_mm":10,)"
      R"("stiffness_N_per_m":1.4e8,"go_slack":true},"target_N":4000,"snug_share":0.05,)"
      R"("passes":[{"share":1,"order":[1,3,2,4]}]})");
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_EQ(numbers(*made.json().find("passes")->array()->front().find("loads_N")).size(), 4U);
}

TEST_F(SettleCommand, RefusesInASentence) {
  expectRefused("\"count\":8", "\"count\":2", "three bolts or more");
  expectRefused("\"count\":8", "\"count\":0", "1 to 128");
  expectRefused("\"count\":8", "\"count\":-8", "-8");
  expectRefused("\"count\":8", "\"count\":8.5", "whole number");
  expectRefused("\"count\":8", "\"count\":9", "bolt 9 is missing");
  expectRefused("\"circle_radius_mm\":92.5", "\"circle_radius_mm\":0", "place of bolt 1");
  expectRefused("\"circle_radius_mm\":92.5", "\"circle_radius_mm\":-92.5", "circle_radius");
  expectRefused("\"circle_radius_mm\":92.5", "\"circle_radius_mm\":1e9", "circle_radius");
  expectRefused("\"circle_radius_mm\":92.5", "\"circle_radius_mm\":105", "does not rest wholly");
  expectRefused("\"count\":8,\"circle_radius_mm\":92.5", "\"positions_mm\":[[90,0],[90,0],[0,90]]",
                "place of bolt 1");
  expectRefused("\"count\":8,\"circle_radius_mm\":92.5", "\"positions_mm\":[[1e9,0],[0,90],[0,-90]]",
                "does not rest");
  expectRefused("\"count\":8,\"circle_radius_mm\":92.5", "\"positions_mm\":[[90,0,1],[0,90],[0,-90]]",
                "[x, y]");
  expectRefused("\"count\":8,\"circle_radius_mm\":92.5", "\"positions_mm\":7", "positions_mm");
  expectRefused("3.77e8", "0", "bolts.stiffness");
  expectRefused("3.77e8", "-1", "bolts.stiffness");
  expectRefused("3.77e8", "\"stiff\"", "bolts.stiffness_N_per_m");
  expectRefused("\"stiffness_N_per_m\":1e9", "\"stiffness_N_per_m\":0", "gasket");
  expectRefused("1e9", "1e999", "not valid JSON");
  expectRefused("\"inner_radius_mm\":62,\"outer_radius_mm\":80",
                "\"inner_radius_mm\":62,\"outer_radius_mm\":180", "reaches beyond the part");
  expectRefused("\"thickness_mm\":20", "\"thickness_mm\":-20", "part.thickness");
  expectRefused("\"thickness_mm\":20", "\"thickness_mm\":null", "part.thickness_mm");
  expectRefused("\"thickness_mm\":20,", "", "part.thickness_mm");
  expectRefused("\"thickness_mm\":20", "\"thickness_mm\":20,\"colour\":\"red\"", "colour");
  expectRefused("\"target_N\":50000", "\"target_N\":-1", "target");
  expectRefused("\"share\":0.3", "\"share\":0", "share");
  expectRefused("[1,5,3,7,2,6,4,8]", "[1,5,3,7,2,6,4]", "bolt 8 is missing");
  expectRefused("[1,5,3,7,2,6,4,8]", "[1,5,3,7,2,6,4,4]", "bolt 4 comes twice");
  expectRefused("[1,5,3,7,2,6,4,8]", "[1,5,3,7,2,6,4,9]", "9");
  expectRefused("\"shape\":\"annulus\"", "\"shape\":\"banana\"", "banana");
  expectRefused("clampwright.settle", "clampwright.sheet", "another format");
  expectRefused("\"version\":1", "\"version\":1.5", "version");
  expectRefused("\"target_N\":50000", "\"target_N\":50000,\"target_N\":50000", "twice");
  expectRefused("\"target_N\":50000", "\"target_N\":50000,\"extra\":1", "extra");
  expectRefused("\"bolts\"", "\"flexibility_m_per_N\":[[1e-9]],\"bolts\"", "leave one of them out");
  expectSentence(settle(ringWith("\"version\":1", "\"version\":2")), "newer", 3);
  expectSentence(settle("PK\x03\x04"), "JSON");
  expectSentence(settle(""), "JSON");
  expectSentence(settle("[]"), "object");
  expectSentence(settle(std::string(100'000, '[')), "deeper");
  expectSentence(call({"settle", "/nowhere/at/all.json"}), "all.json");
}

TEST_F(SettleCommand, RefusesAFlexibilityThatIsNone) {
  const auto withMatrix = [this](const std::string& matrix) {
    return settle(
        R"({"format":"clampwright.settle","version":1,"flexibility_m_per_N":)" + matrix +
        R"(,"bolts":{"count":2,"stiffness_N_per_m":5e8},"target_N":10000,"passes":[{"share":1,"order":[1,2]}]})");
  };
  expectSentence(withMatrix("[[2e-9,1e-9],[1e-9]]"), "this row holds 1 numbers, not 2");
  expectSentence(withMatrix("[[2e-9,1e-9],[3e-9,2e-9]]"), "across the diagonal");
  expectSentence(withMatrix("[[1e-9,2e-9],[2e-9,1e-9]]"), "positive definite");
  expectSentence(withMatrix("[[0,0],[0,0]]"), "positive definite");
  expectSentence(withMatrix("[[2e-9]]"), "2 bolts do not fit");
  expectSentence(withMatrix("[]"), "bolts");
  expectSentence(withMatrix("[[2e-9,\"x\"],[1e-9,2e-9]]"), "not a number");
}

}  // namespace
}  // namespace cw
