#pragma once
#include "core/fastener/grade.h"
#include "core/joint/working.h"
#include "core/units/parse.h"

namespace cw {

/// A clamp load as people name it: "17 kN", "75 % of proof", "90 % yield". A share is of the axial stress
/// alone and needs the grade. The working is empty for a stated force. InvalidInput for anything else or a
/// share without a grade; errors of loadAtProof and loadAtYield.
Result<Worked<Force>> writtenClampLoad(std::string_view text, const Thread& thread,
                                       const std::optional<Grade>& grade,
                                       DecimalMark mark = DecimalMark::Point);

}  // namespace cw
