#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kMostFriction = 0.5;
constexpr Stress kMostStress = gigapascals(2);

Result<void> checkWithin(const std::string& place, double value, bool right, const char* expected) {
  CW_CHECK(checkFinite(place, value));
  if (right) return {};
  const std::string given = significant(value, 6);
  return fail(ErrorCode::OutOfRange, place, given, {"%1 is out of range", {given}}, expected);
}

Result<void> refuseThread(const Thread& thread, const char* problem) {
  return fail(ErrorCode::OutOfRange, "thread", thread.designation, problem,
              "give root, pitch and major diameter in rising order, with pitch and stress area above zero");
}

const char* systemName(ThreadSystem system) {
  return system == ThreadSystem::Metric ? "metric" : "inch";
}

}  // namespace

Result<void> checkFinite(const std::string& place, double value) {
  if (std::isfinite(value)) return {};
  return fail(ErrorCode::InvalidInput, place, std::isnan(value) ? "NaN" : "infinity", "this is not a number",
              "give a finite number");
}

Result<void> checkFriction(const std::string& place, double value) {
  return checkWithin(place, value, value > 0 && value <= kMostFriction,
                     "friction lies above 0 and up to 0.5, for example 0.14");
}

Result<void> checkNutFactor(const std::string& place, double value) {
  return checkWithin(place, value, value > 0 && value <= 1,
                     "a nut factor lies above 0 and up to 1, for example 0.2");
}

Result<void> checkDeviation(const std::string& place, double value) {
  return checkWithin(place, value, value >= 0 && value < 1, "give a deviation from 0 % to below 100 %");
}

Result<void> checkShare(const std::string& place, double value, double most) {
  CW_CHECK(checkFinite(place, value));
  if (value > 0 && value <= most) return {};
  const std::string given = significant(value * 100, 4) + " %";
  return fail(ErrorCode::OutOfRange, place, given, {"%1 is out of range", {given}},
              {"give a share above 0 % and up to %1 %", {significant(most * 100, 4)}});
}

Result<void> checkThread(const Thread& thread) {
  for (double value : {thread.diameter.si(), thread.pitch.si(), thread.pitchDiameter.si(),
                       thread.rootDiameter.si(), thread.stressArea.si()})
    if (!std::isfinite(value) || value <= 0) return refuseThread(thread, "this thread lacks a dimension");
  if (!(thread.rootDiameter < thread.pitchDiameter && thread.pitchDiameter < thread.diameter))
    return refuseThread(thread, "this thread's diameters contradict each other");
  if (thread.stressArea > kPi / 4 * (thread.diameter * thread.diameter))
    return refuseThread(thread, "this thread's stress area is larger than its diameter allows");
  return {};
}

Result<void> checkGrade(const Grade& grade, const Thread& thread) {
  CW_CHECK(checkPositive("grade " + grade.name + ", yield", grade.yield, kMegapascal));
  CW_CHECK(checkPositive("grade " + grade.name + ", tensile", grade.tensile, kMegapascal));
  if (grade.system && *grade.system != thread.system)
    return fail(ErrorCode::OutOfRange, "grade", grade.name,
                {"%1 is a grade of %2 fasteners, and %3 is %4",
                 {grade.name, systemName(*grade.system), thread.designation, systemName(thread.system)}},
                "choose a grade of the same system");
  const Length slack = millimetres(0.001);
  if (thread.diameter >= grade.from - slack && thread.diameter <= grade.upTo + slack) return {};
  return fail(ErrorCode::OutOfRange, "grade", grade.name,
              {"this strength of %1 does not reach to %2", {grade.name, thread.designation}},
              {"it holds from %1 mm to %2 mm",
               {significant(inMillimetres(grade.from), 5), significant(inMillimetres(grade.upTo), 5)}});
}

Result<void> checkBearable(const std::string& place, const std::string& stated, Force load,
                           const Thread& thread) {
  if (load <= kMostStress * thread.stressArea) return {};
  return fail(ErrorCode::OutOfRange, place, stated,
              {"%1 on %2 is more than any bolt of this size bears", {stated, thread.designation}},
              "check the unit and the thread");
}

}  // namespace cw
