#pragma once
#include <string>
#include <string_view>

#include "core/units/unit.h"

namespace cw {

/// A value as it stands printed or typed: digits kept to the letter, beside the unit they are in.
/// Made by `parse` or `statedFromCode`, so `digits` is always a plain decimal number with a point.
/// Screens, prints and hashes show these digits; `value()` is what the engine computes with.
template <class Tag>
struct Stated {
  std::string digits;
  const Unit<Tag>* unit = nullptr;

  bool empty() const { return unit == nullptr; }
  Quantity<Tag> value() const { return quantity(number(), *unit); }
  double number() const;  ///< the digits as a number, in `unit`
  bool operator==(const Stated&) const = default;
};

using StatedTorque = Stated<TorqueTag>;
using StatedForce = Stated<ForceTag>;
using StatedLength = Stated<LengthTag>;
using StatedAngle = Stated<AngleTag>;
using StatedStress = Stated<StressTag>;

/// The double nearest to a stated value's digits ("60.50").
double numberOf(std::string_view digits);

template <class Tag>
double Stated<Tag>::number() const {
  return numberOf(digits);
}

}  // namespace cw
