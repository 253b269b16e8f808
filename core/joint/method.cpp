#include "core/joint/method.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr Angle kFullTurn = degrees(360);

template <class... F>
struct Each : F... {
  using F::operator()...;
};
template <class... F>
Each(F...) -> Each<F...>;  // clang 14 does not make this guide itself

Result<void> checkAngle(const std::string& place, Angle angle, Angle most) {
  CW_CHECK(checkPositive(place, angle, kDegree));
  if (angle <= most) return {};
  return fail(ErrorCode::OutOfRange, place, text(angle, kDegree, 4),
              {"%1 is more than this method turns", {text(angle, kDegree, 4)}},
              {"give at most %1", {text(most, kDegree, 4)}});
}

Result<void> checkRising(const std::string& place, Torque low, Torque high) {
  CW_CHECK(checkPositive(place, low, kNewtonMetre));
  CW_CHECK(checkPositive("target", high, kNewtonMetre));
  if (low < high) return {};
  return fail(ErrorCode::OutOfRange, place, text(low, kNewtonMetre, 4),
              {"%1 is not below the target %2", {text(low, kNewtonMetre, 4), text(high, kNewtonMetre, 4)}},
              "give a smaller torque");
}

Result<void> checkMethod(const TorqueMethod& method) {
  return checkPositive("target", method.target, kNewtonMetre);
}

Result<void> checkMethod(const TorqueAngleWindowMethod& method) {
  CW_CHECK(checkRising("snug", method.snug, method.target));
  CW_CHECK(checkAngle("window, low", method.low, kFullTurn));
  CW_CHECK(checkAngle("window, high", method.high, kFullTurn));
  if (method.low < method.high) return {};
  return fail(ErrorCode::OutOfRange, "window", text(method.low, kDegree, 4), "the window is empty",
              "give its low end first");
}

Result<void> checkMethod(const TurnOfNutMethod& method) {
  CW_CHECK(checkPositive("snug", method.snug, kNewtonMetre));
  CW_CHECK(checkAngle("turn", method.turn, 2 * kFullTurn));
  CW_CHECK(checkNotNegative("tolerance", method.tolerance, kDegree));
  if (method.tolerance < method.turn) return {};
  return fail(ErrorCode::OutOfRange, "tolerance", text(method.tolerance, kDegree, 4),
              "the tolerance is as large as the turn", "give a smaller one");
}

Result<void> checkMethod(const SeatBackOffMethod& method) {
  CW_CHECK(checkPositive("seat", method.seat, kNewtonMetre));
  CW_CHECK(checkAngle("back off", method.backOff, 2 * kFullTurn));
  CW_CHECK(checkPositive("target", method.target, kNewtonMetre));
  CW_CHECK(checkFinite("maximum", method.maximum.si()));
  if (method.target <= method.maximum) return {};
  return fail(ErrorCode::OutOfRange, "maximum", text(method.maximum, kNewtonMetre, 4),
              {"%1 is below the final torque", {text(method.maximum, kNewtonMetre, 4)}}, "give a larger one");
}

Finding wrong(const char* code, Message problem, Message cure) {
  return {Severity::Blocking, code, "reading", std::move(problem), std::move(cure)};
}

void needTorque(Findings& findings, const MethodReading& reading, const TorqueBand& tolerance) {
  if (!reading.torque)
    findings.push_back(wrong("reading-missing", "the torque is missing", "read the torque"));
  else if (*reading.torque < tolerance.low || *reading.torque > tolerance.high)
    findings.push_back(wrong("torque-out-of-tolerance",
                             {"%1 is outside %2 to %3",
                              {text(*reading.torque, kNewtonMetre, 4), text(tolerance.low, kNewtonMetre, 4),
                               text(tolerance.high, kNewtonMetre, 4)}},
                             "loosen and tighten again, or set aside"));
}

void needAngle(Findings& findings, const MethodReading& reading, Angle low, Angle high) {
  if (!reading.angle) {
    findings.push_back(wrong("reading-missing", "the angle is missing", "read the angle from snug"));
    return;
  }
  const std::vector<std::string> numbers{text(*reading.angle, kDegree, 4), text(low, kDegree, 4),
                                         text(high, kDegree, 4)};
  Message problem(*reading.angle < low ? "%1 is less than %2" : "%1 is more than %3");
  problem.arguments = numbers;
  if (*reading.angle < low)
    findings.push_back(wrong("angle-low", problem, "look for a crossed thread, a bottomed hole or dirt"));
  else if (*reading.angle > high)
    findings.push_back(wrong("angle-high", problem, "look for a yielding bolt or parts that still close"));
}

}  // namespace

std::string_view codeOf(const TighteningMethod& method) {
  constexpr std::string_view kCodes[] = {"torque", "torque-and-angle", "turn-of-nut", "seat-back-off"};
  return kCodes[method.index()];
}

Result<void> check(const TighteningMethod& method) {
  return std::visit([](const auto& each) { return checkMethod(each); }, method);
}

Findings judgeReading(const TighteningMethod& method, const MethodReading& reading,
                      const TorqueBand& tolerance) {
  Findings findings;
  std::visit(Each{[&](const TorqueMethod&) { needTorque(findings, reading, tolerance); },
                  [&](const TorqueAngleWindowMethod& each) {
                    needTorque(findings, reading, tolerance);
                    needAngle(findings, reading, each.low, each.high);
                  },
                  [&](const TurnOfNutMethod& each) {
                    needAngle(findings, reading, each.turn - each.tolerance, each.turn + each.tolerance);
                  },
                  [&](const SeatBackOffMethod& each) {
                    needTorque(findings, reading, {tolerance.low, each.maximum});
                  }},
             method);
  return findings;
}

bool mayRetorque(const TighteningMethod& method) {
  return std::holds_alternative<TorqueMethod>(method);
}

}  // namespace cw
