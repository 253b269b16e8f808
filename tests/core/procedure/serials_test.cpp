#include "core/procedure/serials.h"

#include <gmock/gmock.h>

#include <optional>

#include "core/procedure/serial_number.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;

Sheet forSerials(const std::string& words) {
  Sheet out;
  out.serials = words;
  return out;
}

SerialFit fit(const std::string& words, const std::string& serial) {
  return serialFit(forSerials(words), serial).fit;
}

constexpr SerialFit kFits = SerialFit::Fits, kOutside = SerialFit::Outside, kNot = SerialFit::NotJudged;

TEST(SerialFit, ReadsTheWordsOfSheets) {
  const struct {
    const char *words, *serial;
    SerialFit fit;
  } cases[] = {
      {"all", "117", kFits},
      {"All serial numbers", "PS40-0999", kFits},
      {"", "117", kFits},
      {"117", "117", kFits},
      {"117", "118", kOutside},
      {"100 to 480", "0999", kOutside},
      {"100 to 480", "0480", kFits},
      {"100 to 480", "PS40-0117", kFits},
      {"100 to 480", "PS40-0999", kOutside},
      {"100-480", "99", kOutside},
      {"100–480", "100", kFits},
      {"100 - 480", "481", kOutside},
      {"100 through 480", "480", kFits},
      {"Serial numbers 100 to 480", "99", kOutside},
      {"S/N 100 to 480", "101", kFits},
      {"between 100 and 480", "480", kFits},
      {"from 100", "99", kOutside},
      {"from 100", "100", kFits},
      {"from 100 to 480", "481", kOutside},
      {"100 and up", "100000000000000000000000000", kFits},
      {"100 onwards", "99", kOutside},
      {"up to 480", "0480", kFits},
      {"up to 480", "481", kOutside},
      {"after 480", "480", kOutside},
      {"after 480", "481", kFits},
      {"after 999", "1000", kFits},
      {"before 100", "99", kFits},
      {"before 100", "100", kOutside},
      {"1, 5, 9 to 12", "5", kFits},
      {"1, 5, 9 to 12", "6", kOutside},
      {"1,5,9-12", "11", kFits},
      {"100,105,110", "105", kFits},
      {"100 to 200 and 300 to 400", "250", kOutside},
      {"100 to 200 and 300 to 400", "300", kFits},
      {"100, 105, and from 300", "1000", kFits},
      {"PS40-0100 to PS40-0480", "PS40-0117", kFits},
      {"PS40-0100 to PS40-0480", "ps 40 0117", kFits},
      {"PS40-0100 to PS40-0480", "ps40-117", kFits},
      {"PS40-0100 to PS40-0480", "PS40-0481", kOutside},
      {"PS40-0100 to PS40-0480", "RD12-0117", kOutside},
      {"PS40-0100 to PS40-0480", "0117", kNot},
      {"PS40-0100 to 0480", "PS40-0480", kFits},
      {"PS40-0100-PS40-0480", "PS40-0481", kOutside},
      {"PS40-0117", "PS40-0117", kFits},
      {"PS40-0117", "PS40-0118", kOutside},
      {"100 to 480", "", kNot},
      {"100 to 480", "not known", kNot},
      {"100 to 480", "117 B", kNot},
  };
  for (const auto& [words, serial, expected] : cases)
    EXPECT_EQ(fit(words, serial), expected) << "“" << words << "” against “" << serial
                                            << "”: " << plain(serialFit(forSerials(words), serial).reason);
}

TEST(SerialFit, DoesNotGuess) {
  for (const char* words : {"see bulletin 7-31",
                            "all except 120",
                            "480 to 100",
                            "480-100",
                            "1,000 to 2,000",
                            "100,200 to 300,400",
                            "12-0100",
                            "A100 to B480",
                            "100 to",
                            "to",
                            ",",
                            "100,,200",
                            "from",
                            "100 to 480 (export only)",
                            "100 to 480, not 200",
                            "before 0",
                            "early ones",
                            "100 to 480 to 500",
                            "١٠٠ to ٤٨٠",
                            "-",
                            "\x1b[2J",
                            "100\x01"})
    EXPECT_EQ(fit(words, "117"), kNot) << words;
}

TEST(SerialFit, SurvivesHostileTexts) {
  const std::string many(100'000, '9');
  EXPECT_EQ(fit(many, "117"), kNot);
  EXPECT_EQ(fit("100 to " + many, "117"), kNot);
  EXPECT_EQ(fit("100 to 480", many), kOutside);
  EXPECT_EQ(fit("100 to 480", std::string(1000, '0') + "117"), kFits);
  std::string ands = "1";
  for (int i = 0; i < 1500; ++i) ands += " and 1";
  EXPECT_EQ(fit(ands, "1"), kFits);
  std::string any;
  unsigned state = 1;
  for (int i = 0; i < 20'000; ++i) {
    state = state * 1664525u + 1013904223u;
    const char* const pieces[] = {"1",     "480",   " to ", "-", ",",    " and ",
                                  "from ", "PS40-", " ",    "0", "\xff", "all"};
    any += pieces[(state >> 16) % 12];
    if (any.size() > 40) any.clear();
    (void)serialFit(forSerials(any), "117");
    (void)serialFit(forSerials("100 to 480"), any);
  }
}

/// For every number on both sides of every range, in each way of writing it.
TEST(SerialFit, HoldsEveryNumberOfARangeAndNoOther) {
  for (const auto& [from, to] : {std::pair{1, 1}, std::pair{9, 11}, std::pair{98, 112}, std::pair{0, 7}}) {
    const std::string a = std::to_string(from), b = std::to_string(to);
    Sheet data;
    data.serialRanges = {{a, b}};
    const Sheet sheets[] = {data, forSerials(a + " to " + b), forSerials(a + "-" + b),
                            forSerials("000" + a + " to 000" + b), forSerials("from " + a + " to " + b)};
    for (int n = 0; n < 130; ++n)
      for (const Sheet& sheet : sheets)
        for (const std::string before : {"", "00", "PS40-", "PS40-0"}) {
          const std::string serial = before + std::to_string(n);
          ASSERT_EQ(serialFit(sheet, serial).fit, n >= from && n <= to ? kFits : kOutside)
              << serialsText(sheet) << " against " << serial;
        }
  }
}

TEST(SerialFit, GoesByTheRangesRatherThanByTheWords) {
  Sheet sheet = forSerials("see bulletin");
  sheet.serialRanges = {{"100", ""}, {"", "20"}};
  EXPECT_EQ(serialFit(sheet, "19").fit, kFits);
  EXPECT_EQ(serialFit(sheet, "100").fit, kFits);
  EXPECT_EQ(serialFit(sheet, "50").fit, kOutside);
  sheet.serials.clear();
  EXPECT_EQ(serialsText(sheet), "100–…, …–20");
}

TEST(SerialFit, SaysWhy) {
  EXPECT_EQ(plain(serialFit(forSerials("100 to 480"), "0999").reason),
            "This sheet is for serial numbers 100 to 480; the machine's is 0999.");
  EXPECT_EQ(plain(serialFit(forSerials("100 to 480"), "").reason),
            "This sheet is for serial numbers 100 to 480; the machine's is not known.");
  EXPECT_THAT(plain(serialFit(forSerials("see bulletin"), "5").reason), HasSubstr("see bulletin"));
}

TEST(SerialNumber, CountsOnAndBack) {
  EXPECT_EQ(serialAfter("PS40-0480"), "PS40-0481");
  EXPECT_EQ(serialAfter("A-0999"), "A-1000");
  EXPECT_EQ(serialAfter("99"), "100");
  EXPECT_EQ(serialBefore("1000"), "0999");
  EXPECT_EQ(serialBefore("A000"), std::nullopt);
}

TEST(SerialRanges, TravelThroughTheFile) {
  const std::string text = replaced(smallSheetText(), R"("serials": "all",)",
                                    R"("serial_ranges": [{"from": "100", "to": "480"}, {"from": "P-600"}],)");
  const Sheet sheet = sheetFrom(text);
  EXPECT_EQ(sheet.serialRanges, (std::vector<SerialRange>{{"100", "480"}, {"P-600", ""}}));
  EXPECT_EQ(sheetFrom(writeSheet(sheet)), sheet);
}

TEST(SerialRanges, AreRefusedWhereTheyAreNone) {
  const auto refusal = [](const char* range) {
    const auto sheet = readSheet(replaced(smallSheetText(), R"("serials": "all",)",
                                          R"("serial_ranges": [)" + std::string(range) + "],"));
    return sheet ? "taken" : sentence(sheet.error());
  };
  EXPECT_THAT(refusal("{}"), HasSubstr("serial_ranges[0]: this range has no end"));
  EXPECT_THAT(refusal(R"({"from":"first"})"),
              HasSubstr("serial_ranges[0].from: “first” does not end in digits"));
  EXPECT_THAT(refusal(R"({"from":"480","to":"100"})"),
              HasSubstr("serial_ranges[0].to: 100 is less than 480"));
  EXPECT_THAT(refusal(R"({"from":"A1","to":"B2"})"), HasSubstr("“A1” and “B2” do not begin alike"));
  EXPECT_THAT(refusal(R"({"from":"1","until":"2"})"), HasSubstr("the field “until” is not known here"));
}

}  // namespace
}  // namespace cw
