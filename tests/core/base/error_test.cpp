#include "core/base/error.h"

#include "core/base/finding.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

TEST(Fill, PutsArgumentsWhereTheTemplateSays) {
  EXPECT_EQ(fill("%2 before %1", {"one", "two"}), "two before one");
  EXPECT_EQ(fill("%1 %1", {"again"}), "again again");
  EXPECT_EQ(fill("%1", {"%2"}), "%2");  // an argument is not a template
  EXPECT_EQ(fill("%2 at 100 % and %0", {"one"}), "%2 at 100 % and %0");
  EXPECT_EQ(fill("%", {"one"}), "%");
}

TEST(Sentence, NamesPlaceValueAndWhatWouldBeRight) {
  const Error error{ErrorCode::InvalidInput,
                    "joints[0].target",
                    "60 lb",
                    {"“%1” is no torque", {"60 lb"}},
                    "write 60 in·lbf or 60 ft·lbf"};
  EXPECT_EQ(sentence(error), "joints[0].target: “60 lb” is no torque; write 60 in·lbf or 60 ft·lbf.");
  EXPECT_EQ(sentence(Error{ErrorCode::Locked, "", "", "the shop file is in use", {}}),
            "the shop file is in use.");
  EXPECT_EQ(sentence(Finding{Severity::Blocking, "order-gap", "joints[0].order", "position 5 is missing",
                             "name each position once"}),
            "joints[0].order: position 5 is missing; name each position once.");
}

TEST(Within, PutsTheOuterPlaceFirst) {
  const auto placed = [](const char* outer, const char* inner) {
    return within(outer, Error{ErrorCode::InvalidInput, inner, "", "wrong", {}}).place;
  };
  EXPECT_EQ(placed("joints[0]", "target"), "joints[0].target");
  EXPECT_EQ(placed("joints", "[0].target"), "joints[0].target");
  EXPECT_EQ(placed("--torque", ""), "--torque");
  EXPECT_EQ(placed("", "target"), "target");
}

TEST(ExitCode, TellsBadInputFromStorageTrouble) {
  EXPECT_EQ(exitCode(ErrorCode::InvalidInput), 2);
  EXPECT_EQ(exitCode(ErrorCode::OutOfTurn), 2);
  for (const ErrorCode code :
       {ErrorCode::Corrupt, ErrorCode::NewerVersion, ErrorCode::Locked, ErrorCode::ReadOnly,
        ErrorCode::DiskFull, ErrorCode::Storage, ErrorCode::Conflict})
    EXPECT_EQ(exitCode(code), 3);
}

TEST(HasBlocking, LooksForOneThatStops) {
  const auto finding = [](Severity severity) { return Finding{severity, "code", "", "problem", {}}; };
  EXPECT_FALSE(hasBlocking({}));
  EXPECT_FALSE(hasBlocking({finding(Severity::Note), finding(Severity::Warning)}));
  EXPECT_TRUE(hasBlocking({finding(Severity::Note), finding(Severity::Blocking)}));
}

TEST(Shown, EscapesWhatWouldUpsetATerminal) {
  EXPECT_EQ(shown("60 in·lbf"), "60 in·lbf");
  EXPECT_EQ(shown("a\nb\x7f"), "a\\x0ab\\x7f");
  EXPECT_EQ(shown("\x1b[31m"), "\\x1b[31m");
  EXPECT_EQ(shown("\u009b31m"), "\\xc2\\x9b31m");
  EXPECT_EQ(shown("N\u200bm"), "N\\xe2\\x80\\x8bm");
  EXPECT_EQ(shown("\u202e5"), "\\xe2\\x80\\xae5");
  EXPECT_EQ(shown("\xff\xc3"), "\\xff\\xc3");
  EXPECT_EQ(shown(std::string("\0", 1)), "\\x00");
}

TEST(Shown, CutsAfterSixtyCharactersAndNeverInsideOne) {
  const std::string dots = [] {
    std::string text;
    for (int i = 0; i < 60; ++i) text += "·";
    return text;
  }();
  EXPECT_EQ(shown(dots), dots);
  EXPECT_EQ(shown(dots + "·"), dots + "…");
  EXPECT_EQ(shown(std::string(1 << 20, 'x')), std::string(60, 'x') + "…");
}

}  // namespace
}  // namespace cw
