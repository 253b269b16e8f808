// Finite-element flexibilities by CalculiX 2.20 and the loads that plain algebra leaves on them
// (tests/data/settling/flange_fe.json).
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "core/settling/settling_course.h"
#include "core/settling/settling_model.h"
#include "tests/published/settling_flange_cases.h"

namespace cw {
namespace {

using nlohmann::json;

/// Largest difference of any bolt after any pass, as a share of the target.
double worstDifference(const SettlingCourse& course, const json& loads, double target) {
  double worst = 0;
  for (std::size_t p = 0; p < course.passes.size(); ++p)
    for (std::size_t i = 0; i < course.passes[p].loads.size(); ++i)
      worst = std::max(worst, std::abs(course.passes[p].loads[i].si() - double(loads.at(p).at(i))) / target);
  return worst;
}

json loadsOf(const json& programme) {
  json loads;
  for (const auto& pass : programme.at("passes")) loads.push_back(pass.at("loads"));
  return loads;
}

double worstOfCase(const json& from, const SettlingJoint& joint) {
  double worst = 0;
  const auto model = settlingModel(joint);
  if (!model) ADD_FAILURE() << sentence(model.error());
  for (const auto& [name, programme] : from.at("programmes").items()) {
    const auto course = settle(*model, flangeTightening(from, programme));
    if (!course) ADD_FAILURE() << sentence(course.error());
    if (course) worst = std::max(worst, worstDifference(*course, loadsOf(programme), from.at("target")));
  }
  return worst;
}

TEST(SettlingAgainstFiniteElements, TheAlgebraOnTheirFlexibilityGivesTheirLoads) {
  for (const auto& [name, from] : flangeCases().items()) {
    SettlingJoint joint = flangeJoint(from);
    joint.body = flangeMatrix(from);
    EXPECT_LT(worstOfCase(from, joint), 1e-6) << name;
  }
}

TEST(SettlingAgainstFiniteElements, SlackBoltsAgreeWithTheirComplementaritySolution) {
  int compared = 0;
  for (const auto& [name, from] : flangeCases().items()) {
    SettlingJoint joint = flangeJoint(from);
    joint.body = flangeMatrix(from);
    joint.bolts.goSlack = true;
    for (const auto& [programme, content] : from.at("programmes").items()) {
      if (!content.contains("slack_loads")) continue;
      const auto course = settle(*settlingModel(joint), flangeTightening(from, content));
      EXPECT_LT(worstDifference(*course, content.at("slack_loads"), from.at("target")), 1e-6)
          << name << " " << programme;
      ++compared;
    }
  }
  EXPECT_EQ(compared, 3);
}

TEST(SettlingAgainstFiniteElements, LoadsFromThePlateAreWithinTwoPercentOfTarget) {
  for (const auto& [name, from] : flangeCases().items()) {
    const double worst = worstOfCase(from, flangeJoint(from));
    RecordProperty("worst_percent_" + name, std::to_string(100 * worst));
    EXPECT_LT(worst, 0.02) << name;
  }
}

TEST(SettlingAgainstFiniteElements, FlexibilityOfThePlateIsCloseAtTheBoltAndItsNeighbour) {
  for (const auto& [name, from] : flangeCases().items()) {
    const Flexibility ours = *boltFlexibility(flangeJoint(from));
    const Flexibility theirs = flangeMatrix(from);
    EXPECT_NEAR(ours(0, 0) / theirs(0, 0), 1, 0.015) << name;
    EXPECT_NEAR((ours(1, 0) - theirs(1, 0)) / theirs(0, 0), 0, 0.01) << name;
  }
}

}  // namespace
}  // namespace cw
