#include <gmock/gmock.h>

#include <cmath>

#include "core/fastener/catalogue.h"
#include "core/fastener/profile.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

const Thread& threadNamed(const std::string& designation) {
  static std::map<std::string, Thread> known;
  return known.try_emplace(designation, shippedCatalogue().thread(designation).value()).first->second;
}

struct MetricRow {
  const char* thread;
  double stressArea;  // mm²
};

// ISO 898-1:2013 tables 4 and 6, nominal stress area; seen in the source's text (reprints).
TEST(PublishedThreads, MetricStressAreasOfIso898) {
  for (const MetricRow& row : std::initializer_list<MetricRow>{
           {"M3", 5.03}, {"M3.5", 6.78}, {"M4", 8.78},  {"M5", 14.2},  {"M6", 20.1},
           {"M7", 28.9}, {"M8", 36.6},   {"M10", 58.0}, {"M12", 84.3}, {"M14", 115},
           {"M16", 157}, {"M18", 192},   {"M20", 245},  {"M22", 303},  {"M24", 353},
           {"M27", 459}, {"M30", 561},   {"M33", 694},  {"M36", 817},  {"M39", 976}}) {
    const Thread& thread = threadNamed(row.thread);
    EXPECT_THAT(thread.stressArea, IsNear(squareMillimetres(row.stressArea), squareMillimetres(1e-9)))
        << row.thread;
    EXPECT_TRUE(thread.provenance.seen) << row.thread;
  }
}

struct UnifiedRow {
  const char* thread;
  double stressArea;  // in²
};

// ANSI B1.1-1974 through Shigley, 9th ed., table 8-2, and a second table; seen.
TEST(PublishedThreads, UnifiedStressAreasOfB1) {
  for (const UnifiedRow& row : std::initializer_list<UnifiedRow>{
           {"#4-40", 0.00604}, {"#6-32", 0.00909}, {"#8-32", 0.0140},  {"#10-24", 0.0175},
           {"#10-32", 0.0200}, {"1/4-20", 0.0318}, {"1/4-28", 0.0364}, {"5/16-18", 0.0524},
           {"3/8-16", 0.0775}, {"3/8-24", 0.0878}, {"1/2-13", 0.1419}, {"1/2-20", 0.1599},
           {"5/8-11", 0.226},  {"3/4-10", 0.334},  {"3/4-16", 0.373},  {"7/8-9", 0.462},
           {"1-8", 0.606},     {"1-12", 0.663},    {"1-1/4-7", 0.969}, {"1-1/2-6", 1.405},
           {"1-1/4-8", 1.000}, {"2-4.5", 2.50}})
    EXPECT_THAT(threadNamed(row.thread).stressArea, IsNear(squareInches(row.stressArea), squareInches(1e-9)))
        << row.thread;
}

struct DiameterRow {
  const char* thread;
  double pitch;
  double minor;
};

// ISO 724, basic pitch and internal minor diameter, mm; from memory.
TEST(PublishedThreads, MetricBasicDiametersOfIso724) {
  for (const DiameterRow& row : std::initializer_list<DiameterRow>{{"M1.6", 1.373, 1.221},
                                                                   {"M5", 4.480, 4.134},
                                                                   {"M6", 5.350, 4.917},
                                                                   {"M8", 7.188, 6.647},
                                                                   {"M8x1", 7.350, 6.917},
                                                                   {"M10", 9.026, 8.376},
                                                                   {"M12", 10.863, 10.106},
                                                                   {"M16", 14.701, 13.835},
                                                                   {"M20x1.5", 19.026, 18.376},
                                                                   {"M24", 22.051, 20.752},
                                                                   {"M36", 33.402, 31.670},
                                                                   {"M64", 60.103, 57.505}}) {
    EXPECT_THAT(threadNamed(row.thread).pitchDiameter, IsNear(millimetres(row.pitch), millimetres(0.00051)));
    EXPECT_THAT(threadNamed(row.thread).minorDiameter, IsNear(millimetres(row.minor), millimetres(0.00051)));
  }
}

// ASME B1.1, basic pitch and internal minor diameter, in; from memory.
TEST(PublishedThreads, UnifiedBasicDiametersOfB1) {
  for (const DiameterRow& row : std::initializer_list<DiameterRow>{{"#10-32", 0.1697, 0.1562},
                                                                   {"1/4-20", 0.2175, 0.1959},
                                                                   {"5/16-18", 0.2764, 0.2524},
                                                                   {"3/8-16", 0.3344, 0.3073},
                                                                   {"1/2-13", 0.4500, 0.4167},
                                                                   {"5/8-11", 0.5660, 0.5266},
                                                                   {"3/4-16", 0.7094, 0.6823},
                                                                   {"1-8", 0.9188, 0.8647},
                                                                   {"1-1/2-6", 1.3917, 1.3196},
                                                                   {"2-4.5", 1.8557, 1.7594}}) {
    EXPECT_THAT(threadNamed(row.thread).pitchDiameter, IsNear(inches(row.pitch), inches(0.000051)));
    EXPECT_THAT(threadNamed(row.thread).minorDiameter, IsNear(inches(row.minor), inches(0.000051)));
  }
}

// ISO 965 dimension sheet, class 6g (seen): its limits lie below the basic sizes by one allowance, so that
// pitch_max + (d − major_max) is d2 and minor_max + (d − major_max) is d3, each to a thousandth.
TEST(PublishedThreads, MetricDiametersStandBehindThe6gSheet) {
  int rows = 0;
  for (const SizeLimits& limits : shippedCatalogue().rows().limits) {
    if (limits.toleranceClass != "6g") continue;
    const Thread& thread = threadNamed(limits.thread);
    const Length allowance = thread.diameter - limits.major->most;
    EXPECT_THAT(limits.pitch.most + allowance, IsNear(thread.pitchDiameter, millimetres(0.0016)))
        << limits.thread;
    EXPECT_THAT(limits.minor->most + allowance, IsNear(thread.rootDiameter, millimetres(0.0016)))
        << limits.thread;
    ++rows;
  }
  EXPECT_EQ(rows, 20);
}

TEST(PublishedThreads, HoleLimitsStartAtTheBasicDiameters) {
  for (const SizeLimits& limits : shippedCatalogue().rows().limits) {
    if (limits.toleranceClass == "6g") continue;
    const Thread& thread = threadNamed(limits.thread);
    const Length digit = thread.system == ThreadSystem::Metric ? millimetres(0.00051) : inches(0.000051);
    EXPECT_THAT(limits.pitch.least, IsNear(thread.pitchDiameter, digit)) << limits.thread;
    EXPECT_THAT(limits.minor->least, IsNear(thread.minorDiameter, digit)) << limits.thread;
  }
}

// Every tabulated area, not only those named above, follows its standard's formula: metric within 0.4 %
// (the table keeps three digits), unified within 0.32 %.
TEST(PublishedThreads, EveryTabulatedStressAreaFollowsTheFormula) {
  int tabulated = 0;
  for (const Thread& thread : shippedCatalogue().rows().threads) {
    const double ratio =
        thread.stressArea / stressAreaByFormula(thread.system, thread.diameter, thread.pitch);
    EXPECT_NEAR(ratio, 1, thread.system == ThreadSystem::Metric ? 0.004 : 0.0032) << thread.designation;
    if (thread.stressAreaTabulated) ++tabulated;
  }
  EXPECT_EQ(tabulated, 105);
}

}  // namespace
}  // namespace cw
