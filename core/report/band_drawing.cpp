#include "core/report/band_drawing.h"

#include <algorithm>
#include <cmath>

#include "core/units/format.h"

namespace cw {
namespace {

constexpr int kMostTicks = 6, kBandDigits = 3;
constexpr double kRoomBelow = 0.6, kRoomAbove = 0.12, kNearZero = 0.5;

struct Reach {
  double start, end;
  double shareOf(double value) const { return (value - start) / (end - start); }
};

/// From zero unless that would squeeze the band into a corner.
Reach reachOf(double least, double most) {
  const double span = std::max(most - least, most * 1e-3);
  const double start = least < kNearZero * most ? 0 : std::max(0.0, least - kRoomBelow * span);
  return {start, most + kRoomAbove * (most - start)};
}

/// 1, 2 or 5 times a power of ten.
double tickStep(const Reach& reach) {
  const double least = (reach.end - reach.start) / kMostTicks;
  const double power = std::pow(10, std::floor(std::log10(least)));
  for (const double each : {1.0, 2.0, 5.0})
    if (each * power >= least) return each * power;
  return 10 * power;
}

std::vector<BandDrawing::Mark> ticksOf(const Reach& reach) {
  std::vector<BandDrawing::Mark> out;
  const double step = tickStep(reach);
  for (double number = std::ceil(reach.start / step); number * step <= reach.end; ++number)
    out.push_back({reach.shareOf(number * step), {"%1", {significant(number * step, 6)}}});
  return out;
}

/// A value on the scale, with its number in the words.
template <class Tag>
BandDrawing::Mark markOf(const Message& words, Quantity<Tag> value, const Unit<Tag>& unit,
                         const Reach& reach) {
  BandDrawing::Mark mark{reach.shareOf(in(unit, value)), words};
  mark.text.arguments = {text(value, unit, kBandDigits)};
  return mark;
}

}  // namespace

template <class Tag>
BandDrawing bandDrawing(const BandOf<Tag>& band, const Unit<Tag>& unit) {
  double least = in(unit, band.low), most = in(unit, band.high);
  for (const auto& [text, value] : band.values) {
    least = std::min(least, in(unit, value));
    most = std::max(most, in(unit, value));
  }
  const Reach reach = reachOf(least, most);
  BandDrawing drawing;
  drawing.low = reach.shareOf(in(unit, band.low));
  drawing.high = reach.shareOf(in(unit, band.high));
  drawing.unit = unit.symbol;
  drawing.band.push_back(markOf<Tag>("low %1", band.low, unit, reach));
  if (band.typical) drawing.band.push_back(markOf<Tag>("typical %1", *band.typical, unit, reach));
  drawing.band.push_back(markOf<Tag>("high %1", band.high, unit, reach));
  for (const auto& [words, value] : band.values) drawing.values.push_back(markOf(words, value, unit, reach));
  drawing.ticks = ticksOf(reach);
  return drawing;
}

template BandDrawing bandDrawing<TorqueTag>(const BandOf<TorqueTag>&, const TorqueUnit&);
template BandDrawing bandDrawing<ForceTag>(const BandOf<ForceTag>&, const ForceUnit&);

}  // namespace cw
