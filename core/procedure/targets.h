#pragma once
#include <string>

#include "core/base/result.h"
#include "core/procedure/sheet.h"
#include "core/units/rounding.h"

namespace cw {

/// What the fastener may have when it is done. Where the specification states no lower limit there is none;
/// where it states no upper one, the aim is not exceeded. InvalidInput if it has no aim.
Result<TorqueBand> allowedBand(const Specification& specification);

/// What a wrench is set to for a specification on a pass at a share of its aim, on a scale with these marks and
/// in their unit. On the final pass and the ones after it (share 1): the mark nearest to the aim inside what the
/// specification allows; refused, naming the marks on either side, if there is none. On earlier passes: the mark
/// nearest to the share of the aim, at least one mark above zero and one below the final setting.
/// A graduation of zero (a tool that is set without a scale) takes four digits, and the aim itself where it
/// is stated in that unit.
/// InvalidInput for a specification without an aim; OutOfRange if no mark fits.
Result<StatedTorque> settingFor(const Specification& specification, double share,
                                const StatedTorque& graduation);

/// The same at one position of a joint. NotFound for a label that is not in the joint's order; InvalidInput for
/// a pass by hand.
Result<StatedTorque> targetAt(const Sheet& sheet, const Joint& joint, const std::string& label,
                              const Pass& pass, const StatedTorque& graduation);

}  // namespace cw
