#pragma once
#include "core/procedure/sheet.h"
#include "tests/rules_walk/dice.h"

namespace cw::test {

/// A sheet of up to ten steps of all kinds, joints with one or several torques, and every way of passes,
/// holds, gaps and packs that the bench knows. Invented.
Sheet drawnSheet(Dice& dice);

/// A quick joint of 21 N·m, with or without a check pass.
Sheet drawnQuickSheet(Dice& dice);

}  // namespace cw::test
