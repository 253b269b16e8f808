#include "core/joint/prevailing.h"

#include "core/joint/checks.h"

namespace cw {

Result<Torque> withPrevailing(Torque stated, Torque prevailing, PrevailingRule rule) {
  CW_CHECK(checkPositive("torque", stated, kNewtonMetre));
  CW_CHECK(checkNotNegative("prevailing torque", prevailing, kNewtonMetre));
  if (prevailing > stated)
    return fail(ErrorCode::OutOfRange, "prevailing torque", text(prevailing, kNewtonMetre, 4),
                {"%1 is more than the torque itself, %2",
                 {text(prevailing, kNewtonMetre, 4), text(stated, kNewtonMetre, 4)}},
                "check the unit, or replace the locking fastener");
  const bool adds = rule == PrevailingRule::AlwaysAdd ||
                    (rule == PrevailingRule::AddFromOneThird && 3 * prevailing >= stated);
  return adds ? stated + prevailing : stated;
}

Result<Torque> tighteningPart(Torque atWrench, Torque prevailing) {
  CW_CHECK(checkPositive("torque", atWrench, kNewtonMetre));
  CW_CHECK(checkNotNegative("prevailing torque", prevailing, kNewtonMetre));
  if (prevailing < atWrench) return atWrench - prevailing;
  return fail(ErrorCode::OutOfRange, "prevailing torque", text(prevailing, kNewtonMetre, 4),
              {"%1 leaves nothing of %2 to tighten",
               {text(prevailing, kNewtonMetre, 4), text(atWrench, kNewtonMetre, 4)}},
              "check both values");
}

}  // namespace cw
