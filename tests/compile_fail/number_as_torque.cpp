// expect: could not convert .* to .cw::Torque|no viable conversion|no matching function for call to .tighten
#include "core/units/quantity.h"

void tighten(cw::Torque target);

void careless() {
  tighten(25.0);
}
