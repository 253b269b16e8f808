// EN 1090-2 and EN 1993-1-8: preload 0.7·fub·As of class 10.9 (fub 1000 MPa) and torque 1.1·km·d·Fp,C with
// the km each row prints; two seen tables. Further rotation of the combined method: EN 1090-2 table 21, seen.
#include <gtest/gtest.h>

#include "core/fastener/catalogue.h"
#include "core/joint/nut_factor.h"
#include "core/joint/structural.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

TEST(En1090, PreloadsAndTorques) {
  published::Tally loads("EN 1090-2, preload of 10.9");
  int torques = 0;
  double worst = 0;
  for (const Row& row : published::readTable("en1090_2")) {
    if (row["unit"] == "deg") continue;
    const Thread thread = shippedCatalogue().thread(row["fastener"]).value();
    const Force load = structuralPretension(megapascals(1000), thread).value();
    if (row["unit"] == "kN") {
      loads.add(row["fastener"], row["low"], in(kKilonewton, load));
      continue;
    }
    const std::string& note = row["note"];
    const double km = numberOf(note.substr(note.find("km=") + 3));
    const double value = 1.1 * torqueByNutFactor(load, km, thread).value().si();
    worst = std::max(worst, std::abs(value / row.number() - 1));
    ++torques;
  }
  std::cout << "[published] EN 1090-2: " << torques
            << " torques, rounded by the source to 50 N·m or so, within " << 100 * worst << " %\n";
  EXPECT_EQ(loads.all(), 8);
  EXPECT_LE(loads.exceptions(), 1);
  EXPECT_EQ(torques, 8);
  EXPECT_LT(worst, 0.006);
}

TEST(En1090, CombinedMethodTurns) {
  const Thread m20 = shippedCatalogue().thread("M20").value();
  const auto turn = [&](double diameters) {
    return inDegrees(combinedMethodTurn(m20.diameter * diameters, m20).value());
  };
  std::vector<double> printed;
  for (const Row& row : published::readTable("en1090_2"))
    if (row["unit"] == "deg") printed.push_back(row.number());
  ASSERT_EQ(printed.size(), 3U);
  EXPECT_NEAR(turn(1.9), printed[0], 1e-9);
  EXPECT_NEAR(turn(2), printed[1], 1e-9);
  EXPECT_NEAR(turn(6), printed[2], 1e-9);
}

}  // namespace
}  // namespace cw
