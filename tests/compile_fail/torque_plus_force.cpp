// expect: no match for .operator\+.|invalid operands to binary expression
#include "core/units/quantity.h"

const auto sum = cw::newtonMetres(1) + cw::newtons(1);
