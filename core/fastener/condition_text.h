#pragma once
#include "core/fastener/catalogue.h"
#include "core/units/parse.h"

namespace cw {

/// A condition as people write it: a name of the catalogue, or their own nut factor or friction: "K 0.2",
/// "K 0.18 to 0.22", "µ 0.12", "µ 0.10 to 0.16", "µ 0.12 / 0.10" (thread / bearing). The typical value of a
/// range is its middle. The catalogue's error for an unknown name; InvalidInput for a number that cannot be
/// read, OutOfRange for a nut factor outside (0, 1] or friction outside (0, 0.5].
Result<Condition> writtenCondition(std::string_view text, const Catalogue& catalogue,
                                   DecimalMark mark = DecimalMark::Point);

}  // namespace cw
