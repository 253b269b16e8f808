// expect: cannot convert .cw::Torque|no viable conversion
#include "core/units/quantity.h"

const double digits = cw::newtonMetres(25);
