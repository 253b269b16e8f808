#include "core/base/clock.h"

#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using namespace std::chrono;

std::string asUtc(const char* text) {
  Moment moment = parseRfc3339(text).value();
  moment.offset = minutes{0};
  return rfc3339(moment);
}

// RFC 3339, section 5.8, as printed there.
TEST(ParseRfc3339, ReadsTheExamplesOfTheRfc) {
  EXPECT_EQ(asUtc("1985-04-12T23:20:50.52Z"), "1985-04-12T23:20:50.520+00:00");
  EXPECT_EQ(asUtc("1996-12-19T16:39:57-08:00"), "1996-12-20T00:39:57.000+00:00");
  EXPECT_EQ(parseRfc3339("1996-12-19T16:39:57-08:00"), parseRfc3339("1996-12-20T00:39:57Z"));
}

TEST(ParseRfc3339, RefusesTheRfcsLeapSecondsAndDaysBefore1970) {
  for (const char* text :
       {"1990-12-31T23:59:60Z", "1990-12-31T15:59:60-08:00", "1937-01-01T12:00:27.87+00:20"})
    EXPECT_THAT(parseRfc3339(text), FailsWith(ErrorCode::InvalidInput)) << text;
}

TEST(ParseRfc3339, KeepsTheOffset) {
  const Moment moment = parseRfc3339("2026-03-04T14:05:06.007+05:45").value();
  EXPECT_EQ(moment.offset, minutes{345});
  EXPECT_EQ(rfc3339(moment), "2026-03-04T14:05:06.007+05:45");
  EXPECT_EQ(isoDate(localDate(parseRfc3339("2026-03-04T23:30:00-02:30").value())), "2026-03-04");
}

TEST(ParseRfc3339, CutsFractionsToMilliseconds) {
  EXPECT_EQ(asUtc("2026-03-04T14:05:06.1Z"), "2026-03-04T14:05:06.100+00:00");
  EXPECT_EQ(asUtc("2026-03-04T14:05:06.123456789Z"), "2026-03-04T14:05:06.123+00:00");
  EXPECT_EQ(asUtc("2026-03-04T14:05:06.9999Z"), "2026-03-04T14:05:06.999+00:00");
}

TEST(ParseRfc3339, RefusesEverythingElse) {
  const char* cases[] = {
      "",
      "2026",
      "2026-03-04",
      "2026-03-04T14:05:06",
      "2026-03-04T14:05Z",
      "2026-03-04 14:05:06Z",
      "2026-03-04t14:05:06z",
      "2026-3-04T14:05:06Z",
      "2026-02-29T14:05:06Z",
      "2026-02-31T14:05:06Z",
      "2026-13-01T14:05:06Z",
      "2026-00-01T14:05:06Z",
      "2026-03-00T14:05:06Z",
      "2026-03-04T24:00:00Z",
      "2026-03-04T14:60:06Z",
      "2026-03-04T14:05:61Z",
      "2026-03-04T14:05:06.Z",
      "2026-03-04T14:05:06.1234567890Z",
      "2026-03-04T14:05:06,5Z",
      "2026-03-04T14:05:06+1:00",
      "2026-03-04T14:05:06+0100",
      "2026-03-04T14:05:06+24:00",
      "2026-03-04T14:05:06+01:60",
      "2026-03-04T14:05:06Z ",
      "2026-03-04T14:05:06Zx",
      "+026-03-04T14:05:06Z",
      "12026-03-04T14:05:06Z",
      "2026-03-04T14:05:0\u0666Z",
  };
  for (const char* text : cases) EXPECT_THAT(parseRfc3339(text), FailsWith(ErrorCode::InvalidInput)) << text;
  EXPECT_THAT(parseRfc3339("yesterday"),
              FailsWith(ErrorCode::InvalidInput,
                        "“yesterday” is not a time; write date, time and offset as in "
                        "2026-03-04T14:05:06+01:00."));
}

TEST(Rfc3339, ReadsBackWhatItWrote) {
  sweep(2000, [](Random& random) {
    const Moment moment{sys_time<milliseconds>{milliseconds{std::uniform_int_distribution<std::int64_t>(
                            86'400'000, 253'402'000'000'000)(random)}},
                        minutes{wholeBetween(-1439, 1439, random)}};
    const auto again = parseRfc3339(rfc3339(moment));
    ASSERT_THAT(again, IsOk()) << rfc3339(moment);
    EXPECT_EQ(again->utc, moment.utc);
    EXPECT_EQ(again->offset, moment.offset);
  });
}

TEST(ParseDate, TakesCalendarDatesOnly) {
  EXPECT_EQ(isoDate(parseDate("2024-02-29").value()), "2024-02-29");
  for (const char* text :
       {"", "2023-02-29", "2026-3-4", "04.03.2026", "2026-03-04T", "1969-12-31", "2026/03/04"})
    EXPECT_THAT(parseDate(text), FailsWith(ErrorCode::InvalidInput)) << text;
}

TEST(SteppingClock, MovesOnlyWhenAsked) {
  const Moment start = parseRfc3339("2026-03-04T14:05:06Z").value();
  SteppingClock clock(start, milliseconds{2000});
  EXPECT_EQ(clock.now(), start);
  EXPECT_EQ(clock.now().utc, start.utc + milliseconds{2000});
  clock.set(start);
  EXPECT_EQ(clock.now(), start);
}

TEST(SystemClock, SaysAnOffsetThatReadsBack) {
  SystemClock clock;
  const Moment now = clock.now();
  EXPECT_EQ(parseRfc3339(rfc3339(now)).value().offset, now.offset);
  EXPECT_GT(now, parseRfc3339("2026-01-01T00:00:00Z").value());
}

}  // namespace
}  // namespace cw
