#pragma once
#include "core/procedure/quick_joint.h"
#include "tests/support/need.h"
#include "tests/support/sample_job.h"

namespace cw::test {

/// Six M8 screws of grade 8.8 in a circle, 21 N·m with oil: the guard has nothing to say against it.
inline QuickJoint quickCover() {
  QuickJoint out;
  out.name = "Inspection cover";
  out.layout.shape = Circle{6, millimetres(80), {}, 1, Direction::Clockwise};
  out.fastener.kind = FastenerKind::Screw;
  out.fastener.thread = "M8";
  out.fastener.grade = "8.8";
  out.specification.printed = "21 Nm";
  out.specification.low = StatedTorque{"19", &kNewtonMetre};
  out.specification.aim = StatedTorque{"21", &kNewtonMetre};
  out.specification.high = StatedTorque{"23", &kNewtonMetre};
  out.specification.why = "About 10 % either way is assumed.";
  out.specification.condition = "oiled";
  out.source = {"", "Invented manual", "41", "2", "", {}};
  out.passes.shares = {0.5, 1};
  out.passes.check.reset();
  out.by = "mira";
  return out;
}

/// The same, printed in inch-pounds by a slip: 21 in·lbf is far below what an M8 screw is tightened to.
inline QuickJoint swappedCover() {
  QuickJoint out = quickCover();
  out.specification.printed = "21 in-lb";
  for (auto* torque : {&out.specification.low, &out.specification.aim, &out.specification.high})
    (*torque)->unit = inLbf("1").unit;
  return out;
}

inline Sheet quickSheetOf(const QuickJoint& joint = quickCover()) {
  return need(quickSheet(joint, *Id::parse("01900000-0000-7000-8000-00000000000a")));
}

}  // namespace cw::test
