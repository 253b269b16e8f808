#include "core/joint/settling_course.h"

#include <algorithm>
#include <cmath>

#include "core/joint/settling_check.h"
#include "core/joint/settling_springs.h"
#include "core/joint/settling_tilt.h"

namespace cw {
namespace {

SettlingSummary summaryOf(double share, std::vector<Force> loads) {
  SettlingSummary out;
  out.share = share;
  const auto count = static_cast<double>(loads.size());
  for (const Force load : loads) out.mean += load / count;
  double squares = 0;
  for (const Force load : loads) squares += std::pow((load - out.mean).si(), 2);
  const auto [least, most] = std::minmax_element(loads.begin(), loads.end());
  out.least = *least;
  out.most = *most;
  out.spread = (out.most - out.least) / out.mean;
  out.deviation = loads.size() > 1 ? std::sqrt(squares / (count - 1)) / out.mean.si() : 0;
  out.loads = std::move(loads);
  return out;
}

}  // namespace

Result<SettlingCourse> settle(const SettlingJoint& joint) {
  CW_CHECK(checkSettling(joint));
  const SettlingModel model = settlingModel(joint);
  SettlingSprings springs(model);
  const FaceFit faces(model.places);
  SettlingCourse course;
  if (joint.snugShare > 0) {
    std::vector<Force> snug;
    for (int i = 0; i < springs.bolts(); ++i) snug.push_back(joint.snugShare * targetOf(joint, i));
    CW_CHECK(springs.drawTogether(snug));
  }
  for (std::size_t pass = 0; pass < joint.passes.size(); ++pass) {
    Angle worstTilt;
    Length worstGap;
    for (const int number : joint.passes[pass].order) {
      const int bolt = number - 1;
      const Force goal = joint.passes[pass].share * targetOf(joint, bolt);
      const bool moved = !springs.started(bolt) || springs.load(bolt) < goal;
      if (moved) CW_CHECK(springs.pull(bolt, goal));
      const FaceState face = faces.of(springs);
      course.steps.push_back(
          {static_cast<int>(pass) + 1, number, moved, springs.loads(), face.gapDifference, face.tilt});
      worstTilt = std::max(worstTilt, face.tilt);
      worstGap = std::max(worstGap, face.gapDifference);
    }
    course.passes.push_back(summaryOf(joint.passes[pass].share, springs.loads()));
    course.passes.back().worstTilt = worstTilt;
    course.passes.back().worstGapDifference = worstGap;
  }
  return course;
}

}  // namespace cw
