#include "core/procedure/targets.h"

#include <algorithm>
#include <cmath>

#include "core/units/format.h"

namespace cw {
namespace {

/// Steps that give four digits to a torque of this size.
StatedTorque fourDigitSteps(Torque torque, const TorqueUnit& unit) {
  const int places = std::clamp(3 - static_cast<int>(std::floor(std::log10(in(unit, torque)))), 0, 6);
  return {fixed(std::pow(10, -places), places), &unit};
}

StatedTorque marksFor(Torque torque, const StatedTorque& graduation) {
  return graduation.number() > 0 ? graduation : fourDigitSteps(torque, *graduation.unit);
}

Result<StatedTorque> finalTarget(const Specification& specification, const StatedTorque& graduation) {
  CW_TRY(band, allowedBand(specification));
  const StatedTorque& aim = *specification.aim;
  if (graduation.number() == 0 && aim.unit == graduation.unit) return aim;
  return roundedToGraduation(aim.value(), band, marksFor(aim.value(), graduation));
}

Result<StatedTorque> earlyTarget(const Specification& specification, double share,
                                 const StatedTorque& graduation) {
  CW_TRY(last, finalTarget(specification, graduation));
  const Torque wanted = share * specification.aim->value();
  const StatedTorque marks = marksFor(wanted, graduation);
  const TorqueBand between{marks.value(), last.value() - marks.value()};
  if (between.low > between.high)
    return fail(ErrorCode::OutOfRange, "", text(marks),
                {"there is no mark between zero and %1 in steps of %2", {text(last), text(marks)}},
                "use a tool with a finer scale");
  return roundedToGraduation(wanted, between, marks);
}

}  // namespace

Result<TorqueBand> allowedBand(const Specification& specification) {
  if (!specification.aim)
    return fail(ErrorCode::InvalidInput, specification.id + ".aim", "",
                {"“%1” has no torque to aim at", {specification.printed}}, "state the aim on the sheet");
  return TorqueBand{specification.low ? specification.low->value() : Torque(),
                    specification.high ? specification.high->value() : specification.aim->value()};
}

Result<StatedTorque> settingFor(const Specification& specification, double share,
                                const StatedTorque& graduation) {
  return share < 1 ? earlyTarget(specification, share, graduation) : finalTarget(specification, graduation);
}

Result<StatedTorque> targetAt(const Sheet& sheet, const Joint& joint, const std::string& label,
                              const Pass& pass, const StatedTorque& graduation) {
  if (std::find(joint.order.begin(), joint.order.end(), label) == joint.order.end())
    return fail(ErrorCode::NotFound, joint.id, label, {"there is no position “%1”", {shown(label)}},
                "name a position of this joint");
  if (!pass.share)
    return fail(ErrorCode::InvalidInput, joint.id, "", "the pass by hand has no torque",
                "ask for a pass that is done with a wrench");
  const Specification* specification = sheet.specification(joint.specificationAt(label));
  if (specification == nullptr)
    return fail(ErrorCode::NotFound, joint.id, joint.specificationAt(label),
                {"position “%1” has no specification", {shown(label)}}, "name one on the sheet");
  return settingFor(*specification, *pass.share, graduation);
}

}  // namespace cw
