#include "core/joint/resistance.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kWidestFace = 20;  ///< in diameters; no head or washer is wider (common practice, no source)
constexpr Range kUnstatedFriction{0.08, 0.14, 0.24};

Result<void> checkFace(const std::optional<BearingFace>& face, const Thread& thread) {
  if (!face) return {};
  CW_CHECK(checkPositive("bearing face, hole", face->hole, kMillimetre));
  if (!(face->outer <= kWidestFace * thread.diameter))
    return fail(ErrorCode::OutOfRange, "bearing face", face->name,
                {"%1 is no bearing diameter for %2", {text(face->outer, kMillimetre), thread.designation}},
                "give the outer diameter of the contact ring");
  if (face->outer > face->hole) return {};
  return fail(ErrorCode::OutOfRange, "bearing face", face->name,
              "the bearing diameter is not larger than the hole",
              "give the outer diameter of the contact ring");
}

template <class Check>
Result<void> checkRange(const std::string& place, const Range& range, Check check) {
  for (double value : {range.low, range.typical, range.high}) CW_CHECK(check(place, value));
  if (range.low <= range.typical && range.typical <= range.high) return {};
  return fail(ErrorCode::OutOfRange, place, significant(range.typical, 4),
              "low, typical and high are not in rising order", "give them in rising order");
}

ResistanceRange onFace(const Thread& thread, const std::optional<BearingFace>& face, std::string source) {
  ResistanceRange range;
  range.meanBearing = face ? meanBearingDiameter(*face) : assumedMeanBearing(thread);
  if (face) range.bearingSource = face->name + ", " + face->provenance.source;
  range.source = std::move(source);
  return range;
}

Resistance byNutFactor(double factor, const Thread& thread, Length bearing) {
  const Length arm = factor * thread.diameter;
  const double friction = commonFriction(thread, arm, bearing);
  return {arm, {friction, friction}};
}

Resistance byFriction(Friction friction, const Thread& thread, Length bearing) {
  return {tighteningArm(thread, friction, bearing), friction};
}

struct Corner {
  std::string mark;  ///< what its symbols end in
  const Resistance& resistance;
};

std::vector<Corner> corners(const ResistanceRange& range, const std::string& mark) {
  return {{mark, range.typical}, {mark + "_lo", range.low}, {mark + "_hi", range.high}};
}

Working nutFactorWorking(const ResistanceRange& range, const Thread& thread, const std::string& end) {
  Working working;
  working.formula = "T = K·F·d";
  working.give("d", "nominal diameter", thread.diameter, kMillimetre, thread.provenance.source);
  for (const auto& [mark, resistance] : corners(range, end)) {
    working.give("K" + mark, "nut factor", resistance.arm / thread.diameter, range.source);
    working.step("a" + mark, "K" + mark + "·d", resistance.arm, kMillimetre);
  }
  working.validity = {"below yield, for the pairing of parts the nut factor was found on"};
  return working;
}

void giveBearing(Working& working, const ResistanceRange& range) {
  const bool assumed = range.bearingSource.empty();
  working.give("Db", "mean bearing diameter, (Do+dh)/2", range.meanBearing, kMillimetre,
               assumed ? "assumed 1.25·d, Shigley 9th ed. eq. 8-26" : range.bearingSource);
  if (assumed)
    working.cautions.push_back("the bearing face is not stated; 1.25·d is assumed as its mean diameter");
}

void armSteps(Working& working, const std::string& mark, const Thread& thread, const Resistance& resistance) {
  const double lead = thread.pitch / (kPi * thread.pitchDiameter);
  const double rho = resistance.friction.thread / std::cos(kFlank.si());
  const std::string tanRho = "tanρ" + mark;
  working.step(tanRho, "µt" + mark + "/cos(30°)", rho);
  working.step("w" + mark, "(tanφ+" + tanRho + ")/(1-tanφ·" + tanRho + ")", (lead + rho) / (1 - lead * rho));
  working.step("a" + mark, "d2/2·w" + mark + "+µb" + mark + "·Db/2", resistance.arm, kMillimetre);
}

Working frictionWorking(const ResistanceRange& range, const Thread& thread, const std::string& end) {
  Working working;
  working.formula = "T = F·[(d2/2)·tan(φ+ρ′) + µb·Db/2]";
  working.give("P", "pitch", thread.pitch, kMillimetre, thread.provenance.source);
  working.give("d2", "pitch diameter", thread.pitchDiameter, kMillimetre, thread.provenance.source);
  giveBearing(working, range);
  for (const auto& [mark, resistance] : corners(range, end)) {
    working.give("µt" + mark, "thread friction", resistance.friction.thread, range.source);
    working.give("µb" + mark, "bearing friction", resistance.friction.bearing, range.source);
  }
  working.step("tanφ", "P/(π·d2)", thread.pitch / (kPi * thread.pitchDiameter));
  for (const auto& [mark, resistance] : corners(range, end)) armSteps(working, mark, thread, resistance);
  working.validity = {"below yield, steady turning, 60° thread"};
  working.sources = {"VDI 2230 part 1, exact wedge form"};
  return working;
}

tl::unexpected<Error> refuseCondition(const Condition& condition, bool nutFactor) {
  return fail(ErrorCode::InvalidInput, "condition", condition.name,
              {nutFactor ? "“%1” states no nut factor" : "“%1” states no friction", {condition.name}},
              "give one, or choose another condition");
}

}  // namespace

Result<ResistanceRange> resistanceByNutFactor(const Range& nutFactor, const Thread& thread,
                                              const std::optional<BearingFace>& face,
                                              const std::string& source) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkFace(face, thread));
  CW_CHECK(checkRange("nut factor", nutFactor, checkNutFactor));
  ResistanceRange range = onFace(thread, face, source);
  range.basis = Basis::NutFactor;
  range.low = byNutFactor(nutFactor.low, thread, range.meanBearing);
  range.typical = byNutFactor(nutFactor.typical, thread, range.meanBearing);
  range.high = byNutFactor(nutFactor.high, thread, range.meanBearing);
  if (range.low.friction.thread > 0) return range;
  const std::string given = significant(nutFactor.low, 4);
  return fail(ErrorCode::OutOfRange, "nut factor", given,
              {"%1 is less than the pitch of %2 alone costs", {given, thread.designation}},
              "give a nut factor found on such fasteners");
}

Result<ResistanceRange> resistanceByFriction(const Range& threadFriction, const Range& bearingFriction,
                                             const Thread& thread, const std::optional<BearingFace>& face,
                                             const std::string& source) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkFace(face, thread));
  CW_CHECK(checkRange("thread friction", threadFriction, checkFriction));
  CW_CHECK(checkRange("bearing friction", bearingFriction, checkFriction));
  ResistanceRange range = onFace(thread, face, source);
  range.low = byFriction({threadFriction.low, bearingFriction.low}, thread, range.meanBearing);
  range.typical = byFriction({threadFriction.typical, bearingFriction.typical}, thread, range.meanBearing);
  range.high = byFriction({threadFriction.high, bearingFriction.high}, thread, range.meanBearing);
  return range;
}

Result<ResistanceRange> resistanceOf(const Condition& condition, const Thread& thread,
                                     const std::optional<BearingFace>& face, std::optional<Basis> basis) {
  const std::string source = condition.name + ", " + condition.provenance.source;
  const auto& inThread = condition.threadFriction ? condition.threadFriction : condition.bearingFriction;
  const bool nutFactor = basis ? *basis == Basis::NutFactor : condition.nutFactor.has_value();
  if (nutFactor ? !condition.nutFactor : !inThread) return refuseCondition(condition, nutFactor);
  auto range = nutFactor ? resistanceByNutFactor(*condition.nutFactor, thread, face, source)
                         : resistanceByFriction(*inThread, condition.bearingFriction.value_or(*inThread),
                                                thread, face, source);
  if (range) range->condition = condition.name;
  return range;
}

Result<ResistanceRange> unstatedResistance(const Thread& thread, const std::optional<BearingFace>& face) {
  auto range = resistanceByFriction(kUnstatedFriction, kUnstatedFriction, thread, face,
                                    "condition not stated: span of VDI 2230 table A1");
  if (range) range->stated = false;
  return range;
}

Working workingOf(const ResistanceRange& range, const Thread& thread, const std::string& end) {
  Working working = range.basis == Basis::NutFactor ? nutFactorWorking(range, thread, end)
                                                    : frictionWorking(range, thread, end);
  if (!range.stated)
    working.cautions.push_back("the condition is not stated; the widest usual friction is assumed");
  return working;
}

}  // namespace cw
