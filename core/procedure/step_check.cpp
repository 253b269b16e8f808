#include "core/procedure/step_check.h"

#include <algorithm>
#include <initializer_list>

#include "core/procedure/words.h"
#include "core/units/parse.h"

namespace cw {
namespace {

/// A field that only some kinds of step have.
struct Field {
  std::string_view name;
  bool given;
  std::initializer_list<StepKind> allowed;
  std::initializer_list<StepKind> needed;
};

bool lists(std::initializer_list<StepKind> kinds, StepKind kind) {
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

Result<void> checkField(const Field& field, StepKind kind) {
  const std::string name(wordOf(kind));
  if (!field.given && lists(field.needed, kind))
    return fail(ErrorCode::InvalidInput, std::string(field.name), "", "this field is missing",
                {"a step of kind “%1” needs it", {name}});
  if (field.given && !lists(field.allowed, kind))
    return fail(ErrorCode::InvalidInput, std::string(field.name), "",
                {"a step of kind “%1” has no such field", {name}}, "leave it out, or change the kind");
  return {};
}

template <class... Tags>
bool isUnitOfAny(std::string_view code) {
  return ((unitWithCode<Tags>(code) != nullptr) || ...);
}

Result<void> checkUnit(const std::string& code) {
  if (isUnitOfAny<TorqueTag, ForceTag, LengthTag, AreaTag, StressTag, AngleTag, StiffnessTag, TemperatureTag,
                  MassTag, VolumeTag, DurationTag>(code))
    return {};
  return fail(ErrorCode::InvalidInput, "unit", code, {"“%1” is no unit known here", {shown(code)}},
              "write a unit's code, for example mm, in, kPa, degC or N.m");
}

/// A limit as the file has it: digits with a point.
Result<void> checkLimit(std::string_view field, const std::string& digits) {
  auto number = parseNumber(digits, DecimalMark::Point, true);
  if (!number) return fail(within(std::string(field), number.error()));
  if (*number != digits)
    return fail(ErrorCode::InvalidInput, std::string(field), digits,
                {"“%1” is not a plain number", {shown(digits)}}, {"write “%1”", {*number}});
  return {};
}

Result<void> checkLimits(const Step& step) {
  CW_CHECK(checkUnit(step.unit));
  if (!step.low.empty()) CW_CHECK(checkLimit("low", step.low));
  if (!step.high.empty()) CW_CHECK(checkLimit("high", step.high));
  if (!step.low.empty() && !step.high.empty() && numberOf(step.low) > numberOf(step.high))
    return fail(ErrorCode::OutOfRange, "high", step.high, {"%1 is less than %2", {step.high, step.low}},
                "write a highest value that is not below the lowest");
  return {};
}

}  // namespace

Result<void> checkStep(const Sheet& sheet, const Step& step) {
  using enum StepKind;
  const Field fields[] = {
      {"joint", !step.joint.empty(), {Tighten}, {Tighten}},
      {"part", !step.part.empty(), {Act, Apply}, {Apply}},
      {"unit", !step.unit.empty(), {Measure}, {Measure}},
      {"low", !step.low.empty(), {Measure}, {}},
      {"high", !step.high.empty(), {Measure}, {}},
      {"hold", step.hold.has_value(), {Hold, Tighten}, {Hold}},
  };
  for (const Field& field : fields) CW_CHECK(checkField(field, step.kind));
  if (!step.joint.empty() && sheet.joint(step.joint) == nullptr)
    return fail(ErrorCode::InvalidInput, "joint", step.joint,
                {"there is no “%1” among the joints", {shown(step.joint)}},
                "name one that is there, or add it");
  if (!step.part.empty() && sheet.part(step.part) == nullptr)
    return fail(ErrorCode::InvalidInput, "part", step.part,
                {"there is no “%1” among the parts", {shown(step.part)}},
                "name one that is there, or add it");
  return step.kind == Measure ? checkLimits(step) : Result<void>();
}

}  // namespace cw
