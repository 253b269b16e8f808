#include "core/base/id.h"

#include <set>

#include "tests/support/matchers.h"

namespace cw {
namespace {

Moment atMilliseconds(std::int64_t count) {
  return {std::chrono::sys_time<std::chrono::milliseconds>{std::chrono::milliseconds{count}}, {}};
}

// The time of the example in RFC 9562, appendix A.6: 0x017F22E279B0, version 7.
TEST(Id, VersionSevenCarriesTheTimeFirst) {
  const Id id = Id::make(atMilliseconds(0x017F22E279B0));
  EXPECT_THAT(id.text(), testing::MatchesRegex("017f22e2-79b0-7[0-9a-f]+-[89ab][0-9a-f]+-[0-9a-f]+"));
  EXPECT_THAT(Id::parse(id.text()), IsOkAnd(id));
}

TEST(Id, SortsByTimeAndNeverRepeats) {
  std::set<Id> seen;
  Id last;
  for (int i = 0; i < 1000; ++i) {
    const Id id = Id::make(atMilliseconds(1'700'000'000'000 + i));
    EXPECT_GT(id, last);
    last = id;
    seen.insert(id);
    seen.insert(Id::make(atMilliseconds(1'700'000'000'000 + i)));
  }
  EXPECT_EQ(seen.size(), 2000U);
}

TEST(Id, ReadsTheRfcsExamplesAndFoldsCapitals) {
  for (const char* text : {"f81d4fae-7dec-11d0-a765-00a0c91e6bf6", "017F22E2-79B0-7CC3-98C4-DC0C0C07398F",
                           "00000000-0000-0000-0000-000000000000", "FFFFFFFF-FFFF-FFFF-FFFF-FFFFFFFFFFFF"})
    EXPECT_THAT(Id::parse(text), IsOk()) << text;
  EXPECT_EQ(Id::parse("017F22E2-79B0-7CC3-98C4-DC0C0C07398F")->text(),
            "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(Id, RefusesOtherText) {
  for (const char* text :
       {"", "x", "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398g",
        "017f22e279b07cc398c4dc0c0c07398f", "{017f22e2-79b0-7cc3-98c4-dc0c0c07398f}",
        "017f22e2-79b0-7cc3-98c4-dc0c0c07398ff", "017f22e27-9b0-7cc3-98c4-dc0c0c07398f"})
    EXPECT_THAT(Id::parse(text), FailsWith(ErrorCode::InvalidInput)) << text;
}

TEST(Id, IsEmptyOnlyUntilItIsMade) {
  EXPECT_TRUE(Id().empty());
  EXPECT_FALSE(Id::make(atMilliseconds(0)).empty());
}

}  // namespace
}  // namespace cw
