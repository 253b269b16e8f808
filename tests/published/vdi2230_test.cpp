// VDI 2230 part 1 (2003/2015), table A1: assembly preload and tightening torque at 90 % of Rp0,2 min,
// hexagon head ISO 4014 / socket head ISO 4762, medium holes ISO 273. Values from memory; one preload seen.
#include <gtest/gtest.h>

#include <cmath>

#include "core/fastener/catalogue.h"
#include "core/fastener/profile.h"
#include "core/joint/long_form.h"
#include "core/joint/utilisation.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

/// The standard's working numbers: diameters as DIN 13 prints them, and 1/cos 30° rounded to 1.155.
Thread asPrinted(Thread thread) {
  const auto round = [](Length length) { return millimetres(std::round(inMillimetres(length) * 1e3) / 1e3); };
  thread.pitchDiameter = round(thread.pitchDiameter);
  thread.rootDiameter = round(thread.rootDiameter);
  const Length d0 = (thread.pitchDiameter + thread.rootDiameter) / 2;
  thread.stressArea = kPi / 4 * (d0 * d0);
  return thread;
}

double frictionOf(const Row& row) {
  const std::string& text = row["condition"];
  return numberOf(text.substr(text.rfind('=') + 1));
}

Length bearingOf(const Row& row) {
  const std::string& note = row["note"];
  const auto start = note.find('=') + 1;
  return millimetres(numberOf(note.substr(start, note.find(' ', start) - start)));
}

/// Preload in kN, or torque in N·m, as the row asks; `rounding` stretches thread friction.
double computed(const Row& row, const Thread& thread, double rounding) {
  const Grade grade = shippedCatalogue().grade(row["grade"], thread).value();
  const double mu = frictionOf(row);
  const Force load = loadAtUtilisation(0.9, mu * rounding, thread, grade).value().value;
  if (row["unit"] == "kN") return in(kKilonewton, load);
  return torqueByFriction(load, {mu * rounding, mu}, thread, bearingOf(row)).value().si();
}

TEST(Vdi2230, TableA1IsReproducedToThePrintedDigit) {
  const double rounding = 1.155 * std::cos(kFlank.si());
  published::Tally preload("VDI 2230 table A1, preload");
  published::Tally torque("VDI 2230 table A1, torque");
  for (const Row& row : published::readTable("vdi2230_a1")) {
    const Thread thread = asPrinted(shippedCatalogue().thread(row["fastener"]).value());
    const std::string what = row["fastener"] + " " + row["grade"] + " " + row["condition"];
    const double value = computed(row, thread, rounding);
    (row["unit"] == "kN" ? preload : torque).add(what, row["low"], value, row.seen());
    if (!row.flagged()) {
      EXPECT_NEAR(value, row.number(), 1.6 * published::halfDigit(row["low"])) << what;
    }
  }
  EXPECT_EQ(preload.all(), 357);
  EXPECT_EQ(torque.all(), 357);
  EXPECT_LE(preload.exceptions(), 1);
  EXPECT_LE(torque.exceptions(), 7);
}

TEST(Vdi2230, OurOwnDimensionsDifferByHalfAPercentAtMost) {
  for (const Row& row : published::readTable("vdi2230_a1")) {
    if (row.flagged()) continue;
    const Thread thread = shippedCatalogue().thread(row["fastener"]).value();
    EXPECT_NEAR(computed(row, thread, 1), row.number(),
                published::halfDigit(row["low"]) * 1.2 + 5e-3 * row.number())
        << row["fastener"] << " " << row["grade"] << " " << row["condition"];
  }
}

// Tables from before 1986 (DIN 13 threads, lightly oiled, µ 0.14), reprinted in a machine manual, seen:
// reproduced only with the elastic torsion factor.
TEST(Din13Era, NeedsTheElasticTorsionFactor) {
  double elastic = 0, plastic = 0;
  const auto rows = published::readTable("din13_mu014");
  for (const Row& row : rows) {
    const Thread thread = shippedCatalogue().thread(row["fastener"]).value();
    const Grade grade = shippedCatalogue().grade(row["grade"], thread).value();
    const auto torque = [&](Torsion torsion) {
      const Force load = loadAtUtilisation(0.9, 0.14, thread, grade, torsion).value().value;
      return torqueByFriction(load, {0.14, 0.14}, thread, thread.diameter * 1.28).value().si();
    };
    elastic += torque(Torsion::Elastic) / row.number() - 1;
    plastic += torque(Torsion::Plastic) / row.number() - 1;
  }
  const auto count = static_cast<double>(rows.size());
  std::cout << "[published] DIN 13 era torques: mean " << 100 * elastic / count << " % elastic, "
            << 100 * plastic / count << " % plastic, " << count << " values\n";
  EXPECT_LT(std::abs(elastic / count), 0.02);
  EXPECT_GT(plastic / count, 0.05);
}

}  // namespace
}  // namespace cw
