// Thread shear areas: ANSI table on the basis of FED-STD-H28/2B and ASME B1.1 appendix B, 2A/2B, Le = 1 D,
// seen. Limits of size: thread sheet to DIN 13 / ISO 965 class 6g, seen; 6H from memory but for M10.
#include <gtest/gtest.h>

#include "core/fastener/catalogue.h"
#include "core/joint/stripping.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

TEST(Strip, UnifiedShearAreasAtOneDiameter) {
  published::Tally tally("shear areas 2A/2B");
  for (const Row& row : published::readTable("strip_areas_unc")) {
    const Thread thread = shippedCatalogue().thread(row["fastener"]).value();
    const ThreadLimits limits = limitsOf(thread, Fit::Unified2A2B).value();
    const ShearPerLength shear = shearPerLength(limits, thread.pitch).value();
    const double bolt = in(kSquareInch, shear.bolt * thread.diameter);
    const double tapped = in(kSquareInch, shear.tapped * thread.diameter);
    tally.add(row["fastener"] + " bolt, in²", row["bolt_area_in2"], bolt);
    tally.add(row["fastener"] + " tapped, in²", row["nut_area_in2"], tapped);
    EXPECT_NEAR(bolt / row.number("bolt_area_in2"), 1, row.flagged() ? 0.015 : 0.006) << row["fastener"];
    EXPECT_NEAR(tapped / row.number("nut_area_in2"), 1, 0.006) << row["fastener"];
    EXPECT_NEAR(in(kInch, limits.pitchMax), row.number("en_max_in"), 1.1e-4) << row["fastener"];
    EXPECT_NEAR(in(kInch, limits.minorMax), row.number("kn_max_in"), 6e-4) << row["fastener"];
  }
  EXPECT_EQ(tally.all(), 10);
}

TEST(Strip, MetricLimitsOfSize) {
  double worst = 0;
  int exact = 0, all = 0;
  for (const Row& row : published::readTable("metric_limits_6g6h")) {
    const Thread thread = shippedCatalogue().thread(row["fastener"]).value();
    const ThreadLimits limits = limitsOf(thread, Fit::Metric6g6H).value();
    const std::pair<Length, const char*> pairs[] = {{limits.majorMin, "major_min_mm"},
                                                    {limits.pitchMin, "pitch_min_mm"},
                                                    {limits.minorMax, "minor_max_6h_mm"},
                                                    {limits.pitchMax, "pitch_max_6h_mm"}};
    for (const auto& [length, column] : pairs) {
      const double off = std::abs(inMillimetres(length) - row.number(column));
      worst = std::max(worst, off);
      ++all;
      if (off < 1.5e-3) ++exact;
      EXPECT_LE(off, 0.0265) << row["fastener"] << " " << column << " " << inMillimetres(length);
    }
  }
  std::cout << "[published] metric limits 6g/6H: " << exact << " of " << all << " within 1.5 µm, worst "
            << 1000 * worst << " µm\n";
  EXPECT_EQ(all, 80);
}

TEST(Strip, LibraryLimitsStandInForTheFormulas) {
  const Thread m10 = shippedCatalogue().thread("M10").value();
  const auto bolt = shippedCatalogue().sizeLimits(m10, "6g").value();
  const auto hole = shippedCatalogue().sizeLimits(m10, "6H").value();
  const ThreadLimits tabulated = limitsOf(bolt, hole).value();
  EXPECT_NEAR(inMillimetres(tabulated.majorMin), 9.732, 1e-9);
  EXPECT_NEAR(inMillimetres(tabulated.pitchMax), 9.206, 1e-9);
  EXPECT_FALSE(limitsOf(hole, bolt).has_value());
}

TEST(Strip, AreaOfTheEngagementThatIsNeededIsProportional) {
  const Thread m10 = shippedCatalogue().thread("M10").value();
  TappedHole hole;
  hole.material.name = "aluminium";
  hole.material.shearStrength = megapascals(130);
  hole.engagement = millimetres(10);
  const Stripping tooShort = stripping(m10, shippedCatalogue().grade("8.8", m10).value(), hole).value().value;
  hole.engagement = tooShort.neededEngagement;
  const Stripping enough = stripping(m10, shippedCatalogue().grade("8.8", m10).value(), hole).value().value;
  EXPECT_EQ(tooShort.failure, Failure::TappedThreadStrips);
  EXPECT_NEAR(enough.load / enough.boltBreaks, 1, 1e-9);
}

}  // namespace
}  // namespace cw
