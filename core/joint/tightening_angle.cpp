#include "core/joint/tightening_angle.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

Result<void> check(Force snug, const JointStiffness& joint, const Thread& thread) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkNotNegative("snug load", snug, kKilonewton));
  CW_CHECK(checkPositive("bolt stiffness", joint.bolt, kKilonewtonPerMillimetre));
  return checkPositive("member stiffness", joint.members, kKilonewtonPerMillimetre);
}

/// Stiffness of bolt and parts one after the other.
Stiffness together(const JointStiffness& joint) {
  return newtonsPerMetre(1 / (1 / joint.bolt.si() + 1 / joint.members.si()));
}

Working angleWorking(Force snug, const JointStiffness& joint, const Thread& thread) {
  Working working;
  working.formula = "θ = 360°·(F − Fs)/P·(1/kb + 1/km)";
  working.give("P", "pitch", thread.pitch, kMillimetre, thread.provenance.source);
  working.give("Fs", "snug load", snug, kNewton, "stated");
  working.give("kb", "bolt stiffness", joint.bolt, kKilonewtonPerMillimetre, "stated");
  working.give("km", "member stiffness", joint.members, kKilonewtonPerMillimetre, "stated");
  working.step("k", "1/(1/kb+1/km)", together(joint), kKilonewtonPerMillimetre);
  working.validity = {"elastic, after snug; twist of the shank and slack in the threads left out"};
  working.sources = {"Shigley, 9th ed., turn-of-nut relation"};
  return working;
}

}  // namespace

Result<Worked<Angle>> angleAfterSnug(Force load, Force snug, const JointStiffness& joint,
                                     const Thread& thread) {
  CW_CHECK(check(snug, joint, thread));
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  CW_CHECK(checkBearable("clamp load", text(load, kKilonewton, 4), load, thread));
  if (load < snug)
    return fail(ErrorCode::OutOfRange, "clamp load", text(load, kKilonewton, 4),
                {"%1 is below the snug load %2", {text(load, kKilonewton, 4), text(snug, kKilonewton, 4)}},
                "give a clamp load above snug");
  const Angle angle = degrees(360 * ((load - snug) / together(joint) / thread.pitch));
  Working working = angleWorking(snug, joint, thread);
  working.give("F", "clamp load", load, kNewton, "stated");
  working.step("θ", "360·(F-Fs)/(1000·k)/P", angle, kDegree);
  return Worked<Angle>{angle, std::move(working)};
}

Result<Worked<Force>> loadAfterAngle(Angle angle, Force snug, const JointStiffness& joint,
                                     const Thread& thread) {
  CW_CHECK(check(snug, joint, thread));
  CW_CHECK(checkNotNegative("angle", angle, kDegree));
  const Force load = snug + together(joint) * (thread.pitch * (inDegrees(angle) / 360));
  CW_CHECK(checkBearable("angle", text(angle, kDegree, 4), load, thread));
  Working working = angleWorking(snug, joint, thread);
  working.give("θ", "turn after snug", angle, kDegree, "stated");
  working.step("F", "Fs+1000·k·P·θ/360", load, kNewton);
  return Worked<Force>{load, std::move(working)};
}

}  // namespace cw
