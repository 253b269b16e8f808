// Torque-tension list in the manner of SAE J1701: SAE J429 grades 5 and 8, 75 % of proof, K 0.15, 0.17, 0.20,
// seen in an equipment manual. It computes the stress area, π/4·(D − 0.9743/n)², and so does this test.
#include <gtest/gtest.h>

#include "core/fastener/catalogue.h"
#include "core/fastener/profile.h"
#include "core/joint/nut_factor.h"
#include "core/joint/utilisation.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

struct Fastener {
  Thread thread;
  Grade grade;
};

Fastener fastenerOf(const Row& row) {
  Fastener fastener;
  fastener.thread = shippedCatalogue().thread(row["fastener"]).value();
  const std::string number = row["grade"].substr(row["grade"].find("Gr") + 2);
  fastener.grade = shippedCatalogue().grade("SAE " + number, fastener.thread).value();
  return fastener;
}

double nutFactorOf(const Row& row) {
  const std::string& text = row["condition"];
  return numberOf(text.substr(text.find("K=") + 2));
}

TEST(J1701, LoadsAndTorques) {
  published::Tally loads("SAE J1701 style list, clamp load");
  published::Tally torques("SAE J1701 style list, torque");
  for (const Row& row : published::readTable("j1701_75_proof")) {
    auto [thread, grade] = fastenerOf(row);
    thread.stressArea = stressAreaByFormula(thread.system, thread.diameter, thread.pitch);
    const std::string what = row["fastener"] + " " + row["grade"] + " " + row["condition"];
    const Force load = loadAtProof(0.75, thread, grade).value().value;
    if (row["unit"] == "lbf") {
      loads.add(what, row["low"], in(kPoundForce, load), row.seen());
      EXPECT_NEAR(in(kPoundForce, load), row.number(), 2e-3 * row.number()) << what;
      continue;
    }
    const Torque torque = torqueByNutFactor(load, nutFactorOf(row), thread).value();
    const double value = in(*unitWithCode<TorqueTag>(row["unit"]), torque);
    torques.add(what, row["low"], value, row.seen());
    EXPECT_NEAR(value, row.number(), 2 * published::halfDigit(row["low"]) + 1e-3 * row.number()) << what;
  }
  EXPECT_EQ(loads.all() + torques.all(), 192);
}

}  // namespace
}  // namespace cw
