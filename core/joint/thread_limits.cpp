#include "core/joint/thread_limits.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kR40[] = {1,    1.06, 1.12, 1.18, 1.25, 1.32, 1.4,  1.5,  1.6,  1.7,  1.8, 1.9,  2,   2.12,
                           2.24, 2.36, 2.5,  2.65, 2.8,  3,    3.15, 3.35, 3.55, 3.75, 4,   4.25, 4.5, 4.75,
                           5,    5.3,  5.6,  6,    6.3,  6.7,  7.1,  7.5,  8,    8.5,  9,   9.5,  10};

/// The nearest number of the R40 series (ISO 3), by ratio.
double preferred(double value) {
  const double decade = std::pow(10, std::floor(std::log10(value)));
  const auto distance = [&](double step) { return std::abs(std::log(value / (decade * step))); };
  const double* best = std::min_element(std::begin(kR40), std::end(kR40),
                                        [&](double a, double b) { return distance(a) < distance(b); });
  return decade * *best;
}

/// Geometric mean of the diameter range that a size falls in, mm (ISO 965-1).
double meanOfRange(double diameter) {
  constexpr double kEdges[] = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90, 180, 355};
  for (std::size_t i = 1; i < std::size(kEdges); ++i)
    if (diameter <= kEdges[i]) return std::sqrt(kEdges[i - 1] * kEdges[i]);
  return diameter;
}

Length micrometres(double value) {
  return millimetres(value / 1000);
}

ThreadLimits metricLimits(const Thread& thread, bool allowance) {
  const double p = inMillimetres(thread.pitch);
  const double es = allowance ? 15 + 11 * p : 0;
  const double major = 180 * std::cbrt(p * p) - 3.15 / std::sqrt(p);
  const double pitch = 90 * std::pow(p, 0.4) * std::pow(meanOfRange(inMillimetres(thread.diameter)), 0.1);
  const double minor = p <= 0.8 ? 433 * p - 190 * std::pow(p, 1.22) : 230 * std::pow(p, 0.7);
  return {thread.diameter - micrometres(std::round(es) + preferred(major)),
          thread.pitchDiameter - micrometres(std::round(es) + preferred(pitch)),
          thread.minorDiameter + micrometres(preferred(minor)),
          thread.pitchDiameter + micrometres(preferred(1.32 * pitch))};
}

double tenThousandths(double inches) {
  return std::round(inches * 1e4) / 1e4;
}

/// B1.1 states internal minor diameters to three places from No. 6 on, to four below.
double asTabulated(double diameter, double minor) {
  const double places = diameter < 0.138 ? 1e4 : 1e3;
  return std::round(minor * places) / places;
}

double minorTolerance(double diameter, double pitch, bool close) {
  const double small = 0.05 * std::cbrt(pitch * pitch) + 0.03 * pitch / diameter - 0.002;
  const double coarse = 0.25 * pitch - 0.4 * pitch * pitch;
  if (!close) return diameter < 0.25 ? std::clamp(small, coarse, 0.394 * pitch) : coarse;
  const double least = pitch < 1 / 12.5 ? 0.23 * pitch - 1.5 * pitch * pitch : 0.12 * pitch;
  return std::clamp(small, least, 0.394 * pitch);
}

ThreadLimits unifiedLimits(const Thread& thread, bool close) {
  const double d = in(kInch, thread.diameter);
  const double p = in(kInch, thread.pitch);
  const double basis = 0.0015 * std::cbrt(d) + 0.0015 * std::sqrt(d) + 0.015 * std::cbrt(p * p);
  const double external = tenThousandths(close ? 0.75 * basis : basis);
  const double internal = tenThousandths((close ? 0.975 : 1.3) * basis);
  const double allowance = close ? 0 : tenThousandths(0.3 * basis);
  const double major = tenThousandths(0.06 * std::cbrt(p * p));
  const double pitchDiameter = tenThousandths(in(kInch, thread.pitchDiameter));
  const double minor = asTabulated(d, in(kInch, thread.minorDiameter) + minorTolerance(d, p, close));
  return {inches(d - allowance - major), inches(pitchDiameter - allowance - external), inches(minor),
          inches(pitchDiameter + internal)};
}

bool isMetric(Fit fit) {
  return fit == Fit::Metric6g6H || fit == Fit::Metric6h6H;
}

}  // namespace

Fit usualFit(ThreadSystem system) {
  return system == ThreadSystem::Metric ? Fit::Metric6g6H : Fit::Unified2A2B;
}

Result<ThreadLimits> limitsOf(const Thread& thread, Fit fit) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkPositive("thread, minor diameter", thread.minorDiameter, kMillimetre));
  if (isMetric(fit) != (thread.system == ThreadSystem::Metric))
    return fail(ErrorCode::OutOfRange, "tolerance class", thread.designation,
                "this class belongs to the other thread system",
                "choose 6g/6H for metric, 2A/2B for inch threads");
  return isMetric(fit) ? metricLimits(thread, fit == Fit::Metric6g6H)
                       : unifiedLimits(thread, fit == Fit::Unified3A3B);
}

Result<ThreadLimits> limitsOf(const SizeLimits& bolt, const SizeLimits& hole) {
  if (bolt.major && hole.minor)
    return ThreadLimits{bolt.major->least, bolt.pitch.least, hole.minor->most, hole.pitch.most};
  return fail(ErrorCode::InvalidInput, "limits of size", bolt.thread,
              {"the table of %1 lacks the bolt's major or the hole's minor diameter", {bolt.thread}},
              "use the formulas of a tolerance class");
}

}  // namespace cw
