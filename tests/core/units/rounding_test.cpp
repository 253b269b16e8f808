#include "core/units/rounding.h"

#include <fmt/format.h>

#include <limits>

#include "core/units/parse.h"
#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using testing::HasSubstr;

StatedTorque stated(const std::string& text) {
  return parse<TorqueTag>(text).value();
}

Torque torque(const std::string& text) {
  return stated(text).value();
}

Result<StatedTorque> rounded(const std::string& aim, const std::string& low, const std::string& high,
                             const std::string& graduation) {
  return roundedToGraduation(torque(aim), {torque(low), torque(high)}, stated(graduation));
}

TEST(RoundedToGraduation, TakesTheNearestMark) {
  EXPECT_EQ(rounded("61 N.m", "50 N.m", "70 N.m", "5 N.m"), stated("60 N.m"));
  EXPECT_EQ(rounded("63 N.m", "50 N.m", "70 N.m", "5 N.m"), stated("65 N.m"));
  EXPECT_EQ(rounded("62.5 N.m", "50 N.m", "70 N.m", "5 N.m"), stated("65 N.m"));  // equally near: the higher
}

TEST(RoundedToGraduation, WritesTheDigitsThatTheGraduationNeeds) {
  EXPECT_EQ(rounded("14 ft.lbf", "13 ft.lbf", "15 ft.lbf", "0.5 ft.lbf"), stated("14.0 ft.lbf"));
  EXPECT_EQ(rounded("14 ft.lbf", "13 ft.lbf", "15 ft.lbf", "0.50 ft.lbf"), stated("14.0 ft.lbf"));
  EXPECT_EQ(rounded("14 ft.lbf", "13 ft.lbf", "15 ft.lbf", "1.0 ft.lbf"), stated("14 ft.lbf"));
  EXPECT_EQ(rounded("0.3 N.m", "0.2 N.m", "0.4 N.m", "0.1 N.m"), stated("0.3 N.m"));
  EXPECT_EQ(rounded("1234 N.m", "1000 N.m", "2000 N.m", "100 N.m"), stated("1200 N.m"));
}

TEST(RoundedToGraduation, StaysInsideTheBandEvenWhereTheNearestMarkDoesNot) {
  EXPECT_EQ(rounded("64 N.m", "61 N.m", "64 N.m", "2 N.m"), stated("64 N.m"));
  EXPECT_EQ(rounded("64 N.m", "56 N.m", "64 N.m", "5 N.m"), stated("60 N.m"));  // 65 is nearer, and outside
  EXPECT_EQ(rounded("61 N.m", "61 N.m", "70 N.m", "5 N.m"), stated("65 N.m"));  // 60 is nearer, and outside
}

TEST(RoundedToGraduation, CountsTheEndsOfTheBandAsInside) {
  EXPECT_EQ(rounded("21 N.m", "21 N.m", "21 N.m", "0.7 N.m"), stated("21.0 N.m"));
  EXPECT_EQ(rounded("5 ft.lbf", "5 ft.lbf", "5 ft.lbf", "5 in.lbf"), stated("60 in.lbf"));
  const Torque fivePercentMore = newtonMetres(20 * 1.05);  // 21.000000000000004 or so
  EXPECT_EQ(roundedToGraduation(fivePercentMore, {fivePercentMore, fivePercentMore}, stated("1 N.m")),
            stated("21 N.m"));
}

TEST(RoundedToGraduation, NamesTheMarksOnEitherSideWhenNoneIsInside) {
  EXPECT_THAT(
      rounded("62 N.m", "61 N.m", "64 N.m", "5 N.m"),
      FailsWith(ErrorCode::OutOfRange,
                "no mark of a scale in steps of 5\u202fN·m lies between 61\u202fN·m and 64\u202fN·m; the "
                "marks beside it are 60\u202fN·m and 65\u202fN·m, so use a tool with a finer scale."));
  EXPECT_THAT(rounded("0.2 N.m", "0 N.m", "0.3 N.m", "0.5 N.m"),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("0.0\u202fN·m and 0.5\u202fN·m")));
}

TEST(RoundedToGraduation, NeverSetsAToolToZero) {
  EXPECT_EQ(rounded("0.1 N.m", "0 N.m", "1 N.m", "0.5 N.m"), stated("0.5 N.m"));
}

TEST(RoundedToGraduation, RefusesWhatIsNoScaleAndNoBand) {
  for (const char* graduation : {"0 N.m", "0.00 N.m", "0.0000001 N.m", "10000000000 N.m"})
    EXPECT_THAT(rounded("60 N.m", "50 N.m", "70 N.m", graduation),
                FailsWith(ErrorCode::OutOfRange, HasSubstr("no scale has steps of")));
  EXPECT_THAT(rounded("60 N.m", "70 N.m", "50 N.m", "5 N.m"),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("below the lowest")));
  for (const double impossible : {-1.0, 2e9, std::numeric_limits<double>::infinity(), std::nan("")})
    EXPECT_THAT(
        roundedToGraduation(newtonMetres(impossible), {newtonMetres(1), newtonMetres(2)}, stated("1 N.m")),
        FailsWith(ErrorCode::OutOfRange, HasSubstr("is on no scale")))
        << impossible;
}

// The same question answered with whole numbers only: everything is a count of thousandths.
TEST(RoundedToGraduation, AgreesWithWholeNumberArithmetic) {
  sweep(20000, [](Random& random) {
    const int step = wholeBetween(1, 3000, random);
    const int low = wholeBetween(0, 100000, random);
    const int high = low + wholeBetween(0, 6000, random);
    const int aim = wholeBetween(low, high, random);
    const auto thousandths = [](int count) { return newtonMetres(count / 1000.0); };
    const StatedTorque graduation{fmt::format("{}.{:03}", step / 1000, step % 1000), &kNewtonMetre};

    int best = 0;
    for (int mark = step; mark <= high; mark += step)
      if (mark >= low && (best == 0 || std::abs(mark - aim) <= std::abs(best - aim))) best = mark;

    const auto answer =
        roundedToGraduation(thousandths(aim), {thousandths(low), thousandths(high)}, graduation);
    if (best == 0) {
      EXPECT_THAT(answer, FailsWith(ErrorCode::OutOfRange));
    } else {
      ASSERT_THAT(answer, IsOk());
      EXPECT_EQ(answer->number(), best / 1000.0) << "step " << step << " band " << low << ' ' << high;
    }
  });
}

}  // namespace
}  // namespace cw
