// AISC 360-05 tables J3.1 and J3.1M (RCSC table 8.1), seen: least pretension, 0.70·Fu·As rounded; the 2014
// values for F3125 are from memory. Turn of nut: RCSC Specification, seen summary and 1985/1986 text.
#include <gtest/gtest.h>

#include "core/fastener/catalogue.h"
#include "core/fastener/profile.h"
#include "core/joint/structural.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using published::Row;

/// Coarse series up to 1 in; eight threads and unified coarse above, as A325 bolts are made (UNC).
Thread threadOf(const std::string& size) {
  const std::map<std::string, std::string> coarse{
      {"1/2", "1/2-13"},    {"5/8", "5/8-11"},    {"3/4", "3/4-10"},    {"7/8", "7/8-9"},    {"1", "1-8"},
      {"1-1/8", "1-1/8-7"}, {"1-1/4", "1-1/4-7"}, {"1-3/8", "1-3/8-6"}, {"1-1/2", "1-1/2-6"}};
  const auto found = coarse.find(size);
  return shippedCatalogue().thread(found == coarse.end() ? size : found->second).value();
}

/// Fu of the table: A325 120 ksi to 1 in and 105 above (all sizes 120 from 2014), A490 150 ksi; 830 and
/// 1040 MPa for the metric ones.
Stress tensileOf(const Row& row, const Thread& thread) {
  const std::string& grade = row["grade"];
  if (grade == "A325M") return megapascals(830);
  if (grade == "A490M") return megapascals(1040);
  if (grade == "A490") return quantity(150, kKsi);
  const bool single = grade.find("F3125") != std::string::npos;
  return quantity(single || thread.diameter < inches(1.01) ? 120 : 105, kKsi);
}

TEST(Rcsc, LeastPretensions) {
  published::Tally tally("RCSC / AISC J3.1 least pretension");
  double worst = 0;
  for (const Row& row : published::readTable("rcsc_pretension")) {
    const Thread thread = threadOf(row["fastener"]);
    const Force load = structuralPretension(tensileOf(row, thread), thread).value();
    const double value = in(*unitWithCode<ForceTag>(row["unit"]), load);
    tally.add(row["fastener"] + " " + row["grade"], row["low"], value, row.seen());
    worst = std::max(worst, std::abs(value / row.number() - 1));
  }
  EXPECT_EQ(tally.all(), 36);
  EXPECT_LE(tally.exceptions(), 3);
  EXPECT_LT(worst, 0.012);
}

TEST(Rcsc, TurnsFromSnug) {
  const Thread bolt = threadOf("3/4");
  const std::map<std::string, double> lengths{{"L<=4d", 4}, {"4d<L<=8d", 8}, {"8d<L<=12d", 12}};
  const std::map<std::string, SlopedFaces> slopes{{"both faces normal", SlopedFaces::None},
                                                  {"one face sloped <=1:20", SlopedFaces::One},
                                                  {"both faces sloped <=1:20", SlopedFaces::Both}};
  int rows = 0;
  for (const Row& row : published::readTable("rcsc_turn_of_nut")) {
    const Length length = bolt.diameter * lengths.at(row["fastener"]);
    const Angle turn = turnFromSnug(length, bolt, slopes.at(row["condition"])).value();
    EXPECT_NEAR(inDegrees(turn) / 360, row.number(), 1e-5) << row["fastener"] << " " << row["condition"];
    ++rows;
  }
  EXPECT_EQ(rows, 9);
}

}  // namespace
}  // namespace cw
