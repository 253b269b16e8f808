#include "core/units/rounding.h"

#include <algorithm>
#include <charconv>
#include <cstdint>

#include "core/units/decimal.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr int kSureDigits = 15;   // every decimal of 15 digits survives a double
constexpr int kPlaces = 9;        // readings are counted in billionths of their unit …
constexpr double kMost = 1e9;     // … so that two of the largest still fit 64 bits
constexpr int kFinestPlaces = 6;  // leaves an even number of billionths to every step, for an exact middle

enum class Rest { Dropped, RoundedUp };

/// Billionths in a number of zero or more, and what to do with anything finer.
std::int64_t billionths(const Decimal& number, Rest rest) {
  std::string text = plainText(number, kPlaces);
  const std::size_t end = text.find('.') + 1 + kPlaces;
  const bool finer = end < text.size();
  text.erase(end);
  std::erase(text, '.');
  std::int64_t count = 0;
  std::from_chars(text.data(), text.data() + text.size(), count);
  return count + (finer && rest == Rest::RoundedUp ? 1 : 0);
}

/// A tool's scale; its marks are numbered from the zero that nothing is ever set to.
struct Scale {
  const TorqueUnit* unit;
  std::int64_t step;  ///< billionths from one mark to the next
  int places;         ///< digits after the point that a mark is printed with

  std::int64_t reading(Torque torque, Rest rest) const {
    return billionths(roundedToDigits(decimalOf(in(*unit, torque)), kSureDigits), rest);
  }
  std::int64_t lastMarkUpTo(Torque torque) const { return reading(torque, Rest::Dropped) / step; }
  std::int64_t firstMarkFrom(Torque torque) const {
    return (reading(torque, Rest::RoundedUp) + step - 1) / step;
  }
  std::int64_t nearestMark(Torque torque) const { return (reading(torque, Rest::Dropped) + step / 2) / step; }

  StatedTorque mark(std::int64_t number) const {
    Decimal value = decimalOf(std::to_string(number * step));
    value.exponent -= kPlaces;
    return {plainText(value, places), unit};
  }
};

Result<Scale> scaleOf(const StatedTorque& graduation) {
  const Decimal step = decimalOf(graduation.digits);
  if (step.digits.empty() || step.negative || step.places() > kFinestPlaces || graduation.number() > kMost)
    return fail(
        ErrorCode::OutOfRange, "graduation", text(graduation),
        {"no scale has steps of %1", {text(graduation)}},
        "write the step from mark to mark with at most 6 digits after the point, for example 0.5 N·m");
  return Scale{graduation.unit, billionths(step, Rest::Dropped), step.places()};
}

Result<void> checkOnScale(Torque torque, const TorqueUnit& unit) {
  const double value = in(unit, torque);
  if (value >= 0 && value <= kMost) return {};
  return fail(ErrorCode::OutOfRange, "", text(torque, unit), {"%1 is on no scale", {text(torque, unit)}},
              {"a torque to set lies between 0 and %1", {text(quantity(kMost, unit), unit)}});
}

Result<void> checkBand(const TorqueBand& band, const TorqueUnit& unit) {
  if (band.low <= band.high) return {};
  return fail(ErrorCode::OutOfRange, "", text(band.high, unit, 6),
              {"the highest torque, %1, is below the lowest", {text(band.high, unit, 6)}},
              {"give a highest torque of %1 or more", {text(band.low, unit, 6)}});
}

}  // namespace

Result<StatedTorque> roundedToGraduation(Torque aim, const TorqueBand& band, const StatedTorque& graduation) {
  CW_TRY(scale, scaleOf(graduation));
  for (const Torque torque : {aim, band.low, band.high}) CW_CHECK(checkOnScale(torque, *scale.unit));
  CW_CHECK(checkBand(band, *scale.unit));

  const std::int64_t first = std::max<std::int64_t>(scale.firstMarkFrom(band.low), 1);
  const std::int64_t last = scale.lastMarkUpTo(band.high);
  if (first <= last) return scale.mark(std::clamp(scale.nearestMark(aim), first, last));
  return fail(ErrorCode::OutOfRange, "", text(graduation),
              {"no mark of a scale in steps of %1 lies between %2 and %3",
               {text(graduation), text(band.low, *scale.unit, 6), text(band.high, *scale.unit, 6)}},
              {"the marks beside it are %1 and %2, so use a tool with a finer scale",
               {text(scale.mark(last)), text(scale.mark(first))}});
}

}  // namespace cw
