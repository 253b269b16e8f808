// FAA AC 43.13-1B (9/8/98), table 7-1: torques for nuts on fine threads, oil-free and cadmium-plated, seen.
// It states the stress in the bolt for each column, so each row implies a nut factor.
#include <gtest/gtest.h>

#include "core/fastener/catalogue.h"
#include "core/joint/nut_factor.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

Thread threadOf(const Row& row) {
  const std::string& size = row["fastener"];
  return shippedCatalogue()
      .thread((size.starts_with("8-") || size.starts_with("10-") ? "#" : "") + size)
      .value();
}

/// The stress in the bolt that a column is for: "tension-type nut (40 ksi in bolt)".
Stress stressOf(const Row& row) {
  const std::string& text = row["grade"];
  const auto start = text.find('(') + 1;
  return quantity(numberOf(text.substr(start, text.find(' ', start) - start)), kKsi);
}

TEST(Faa, Table7_1ImpliesNutFactorsOfCadmiumPlatedThreads) {
  int all = 0, within = 0;
  double lowest = 1, highest = 0;
  for (const Row& row : published::readTable("faa_ac43_13_1b_7_1")) {
    const Thread thread = threadOf(row);
    const double middle = row["high"].empty() ? row.number() : (row.number("low") + row.number("high")) / 2;
    const Force load = stressOf(row) * thread.stressArea;
    const double k = nutFactorFrom(quantity(middle, kPoundInch), load, thread).value();
    lowest = std::min(lowest, k);
    highest = std::max(highest, k);
    ++all;
    if (k >= 0.106 && k <= 0.25) ++within;  // Bickford's range for cadmium plate, dry (from memory)
  }
  std::cout << "[published] FAA table 7-1: " << all << " rows imply K " << lowest << " to " << highest << ", "
            << within << " within the tabulated 0.106 to 0.25\n";
  EXPECT_EQ(all, 56);
  EXPECT_GE(within, 50);
  EXPECT_GT(lowest, 0.08);
  EXPECT_LT(highest, 0.25);
}

TEST(Faa, Table7_1ShearNutsTakeThreeFifthsOfTensionNuts) {
  const auto rows = published::readTable("faa_ac43_13_1b_7_1");
  for (std::size_t i = 0; i + 3 < rows.size(); i += 4) {
    EXPECT_NEAR(rows[i + 1].number("high") / rows[i].number("high"), 0.6, 0.05) << rows[i]["fastener"];
    EXPECT_NEAR(rows[i + 3].number() / rows[i + 2].number(), 0.6, 0.05) << rows[i]["fastener"];
  }
}

}  // namespace
}  // namespace cw
