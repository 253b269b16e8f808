// Bad input: a sentence where the eye is, never a number.
#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

using Inputs = std::vector<std::pair<const char*, const char*>>;

const Inputs kClamp{
    {"torque", "25 Nm"}, {"thread", "M6"}, {"grade", "8.8"}, {"condition", "dry"}, {"deviation", "4 %"}};
const Inputs kSetting{{"aim", "30 Nm"}, {"graduation", "1 Nm"}, {"length", "10 in"}, {"offset", "3 in"}};
const Inputs kStripping{
    {"thread", "M6"}, {"grade", "8.8"}, {"material", "grey iron"}, {"engagement", "6 mm"}};

struct Refusal {
  const char* figure;
  const Inputs& good;
  Inputs bad;  ///< typed over the good ones; the first is the one that is refused
};

const Refusal kRefusals[] = {
    {"clamp", kClamp, {{"torque", "-25 Nm"}}},
    {"clamp", kClamp, {{"torque", "0 Nm"}}},
    {"clamp", kClamp, {{"torque", "nan Nm"}}},
    {"clamp", kClamp, {{"torque", "inf Nm"}}},
    {"clamp", kClamp, {{"torque", "1,200 Nm"}}},
    {"clamp", kClamp, {{"torque", "25 lb"}}},
    {"clamp", kClamp, {{"torque", "25 kN"}}},
    {"clamp", kClamp, {{"torque", "4000 Nm"}}},
    {"clamp", kClamp, {{"thread", "M6.5"}}},
    {"clamp", kClamp, {{"grade", "SAE 5"}}},
    {"clamp", kClamp, {{"grade", "99.9"}}},
    {"clamp", kClamp, {{"condition", "µ 0.6"}}},
    {"clamp", kClamp, {{"condition", "µ 0"}}},
    {"clamp", kClamp, {{"condition", "K -0.2"}}},
    {"clamp", kClamp, {{"deviation", "120 %"}}},
    {"clamp", kClamp, {{"deviation", "4"}}},
    {"setting", kSetting, {{"angle", "181°"}}},
    {"setting", kSetting, {{"angle", "-10°"}}},
    {"setting", kSetting, {{"offset", "10 in"}, {"angle", "180°"}}},
    {"setting", kSetting, {{"offset", "-3 in"}}},
    {"setting", kSetting, {{"length", "0 in"}}},
    {"setting", kSetting, {{"length", ""}}},
    {"setting", kSetting, {{"graduation", "50 Nm"}}},
    {"setting", kSetting, {{"graduation", "0 Nm"}}},
    {"setting", kSetting, {{"tolerance", "31 to 35 Nm"}}},
    {"setting", kSetting, {{"rule", ""}, {"prevailing", "2 Nm"}}},
    {"stripping", kStripping, {{"engagement", "-1 mm"}}},
    {"stripping", kStripping, {{"engagement", "20 mm"}, {"depth", "12 mm"}}},
    {"stripping", kStripping, {{"material", "cheese"}}},
};

TEST_F(FiguresDesk, WhatIsBadIsAnsweredByOneSentenceAndNoNumber) {
  for (const Refusal& refusal : kRefusals) {
    SCOPED_TRACE(std::string(refusal.figure) + ": " + refusal.bad.front().first + " = " +
                 refusal.bad.front().second);
    show(refusal.figure);
    clearInputs();
    for (const auto& [input, text] : refusal.good) type(input, text);
    EXPECT_FALSE(number().empty()) << "good before: " << said("outcomeSaid");
    for (const auto& [input, text] : refusal.bad) type(input, text);
    EXPECT_EQ(number(), "");
    const std::string sentence = found(refusal.bad.front().first);
    EXPECT_THAT(sentence, testing::MatchesRegex("[^a-z].*[.]")) << "capital to full stop";
    EXPECT_THAT(sentence, testing::Not(testing::HasSubstr("%1")));
  }
}

}  // namespace
}  // namespace cw
