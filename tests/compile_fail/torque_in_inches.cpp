// expect: no matching function for call to .convert
#include "core/units/unit.h"

const double nonsense = cw::convert(25.0, cw::kPoundInch, cw::kInch);
