// clamp, guard, recondition, setting and strip: published answers through the command line, and what each
// says of bad input.
#include <gmock/gmock.h>

#include "tests/app/command_line/call.h"

namespace cw {
namespace {

using testing::HasSubstr;

Call json(std::vector<std::string> words) {
  words.insert(words.begin(), "--json");
  return call(std::move(words));
}

/// One sentence on standard error, nothing on standard output, exit 2.
void expectRefusal(const std::vector<std::string>& words, const std::string& said) {
  const Call made = call(words);
  const std::string what = testing::PrintToString(words);
  EXPECT_EQ(made.exit, 2) << what;
  EXPECT_EQ(made.out, "") << what;
  EXPECT_EQ(std::count(made.err.begin(), made.err.end(), '\n'), 1) << what << made.err;
  EXPECT_THAT(made.err, HasSubstr(said)) << what;
}

TEST(ClampCommand, GivesThePreloadAndTorqueOfVdi2230) {
  // M12, 8.8, µ = 0.14, 90 % utilisation: FM = 41.9 kN (VDI 2230 based handbook example). The torque of table
  // A1, 93 N·m, is for its hexagon face.
  const Call made = json({"clamp", "--thread", "M12", "--grade", "8.8", "--utilisation", "90%", "--friction",
                          "0.14", "--face", "hex"});
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_NEAR(made.number("clamp_load_N"), 41'900, 50);
  EXPECT_NEAR(made.number("torque_Nm"), 93, 0.5);
  EXPECT_NEAR(made.number("utilisation"), 0.9, 1e-9);
}

TEST(ClampCommand, GivesTheTorqueOfANutFactor) {
  // Shigley, Mechanical Engineering Design, 9th ed., example 8-3(b): 3/4-16, Fi = 25 kip, K = 0.2: 3750
  // lbf·in.
  const Call made = json(
      {"clamp", "--thread", "3/4-16 UNF", "--grade", "SAE 5", "--load", "25 kip", "--nut-factor", "0.2"});
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_NEAR(made.number("torque_Nm"), 3750 * 0.1129848290276167, 1e-9);
  // Example 8-3(a): 67.02 kpsi axial stress, over the 85 ksi proof strength of grade 5.
  EXPECT_NEAR(made.number("proof_fraction"), 67.02 / 85, 1e-4);
}

TEST(ClampCommand, GivesTheLoadOfAShareOfProof) {
  // Shigley, 8th ed., solution 8-36: 1-1/4-7, 75 % of 74 kpsi on 0.969 in²: 53.78 kip.
  const Call made =
      json({"clamp", "--thread", "1 1/4-7", "--grade", "SAE 5", "--proof", "75%", "--condition", "dry"});
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_NEAR(made.number("clamp_load_N") / 4448.2216152605, 53.78, 0.005);
}

TEST(ClampCommand, ThereAndBackIsTheSame) {
  for (const char* condition : {"dry", "oiled", "moly paste"}) {
    const Call there = json({"clamp", "--thread", "M10", "--grade", "10.9", "--load", "30 kN", "--condition",
                             condition, "--tool-deviation", "4%", "--prevailing", "4 N.m"});
    ASSERT_EQ(there.exit, 0) << there.err;
    const std::string torque = std::to_string(there.number("torque_Nm")) + " N.m";
    const Call back = json({"clamp", "--thread", "M10", "--grade", "10.9", "--torque", torque, "--condition",
                            condition, "--tool-deviation", "4%", "--prevailing", "4 N.m"});
    ASSERT_EQ(back.exit, 0) << back.err;
    EXPECT_NEAR(back.number("clamp_load_N"), 30'000, 0.5);
    EXPECT_LT(back.number("clamp_load_low_N"), 29'000);
    EXPECT_GT(back.number("clamp_load_high_N"), 31'000);
    for (const char* key : {"clamp_load_low_N", "clamp_load_high_N", "yield_fraction"})
      EXPECT_NEAR(back.number(key), there.number(key), 1e-4 * there.number(key)) << key;
  }
}

TEST(ClampCommand, ShowsThreeUnitsBandCautionsAndOnRequestTheWorking) {
  const std::vector<std::string> words = {"clamp",    "--thread",    "M8",           "--grade", "8.8",
                                          "--torque", "18.5 ft.lbf", "--nut-factor", "0.2"};
  const Call plain = call(words);
  EXPECT_THAT(plain.out, HasSubstr("18.5\u202fft·lbf = 25.1\u202fN·m = 222\u202fin·lbf"));
  EXPECT_THAT(plain.out, HasSubstr("kN = "));
  EXPECT_THAT(plain.out, HasSubstr("caution: friction and tool are taken as exact"));
  EXPECT_THAT(plain.out, testing::Not(HasSubstr("K·d")));
  std::vector<std::string> asked = words;
  asked.emplace_back("--working");
  EXPECT_THAT(call(asked).out, HasSubstr("K·d"));
  const Json working = json(words).json();
  ASSERT_NE(working.find("working"), nullptr);
  EXPECT_GT(working.find("working")->find("steps")->array()->size(), 3U);
}

TEST(ClampCommand, RefusesInASentence) {
  const auto clamp = [](std::vector<std::string> more) {
    std::vector<std::string> words = {"clamp", "--thread", "M8", "--grade", "8.8"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
  };
  expectRefusal(clamp({"--torque", "25 N.m"}), "the condition of the threads is not stated");
  expectRefusal(clamp({"--condition", "dry"}), "--torque");
  expectRefusal(clamp({"--torque", "25 N.m", "--load", "17 kN", "--condition", "dry"}), "--load");
  expectRefusal(clamp({"--torque", "25 N.m", "--condition", "dry", "--friction", "0.1"}),
                "more than one way");
  expectRefusal(clamp({"--torque", "25", "--condition", "dry"}), "25 in·lbf");
  expectRefusal(clamp({"--torque", "-25 N.m", "--condition", "dry"}), "negative");
  expectRefusal(clamp({"--torque", "nan N.m", "--condition", "dry"}), "not a number");
  expectRefusal(clamp({"--torque", "4000 N.m", "--condition", "dry"}), "4000");
  expectRefusal(clamp({"--torque", "25 N.m", "--friction", "0"}), "0");
  expectRefusal(clamp({"--torque", "25 N.m", "--friction", "0.51"}), "0.51");
  expectRefusal(clamp({"--torque", "25 N.m", "--friction", "0.2..0.1"}), "rising order");
  expectRefusal(clamp({"--torque", "25 N.m", "--friction", "NaN"}), "NaN");
  expectRefusal(clamp({"--torque", "25 N.m", "--bearing-friction", "0.1"}), "add --friction");
  expectRefusal(clamp({"--torque", "25 N.m", "--nut-factor", "1.1"}), "1.1");
  expectRefusal(clamp({"--torque", "25 N.m", "--nut-factor", "0.01"}), "pitch of M8");
  expectRefusal(clamp({"--torque", "25 N.m", "--condition", "dryish"}), "dry");
  expectRefusal(clamp({"--torque", "25 N.m", "--condition", "dry", "--tool-deviation", "100%"}), "deviation");
  expectRefusal(clamp({"--torque", "25 N.m", "--condition", "dry", "--tool-deviation", "4"}),
                "write it like");
  expectRefusal(clamp({"--torque", "5 N.m", "--condition", "dry", "--prevailing", "6 N.m"}), "prevailing");
  expectRefusal(clamp({"--proof", "0%", "--condition", "dry"}), "0");
  expectRefusal(clamp({"--proof", "-75%", "--condition", "dry"}), "-75");
  expectRefusal(clamp({"--load", "-1 kN", "--condition", "dry"}), "negative");
  expectRefusal(clamp({"--torque", "25 N.m", "--condition", "dry", "--face", "wing"}), "wing");
  expectRefusal({"clamp", "--thread", "M8", "--proof", "75%", "--condition", "dry"}, "--grade");
  expectRefusal({"clamp", "--thread", "M8", "--grade", "SAE 5", "--torque", "25 N.m", "--condition", "dry"},
                "SAE 5");
  expectRefusal({"clamp", "--thread", "3/8-16", "--grade", "8.8", "--torque", "25 N.m", "--condition", "dry"},
                "8.8");
  expectRefusal({"clamp", "--thread", "M3", "--grade", "A2-999", "--torque", "1 N.m", "--condition", "dry"},
                "A2-999");
  expectRefusal(
      {"clamp", "--thread", "2-4.5", "--grade", "SAE 8", "--torque", "10 N.m", "--condition", "dry"},
      "SAE 8");
}

TEST(GuardCommand, TellsUnitsApartAndSaysWhichWouldFit) {
  // 60 in·lbf is what FAA AC 43.13-1B table 7-1 gives a 1/4-28 bolt (50 to 70); 60 ft·lbf breaks it.
  const std::vector<std::string> fastener = {"guard", "--thread",    "1/4-28", "--grade",
                                             "SAE 5", "--condition", "dry"};
  const auto guard = [&](const std::string& torque) {
    std::vector<std::string> words = fastener;
    words.insert(words.end(), {"--torque", torque});
    return json(words);
  };
  const Call right = guard("60 in.lbf");
  EXPECT_EQ(right.exit, 0) << right.err;
  EXPECT_EQ(right.word("verdict"), "in-band");
  const Call wrong = guard("60 ft.lbf");
  EXPECT_EQ(wrong.exit, 1);
  EXPECT_EQ(wrong.word("verdict"), "past-yield");
  EXPECT_EQ(wrong.word("suggestion"), "60 lbf.in");
  EXPECT_LT(wrong.number("band_low_Nm"), wrong.number("band_high_Nm"));
  EXPECT_NEAR(wrong.number("band_high_Nm"), right.number("band_high_Nm"), 1e-12);
  const Call low = guard("0.6 in.lbf");
  EXPECT_EQ(low.exit, 1);
  EXPECT_EQ(low.word("verdict"), "below-band");
}

TEST(GuardCommand, DoesNotGuessWhereItHasNoGround) {
  const Call unmarked = json({"guard", "--thread", "M8", "--torque", "25 N.m"});
  EXPECT_EQ(unmarked.exit, 0);
  EXPECT_EQ(unmarked.word("verdict"), "not-judged");
  const Call plug =
      json({"guard", "--thread", "M18x1.5", "--grade", "8.8", "--torque", "500 N.m", "--part", "plug"});
  EXPECT_EQ(plug.exit, 0) << plug.err;
  EXPECT_EQ(plug.word("verdict"), "not-judged");
  ASSERT_NE(plug.json().find("band_high_Nm"), nullptr);
  EXPECT_TRUE(plug.json().find("band_high_Nm")->isNull());
}

TEST(GuardCommand, ALimitingCastingLowersTheBand) {
  const auto guard = [](const std::vector<std::string>& more) {
    std::vector<std::string> words = {"guard",    "--thread", "M6",          "--grade", "8.8",
                                      "--torque", "10 N.m",   "--condition", "dry"};
    words.insert(words.end(), more.begin(), more.end());
    return json(words);
  };
  const Call nut = guard({});
  const Call casting = guard({"--tapped", "cast aluminium A356-T6", "--engagement", "4 mm"});
  EXPECT_EQ(nut.word("limit"), "bolt-yield");
  EXPECT_EQ(casting.word("limit"), "thread-stripping");
  EXPECT_LT(casting.number("band_high_Nm"), 0.7 * nut.number("band_high_Nm"));
}

TEST(GuardCommand, HoldsTwoPrintedColumnsAgainstEachOther) {
  const auto guard = [](const std::string& also) {
    return json({"guard", "--thread", "M10", "--grade", "8.8", "--torque", "40 N.m", "--condition", "oiled",
                 "--also", also});
  };
  EXPECT_EQ(guard("30 ft.lbf").word("agreement"), "agrees");
  EXPECT_EQ(guard("30 ft.lbf").exit, 0);
  EXPECT_EQ(guard("40 ft.lbf").word("agreement"), "disagrees");
  EXPECT_EQ(guard("40 ft.lbf").exit, 1);
}

TEST(GuardCommand, JudgesASettingThroughItsAdapter) {
  const auto high = [](const std::vector<std::string>& more) {
    std::vector<std::string> words = {"guard",    "--thread", "M10",         "--grade", "8.8",
                                      "--torque", "20 N.m",   "--condition", "dry"};
    words.insert(words.end(), more.begin(), more.end());
    return json(words).number("band_high_Nm");
  };
  EXPECT_NEAR(high({"--length", "10 in", "--offset", "4 in"}), high({}) * 10 / 14, 1e-9);
  EXPECT_NEAR(high({"--prevailing", "3 N.m"}), high({}) + 3, 1e-9);
}

TEST(GuardCommand, RefusesInASentence) {
  const auto guard = [](const std::string& thread, const std::string& grade, const std::string& torque) {
    return std::vector<std::string>{"guard", "--thread", thread, "--grade", grade, "--torque", torque};
  };
  expectRefusal(guard("M8", "8.8", "0 N.m"), "not above zero");
  expectRefusal(guard("M8", "8.8", "25 lb"), "ft·lbf");
  expectRefusal(guard("M8x9", "8.8", "25 N.m"), "M8x1");
  expectRefusal(guard("M8", "SAE 8", "25 N.m"), "SAE 8");
  expectRefusal(guard("3/8-16", "8.8", "25 N.m"), "8.8");
  expectRefusal({"guard", "--thread", "M8", "--grade", "8.8"}, "--torque");
  expectRefusal({"guard", "--thread", "M8", "--torque", "8 N.m", "--part", "flange"}, "plug");
  expectRefusal({"guard", "--thread", "M8", "--grade", "8.8", "--torque", "8 N.m", "--tapped", "brass"},
                "--engagement");
  expectRefusal({"guard", "--thread", "M8", "--grade", "8.8", "--torque", "8 N.m", "--also", "9 N.m"},
                "--also");
}

TEST(ReconditionCommand, ScalesByNutFactorAtEqualClampLoad) {
  const std::vector<std::string> words = {"recondition", "--torque", "30 N.m", "--thread", "M10",  "--grade",
                                          "8.8",         "--from",   "dry",    "--to",     "oiled"};
  const Call made = json(words);
  ASSERT_EQ(made.exit, 0) << made.err;
  const Call before =
      json({"clamp", "--thread", "M10", "--grade", "8.8", "--torque", "30 N.m", "--condition", "dry"});
  EXPECT_NEAR(made.number("clamp_load_N"), before.number("clamp_load_N"), 1e-6);
  const Call after = json({"clamp", "--thread", "M10", "--grade", "8.8", "--torque",
                           std::to_string(made.number("torque_Nm")) + " N.m", "--condition", "oiled"});
  EXPECT_NEAR(after.number("clamp_load_N"), before.number("clamp_load_N"), 1);
  EXPECT_LT(made.number("torque_low_Nm"), made.number("torque_Nm"));
  EXPECT_GT(made.number("torque_high_Nm"), made.number("torque_Nm"));
  EXPECT_LT(made.number("torque_Nm"), 30);  // oil lowers friction
  const Call said = call(words);
  EXPECT_THAT(said.out, testing::StartsWith("first choice: bring the parts into the stated condition"));
  EXPECT_THAT(said.out, HasSubstr("caution: "));
}

TEST(ReconditionCommand, RefusesInASentence) {
  const auto change = [](const std::string& from, const std::string& to,
                         const std::string& torque = "30 N.m") {
    std::vector<std::string> words = {"recondition", "--torque", torque, "--thread", "M10",
                                      "--grade",     "8.8",      "--to", to};
    if (!from.empty()) words.insert(words.end(), {"--from", from});
    return words;
  };
  expectRefusal(change("", "oiled"), "does not state the condition");
  expectRefusal(change("unknown", "oiled"), "does not state the condition");
  expectRefusal(change("dry", "dry"), "is the condition the torque is specified for");
  expectRefusal(change("dry", "clean and dry"), "is the condition the torque is specified for");
  expectRefusal(change("dry", "gravel"), "gravel");
  expectRefusal(change("dry", "oiled", "0 N.m"), "not above zero");
  expectRefusal(change("dry", "oiled", "4000 N.m"), "4000");
}

TEST(SettingCommand, AnswersTheArmysExamples) {
  // TM 1-1500-204-23-9, figure 8-16: 300 in·lbf, 10 in wrench, 4 in adapter: 214 in·lbf.
  const Call made = json({"setting", "--torque", "300 in.lbf", "--length", "10 in", "--offset", "4 in"});
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_EQ(made.word("setting"), "214.3 lbf.in");
  EXPECT_NEAR(made.number("setting_Nm"), 300 * 0.1129848290276167 * 10 / 14, 1e-12);
  // TM 9-254, figure 4-5: set to 60, 12 in wrench, 2 in adapter: 70 in·lbf.
  const Call back = json({"setting", "--setting", "60 in.lbf", "--length", "12 in", "--offset", "2 in"});
  EXPECT_EQ(back.word("applied"), "70 lbf.in");
  // TM 9-254, figure 4-6: L + E·cos 45°.
  const Call angled =
      json({"setting", "--torque", "100 in.lbf", "--length", "12 in", "--offset", "6 in", "--angle", "45"});
  EXPECT_EQ(angled.word("setting"), "73.88 lbf.in");
  EXPECT_EQ(
      json({"setting", "--torque", "100 in.lbf", "--length", "12 in", "--offset", "6 in", "--angle", "90°"})
          .word("setting"),
      "100 lbf.in");
}

TEST(SettingCommand, RoundsToTheMarksInsideTheToleranceOrRefuses) {
  const auto set = [](const std::string& graduation, const std::string& tolerance) {
    return json({"setting", "--torque", "30 N.m", "--length", "12 in", "--offset", "3 in", "--graduation",
                 graduation, "--tolerance", tolerance});
  };
  const Call fine = set("1 ft.lbf", "10%");
  ASSERT_EQ(fine.exit, 0) << fine.err;
  EXPECT_EQ(fine.word("setting"), "18 lbf.ft");  // 30 N·m = 22.13 ft·lbf, ·12/15 = 17.70
  EXPECT_NEAR(fine.number("applied_Nm"), 18 * 1.3558179483314004 * 15 / 12, 1e-9);
  const Call coarse = set("20 ft.lbf", "3%");
  EXPECT_EQ(coarse.exit, 2);
  EXPECT_EQ(coarse.out, "");
}

TEST(SettingCommand, AddsThePrevailingTorqueByTheRuleThatIsNamed) {
  // FAA AC 43.13-1B, 7-40 d: the drag torque is added: 70 + 7.
  const auto set = [](const std::string& rule) {
    return json({"setting", "--torque", "70 in.lbf", "--prevailing", "7 in.lbf", "--prevailing-rule", rule})
        .word("setting");
  };
  EXPECT_EQ(set("always-add"), "77 lbf.in");
  EXPECT_EQ(set("add-from-one-third"), "70 lbf.in");
  EXPECT_EQ(set("none"), "70 lbf.in");
}

TEST(SettingCommand, JudgesTheWrench) {
  const auto set = [](const std::string& range, const std::string& deviation) {
    return json({"setting", "--torque", "20 N.m", "--tolerance", "5%", "--graduation", "0.5 N.m",
                 "--tool-range", range, "--tool-deviation", deviation});
  };
  EXPECT_EQ(set("5..25 N.m", "2%").exit, 0);
  EXPECT_EQ(set("5..25 N.m", "4%").exit, 0);  // 1.25 : 1, warned
  EXPECT_NEAR(set("5..25 N.m", "4%").number("ratio"), 1.25, 1e-9);
  EXPECT_EQ(set("5..25 N.m", "6%").exit, 1);  // the deviation alone exceeds it
  EXPECT_EQ(set("25..100 N.m", "2%").exit, 1);
}

TEST(SettingCommand, RefusesInASentence) {
  const auto set = [](const std::vector<std::string>& more) {
    std::vector<std::string> words = {"setting", "--torque", "30 N.m"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
  };
  expectRefusal(set({"--length", "10 in", "--offset", "10 in", "--angle", "180"}), "turns nothing");
  expectRefusal(set({"--length", "10 in", "--offset", "4 in", "--angle", "181"}), "181");
  expectRefusal(set({"--length", "10 in", "--offset", "4 in", "--angle", "-1"}), "-1");
  expectRefusal(set({"--length", "10 in", "--offset", "4 in", "--angle", "north"}), "--angle");
  expectRefusal(set({"--length", "0 in", "--offset", "4 in"}), "give 1 mm to 10 m");
  expectRefusal(set({"--length", "10 in", "--offset", "-4 in"}), "give 0 mm to 10 m");
  expectRefusal(set({"--length", "10", "--offset", "4 in"}), "write 10 mm or 10 in");
  expectRefusal(set({"--length", "10 in"}), "half described");
  expectRefusal(set({"--graduation", "1 N.m"}), "--tolerance");
  expectRefusal(set({"--graduation", "0 N.m", "--tolerance", "5%"}), "graduation");
  expectRefusal(set({"--prevailing", "1 N.m"}), "go together");
  expectRefusal(set({"--prevailing", "1 N.m", "--prevailing-rule", "sometimes"}), "always-add");
  expectRefusal(set({"--prevailing", "31 N.m", "--prevailing-rule", "always-add"}), "prevailing");
  expectRefusal({"setting", "--length", "10 in", "--offset", "4 in"}, "--torque");
  expectRefusal({"setting", "--setting", "60 in.lbf"}, "no adapter");
}

TEST(StripCommand, TellsWhatFailsFirst) {
  const auto strip = [](const std::string& engagement, const std::string& tapped) {
    return json(
        {"strip", "--thread", "M10", "--grade", "8.8", "--engagement", engagement, "--tapped", tapped});
  };
  const Call shallow = strip("8 mm", "cast aluminium A356-T6");
  ASSERT_EQ(shallow.exit, 0) << shallow.err;
  EXPECT_EQ(shallow.word("failure"), "tapped-thread-strips");
  const double needed = shallow.number("needed_engagement_mm");
  EXPECT_GT(needed, 8);
  EXPECT_EQ(strip(std::to_string(needed + 0.01) + " mm", "cast aluminium A356-T6").word("failure"),
            "bolt-breaks");
  // ISO 898-1: the ultimate tensile load of M10 8.8 is 46.4 kN (58.0 mm² · 800 MPa).
  EXPECT_NEAR(strip("20 mm", "steel S355").number("load_N"), 46'400, 50);
  EXPECT_THAT(
      call({"strip", "--thread", "M5", "--grade", "8.8", "--engagement", "6 mm", "--tapped", "acetal"}).out,
      HasSubstr("caution: "));
}

TEST(StripCommand, RefusesInASentence) {
  const auto strip = [](const std::vector<std::string>& more) {
    std::vector<std::string> words = {"strip", "--thread", "M10", "--grade", "8.8"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
  };
  expectRefusal(strip({"--engagement", "12 mm"}), "--tapped");
  expectRefusal(strip({"--tapped", "brass"}), "--engagement");
  expectRefusal(strip({"--engagement", "0 mm", "--tapped", "brass"}), "not above zero");
  expectRefusal(strip({"--engagement", "-12 mm", "--tapped", "brass"}), "not above zero");
  expectRefusal(strip({"--engagement", "12", "--tapped", "brass"}), "write 12 mm or 12 in");
  expectRefusal(strip({"--engagement", "12 mm", "--tapped", "cheese"}), "cheese");
  expectRefusal(strip({"--engagement", "12 mm", "--tapped", "brass", "--thread-length", "10 mm"}),
                "longer than the thread");
  expectRefusal(strip({"--engagement", "2 m", "--tapped", "brass"}), "longer than");
  expectRefusal(strip({"--engagement", "12 mm", "--tapped", "brass", "--fit", "2A2B"}),
                "other thread system");
  expectRefusal(strip({"--engagement", "12 mm", "--tapped", "brass", "--fit", "snug"}), "6g6H");
}

}  // namespace
}  // namespace cw
