#include "core/joint/losses.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

/// Micrometres in the threads, under each of head and nut, and in each inner interface.
struct Flattening {
  double threads;
  double bearing;
  double interface;
};

constexpr Flattening kFlattening[3][2] = {
    {{3, 2.5, 1.5}, {3, 3, 2}}, {{3, 3, 2}, {3, 4.5, 2.5}}, {{3, 4, 3}, {3, 6.5, 3.5}}};

Result<void> checkCount(const std::string& place, int count) {
  if (count >= 0) return {};
  return fail(ErrorCode::OutOfRange, place, std::to_string(count),
              {"%1 is no count", {std::to_string(count)}}, "give zero or more");
}

Result<void> checkJoint(const JointStiffness& joint) {
  CW_CHECK(checkPositive("bolt stiffness", joint.bolt, kKilonewtonPerMillimetre));
  return checkPositive("member stiffness", joint.members, kKilonewtonPerMillimetre);
}

Result<void> checkExpansion(const std::string& place, double perKelvin) {
  CW_CHECK(checkFinite(place, perKelvin));
  if (perKelvin >= 0 && perKelvin <= 1e-4) return {};
  const std::string given = significant(perKelvin, 3);
  return fail(ErrorCode::OutOfRange, place, given, {"%1 per kelvin is no expansion of a metal", {given}},
              "give a value like 0.0000115 per kelvin");
}

double compliance(const JointStiffness& joint) {
  return 1 / joint.bolt.si() + 1 / joint.members.si();
}

Working giveJoint(const JointStiffness& joint) {
  Working working;
  working.give("kb", "bolt stiffness", joint.bolt, kKilonewtonPerMillimetre, "stated");
  working.give("km", "member stiffness", joint.members, kKilonewtonPerMillimetre, "stated");
  return working;
}

}  // namespace

Result<Worked<Length>> embedding(Roughness roughness, LoadKind kind, int bearings, int interfaces) {
  CW_CHECK(checkCount("bearing faces", bearings));
  CW_CHECK(checkCount("interfaces", interfaces));
  const Flattening& row = kFlattening[static_cast<int>(roughness)][static_cast<int>(kind)];
  const double sum = row.threads + bearings * row.bearing + interfaces * row.interface;
  const std::string source = "VDI 2230 part 1, table 5 (from memory)";
  Working working;
  working.formula = "fZ = threads + bearings·head + interfaces·inner";
  working.give("f_t", "threads", millimetres(row.threads / 1000), kMicrometre, source);
  working.give("f_h", "under head or nut", millimetres(row.bearing / 1000), kMicrometre, source);
  working.give("f_i", "each inner interface", millimetres(row.interface / 1000), kMicrometre, source);
  working.give("n_h", "faces under head and nut", bearings, "stated");
  working.give("n_i", "inner interfaces", interfaces, "stated");
  working.step("fZ", "f_t+n_h·f_h+n_i·f_i", millimetres(sum / 1000), kMicrometre);
  return Worked<Length>{millimetres(sum / 1000), std::move(working)};
}

Result<Worked<Force>> embeddingLoss(Length embedding, const JointStiffness& joint) {
  CW_CHECK(checkNotNegative("embedding", embedding, kMicrometre));
  CW_CHECK(checkJoint(joint));
  const Force loss = newtons(embedding.si() / compliance(joint));
  Working working = giveJoint(joint);
  working.formula = "FZ = fZ/(1/kb + 1/km)";
  working.give("fZ", "embedding", embedding, kMicrometre, "stated");
  working.step("FZ", "fZ/(1/kb+1/km)", loss, kNewton);
  working.sources = {"VDI 2230 part 1 (from memory)"};
  return Worked<Force>{loss, std::move(working)};
}

Result<Worked<Force>> thermalChange(Length grip, TemperatureDifference warming, const Expansion& expansion,
                                    const JointStiffness& joint) {
  CW_CHECK(checkPositive("grip length", grip, kMillimetre));
  CW_CHECK(checkFinite("temperature change", warming.si()));
  CW_CHECK(checkExpansion("bolt expansion", expansion.bolt));
  CW_CHECK(checkExpansion("member expansion", expansion.members));
  CW_CHECK(checkJoint(joint));
  const Force change =
      newtons(grip.si() * warming.si() * (expansion.members - expansion.bolt) / compliance(joint));
  Working working = giveJoint(joint);
  working.formula = "ΔF = l·ΔT·(αm − αb)/(1/kb + 1/km)";
  working.give("l", "grip", grip, kMillimetre, "stated");
  working.give("ΔT", "warming, kelvin", warming.si(), "stated");
  working.give("αm", "expansion of the parts, per million and kelvin", expansion.members * 1e6, "stated");
  working.give("αb", "expansion of the bolt, per million and kelvin", expansion.bolt * 1e6, "stated");
  working.step("ΔF", "l·ΔT·(αm-αb)/1000/(1/kb+1/km)", change, kNewton);
  working.validity = {"all of the joint warms alike; moduli constant"};
  working.sources = {"VDI 2230 part 1 (from memory)"};
  return Worked<Force>{change, std::move(working)};
}

}  // namespace cw
