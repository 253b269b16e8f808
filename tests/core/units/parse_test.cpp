#include "core/units/parse.h"

#include <fmt/format.h>

#include "core/units/format.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::Property;
using testing::SizeIs;

std::string refusal(std::string_view text, DecimalMark mark = DecimalMark::Point) {
  const auto result = parse<TorqueTag>(text, mark);
  return result ? "accepted as " + codeText(*result) : sentence(result.error());
}

struct Accepted {
  const char* typed;
  const char* stored;
};

TEST(ParseTorque, TakesTheShopsSpellings) {
  const Accepted cases[] = {
      {"60 N.m", "60 N.m"},
      {"60 N·m", "60 N.m"},
      {"60 N⋅m", "60 N.m"},
      {"60 N•m", "60 N.m"},
      {"60 N×m", "60 N.m"},
      {"60 N*m", "60 N.m"},
      {"60 N-m", "60 N.m"},
      {"60 N m", "60 N.m"},
      {"60Nm", "60 N.m"},
      {"60 NM", "60 N.m"},
      {"60 nm", "60 N.m"},
      {"60 Nm.", "60 N.m"},
      {"60 newton metres", "60 N.m"},
      {"60 newton-meter", "60 N.m"},
      {"60 Newton·Metres", "60 N.m"},
      {"120 N.cm", "120 N.cm"},
      {"120 Ncm", "120 N.cm"},
      {"120 newton-centimetres", "120 N.cm"},
      {"60 lbf.in", "60 lbf.in"},
      {"60 in·lbf", "60 lbf.in"},
      {"60 in-lb", "60 lbf.in"},
      {"60 inlb", "60 lbf.in"},
      {"60 lbf·in", "60 lbf.in"},
      {"60 in lbs", "60 lbf.in"},
      {"60 in. lbs.", "60 lbf.in"},
      {"60 In.-Lbs.", "60 lbf.in"},
      {"60 IN-LB", "60 lbf.in"},
      {"60 inch-pounds", "60 lbf.in"},
      {"60 inch pounds-force", "60 lbf.in"},
      {"60 inch lbs", "60 lbf.in"},
      {"60 inches-lb", "60 lbf.in"},
      {"60 pound-inches", "60 lbf.in"},
      {"60 lb-in", "60 lbf.in"},
      {"60 lbs.in", "60 lbf.in"},
      {"60lbin", "60 lbf.in"},
      {"60 lbfin", "60 lbf.in"},
      {"60-in-lb", "60 lbf.in"},
      {"5 lbf.ft", "5 lbf.ft"},
      {"5 ft·lbf", "5 lbf.ft"},
      {"5 ft lb", "5 lbf.ft"},
      {"5 ftlb", "5 lbf.ft"},
      {"5 ft-lbs", "5 lbf.ft"},
      {"5 ft. lbs.", "5 lbf.ft"},
      {"5 FT.LBS", "5 lbf.ft"},
      {"5 foot-pounds", "5 lbf.ft"},
      {"5 foot pound", "5 lbf.ft"},
      {"5 pound-feet", "5 lbf.ft"},
      {"5 lb-ft", "5 lbf.ft"},
      {"5 lbft", "5 lbf.ft"},
      {"5 lbfft", "5 lbf.ft"},
      {"3 kgf.m", "3 kgf.m"},
      {"3 kg-m", "3 kgf.m"},
      {"3 kgm", "3 kgf.m"},
      {"3 m-kg", "3 kgf.m"},
      {"3 mkgf", "3 kgf.m"},
      {"3 kp·m", "3 kgf.m"},
      {"3 kilogram-metres", "3 kgf.m"},
      {"3 kilogram-force metres", "3 kgf.m"},
      {"30 kgf.cm", "30 kgf.cm"},
      {"30 kg cm", "30 kgf.cm"},
      {"30 cm-kg", "30 kgf.cm"},
      {"30 kilogram centimeters", "30 kgf.cm"},
      {"40 ozf.in", "40 ozf.in"},
      {"40 in-oz", "40 ozf.in"},
      {"40 oz in", "40 ozf.in"},
      {"40 ounce-inches", "40 ozf.in"},
      {"40 inch-ounces", "40 ozf.in"},
      {"60\u00a0in\u2011lb", "60 lbf.in"},   // no-break space, no-break hyphen
      {"60\u202fin\u00b7lbf", "60 lbf.in"},  // as this program shows it
      {"60\u2009in\u00b7lbf", "60 lbf.in"},
      {"60\u202fin\u2013lbs\u00a0", "60 lbf.in"},
      {"60\u2007in\u2212lb", "60 lbf.in"},  // figure space, minus sign
      {"\t 60 in\u2010lb ", "60 lbf.in"},
      {"+60 in-lb", "60 lbf.in"},
      {"60.50 in-lb", "60.50 lbf.in"},
      {"060 in-lb", "060 lbf.in"},
      {".5 Nm", ".5 N.m"},
      {"0.125 Nm", "0.125 N.m"},
      {"1.200 Nm", "1.200 N.m"},
      {"0 Nm", "0 N.m"},
      {"12345678901234567890 Nm", "12345678901234567890 N.m"},
  };
  static_assert(std::size(cases) >= 60);
  for (const auto& [typed, stored] : cases) {
    const auto result = parse<TorqueTag>(typed);
    ASSERT_THAT(result, IsOk()) << typed;
    EXPECT_EQ(codeText(*result), stored) << typed;
  }
}

struct Refused {
  const char* typed;
  ErrorCode code;
  const char* sentence;
};

TEST(ParseTorque, SaysWhatToWriteInstead) {
  constexpr auto kInput = ErrorCode::InvalidInput;
  const Refused cases[] = {
      {"60 lb", kInput, "“lb” is no torque unit; write 60 in·lbf or 60 ft·lbf."},
      {"60 lbs.", kInput, "“lbs.” is no torque unit; write 60 in·lbf or 60 ft·lbf."},
      {"35 pounds", kInput, "“pounds” is no torque unit; write 35 in·lbf or 35 ft·lbf."},
      {"3 kg", kInput, "“kg” is no torque unit; write 3 kgf·m or 3 kgf·cm."},
      {"3 N", kInput, "“N” is no torque unit; write 3 N·m or 3 N·cm."},
      {"3 oz", kInput, "“oz” is no torque unit; write 3 in·ozf."},
      {"5 ft", kInput, "“ft” is no torque unit; write 5 ft·lbf."},
      {"60 in", kInput, "“in” is no torque unit; write 60 in·lbf or 60 in·ozf."},
      {"60", kInput, "“60” has no torque unit; write 60 in·lbf, 60 ft·lbf or 60 N·m."},
      {"60.5 ", kInput, "“60.5 ” has no torque unit; write 60.5 in·lbf, 60.5 ft·lbf or 60.5 N·m."},
      {"5 mm", kInput, "“mm” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"1,200 in.lbf", kInput, "“1,200” could mean two numbers; write 1200 or 1.200."},
      {"1,200", kInput, "“1,200” could mean two numbers; write 1200 or 1.200."},
      {"7,5 Nm", kInput, "“7,5” is not a number; write a decimal point, not a comma."},
      {"0,125 Nm", kInput, "“0,125” is not a number; write a decimal point, not a comma."},
      {"1,200.5 Nm", kInput,
       "“1,200.5” is not a number; write no grouping marks, and at most one decimal mark."},
      {"1.2.3 Nm", kInput, "“1.2.3” is not a number; write no grouping marks, and at most one decimal mark."},
      {"-5 N.m", ErrorCode::OutOfRange, "“-5” is negative; write a value of zero or more."},
      {"\u22125 N.m", ErrorCode::OutOfRange, "“\u22125” is negative; write a value of zero or more."},
      {"", kInput, "the torque is empty; write a number and its unit, for example 60 in·lbf."},
      {" \u00a0\t", kInput, "the torque is empty; write a number and its unit, for example 60 in·lbf."},
      {"NaN", kInput, "“NaN” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"nan N.m", kInput, "“nan N.m” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"inf N.m", kInput, "“inf N.m” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"securely", kInput, "“securely” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"N.m 5", kInput, "“N.m 5” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"-", kInput, "“-” is not a number; write a number and its unit, for example 60 in·lbf."},
      {".", kInput, "“.” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"--5 Nm", kInput, "“--5 Nm” is not a number; write a number and its unit, for example 60 in·lbf."},
      {"5. Nm", kInput,
       "“5.” is not a number; write plain digits with at most one decimal mark, for example 12.5."},
      {"123456789012345678901 Nm", kInput,
       "“123456789012345678901” is not a number; write at most 20 digits."},
      {"1 200 Nm", kInput,
       "“1 200 Nm” holds more than one number; write one number without gaps, then its unit."},
      {"5-7 Nm", kInput,
       "“5-7 Nm” holds more than one number; write one number without gaps, then its unit."},
      {"60 1/2 Nm", kInput,
       "“60 1/2 Nm” holds more than one number; write one number without gaps, then its unit."},
      {"1e3 Nm", kInput, "“e3 Nm” is no torque unit; write 1 in·lbf, 1 ft·lbf or 1 N·m."},
      {"1'200 Nm", kInput, "“'200 Nm” is no torque unit; write 1 in·lbf, 1 ft·lbf or 1 N·m."},
      {"5 mN", kInput, "“mN” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"5 mNm", kInput, "“mNm” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"5 kNm", kInput, "“kNm” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"5 N/m", kInput, "“N/m” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"5 ft lb s", kInput, "“ft lb s” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"5 ft oz", kInput, "“ft oz” is no torque unit; write 5 in·lbf, 5 ft·lbf or 5 N·m."},
      {"５ Nm", kInput, "“５ Nm” is not a number; write a number and its unit, for example 60 in·lbf."},
  };
  static_assert(std::size(cases) >= 30);
  for (const auto& [typed, code, words] : cases)
    EXPECT_THAT(parse<TorqueTag>(typed), FailsWith(code, words)) << typed;
}

TEST(ParseNumber, TakesTheLocalesCommaButNeverGuesses) {
  const auto comma = [](std::string_view text) { return parseNumber(text, DecimalMark::Comma); };
  EXPECT_EQ(comma("7,5"), "7.5");
  EXPECT_EQ(comma("7.5"), "7.5");
  EXPECT_EQ(comma("7,50"), "7.50");
  EXPECT_EQ(comma("1200"), "1200");
  EXPECT_EQ(comma("1,2000"), "1.2000");
  EXPECT_EQ(comma("0,125"), "0.125");
  EXPECT_EQ(comma("0.125"), "0.125");
  EXPECT_EQ(comma(",125"), ".125");
  EXPECT_THAT(comma("1,200"),
              FailsWith(ErrorCode::InvalidInput, "“1,200” could mean two numbers; write 1200 or 1,2000."));
  EXPECT_THAT(comma("1.200"),
              FailsWith(ErrorCode::InvalidInput, "“1.200” could mean two numbers; write 1200 or 1,2000."));
  EXPECT_THAT(comma("1200,500"), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(comma("1.200,5"), FailsWith(ErrorCode::InvalidInput, HasSubstr("no grouping marks")));
  EXPECT_EQ(codeText(parse<TorqueTag>("7,5 Nm", DecimalMark::Comma).value()), "7.5 N.m");
}

TEST(ParseNumber, OffersOnlyWhatItTakes) {
  for (const DecimalMark mark : {DecimalMark::Point, DecimalMark::Comma})
    for (const char* offered : {"1200", mark == DecimalMark::Point ? "1.200" : "1,2000"})
      EXPECT_THAT(parseNumber(offered, mark), IsOk()) << offered;
}

TEST(ParseNumber, KeepsASignOnlyWhereItMayBeBelowZero) {
  EXPECT_EQ(parseNumber("-40.0", DecimalMark::Point, true), "-40.0");
  EXPECT_EQ(parseNumber("\u221240", DecimalMark::Point, true), "-40");
  EXPECT_EQ(parseNumber("+40", DecimalMark::Point, true), "40");
  EXPECT_THAT(parseNumber("-40"), FailsWith(ErrorCode::OutOfRange));
  EXPECT_THAT(parseNumber("+-40", DecimalMark::Point, true), FailsWith(ErrorCode::InvalidInput));
}

template <class Tag>
void expectEveryUnitReadsBack() {
  for (const Unit<Tag>* unit : unitsOf<Tag>())
    for (const std::string_view spelling : {unit->code, unit->symbol, unit->words}) {
      const std::string typed = "12.50 " + std::string(spelling);
      EXPECT_THAT(parse<Tag>(typed), IsOkAnd(Stated<Tag>{"12.50", unit})) << typed;
    }
}

TEST(Parse, ReadsTheCodeSymbolAndWordsOfEveryUnit) {
  expectEveryUnitReadsBack<TorqueTag>();
  expectEveryUnitReadsBack<ForceTag>();
  expectEveryUnitReadsBack<LengthTag>();
  expectEveryUnitReadsBack<AreaTag>();
  expectEveryUnitReadsBack<StressTag>();
  expectEveryUnitReadsBack<AngleTag>();
  expectEveryUnitReadsBack<StiffnessTag>();
  expectEveryUnitReadsBack<TemperatureTag>();
  expectEveryUnitReadsBack<MassTag>();
  expectEveryUnitReadsBack<VolumeTag>();
  expectEveryUnitReadsBack<DurationTag>();
}

TEST(Parse, ReadsOtherKindsInTheirOwnWords) {
  EXPECT_EQ(parse<ForceTag>("3800 lb").value().unit, &kPoundForce);
  EXPECT_EQ(parse<LengthTag>("0.5\"").value().unit, &kInch);
  EXPECT_EQ(parse<LengthTag>("50 µm").value().unit, &kMicrometre);
  EXPECT_EQ(parse<AngleTag>("90°").value().unit, &kDegree);
  EXPECT_EQ(parse<StressTag>("15 PSI").value().unit, &kPsi);
  EXPECT_EQ(parse<TemperatureTag>("−5 °C").value().digits, "-5");
  EXPECT_EQ(parse<TemperatureTag>("68 F").value().unit, &kFahrenheit);
  EXPECT_EQ(parse<DurationTag>("24 hrs").value().unit, &kHour);
  EXPECT_EQ(parse<MassTag>("12 kg").value().unit, &kKilogram);
  EXPECT_THAT(
      parse<StressTag>("640 mPa"),
      FailsWith(ErrorCode::InvalidInput, "“mPa” is no pressure or stress unit; write 640 MPa or 640 psi."));
  EXPECT_THAT(parse<LengthTag>("12"),
              FailsWith(ErrorCode::InvalidInput, "“12” has no length unit; write 12 mm or 12 in."));
}

TEST(Parse, AnswersHostileTextWithOneShortSentence) {
  const std::string megabyte(1 << 20, '9');
  const std::string hostile[] = {
      megabyte,
      megabyte + " Nm",
      "5 " + megabyte,
      "5 " + std::string(1 << 20, 'n'),
      std::string(1 << 20, ' ') + "x",
      std::string(1 << 20, '.'),
      "5 \xff\xfe Nm",
      "\xc3\x28",
      "5 N\xb7m",
      std::string("5\0Nm", 4),
      "5 Nm\n",
      "5\r\nNm",
      "5 \x1b[31mNm",
      "5 \xc2\x9b\x33\x31mNm",
      "5 N\u200bm",
      "5 \u202eNm",
  };
  for (const std::string& text : hostile) {
    const std::string words = refusal(text);
    EXPECT_THAT(words, SizeIs(testing::Lt(400U)));
    EXPECT_THAT(words, Property(&std::string::size, testing::Gt(20U)));
    for (const char c : words) EXPECT_GE(static_cast<unsigned char>(c), 0x20) << words;
    EXPECT_THAT(words, testing::Not(HasSubstr("accepted"))) << words;
  }
}

TEST(StatedFromCode, TakesExactlyTheFileCodes) {
  EXPECT_EQ(codeText(statedFromCode<TorqueTag>("60.50", "lbf.in").value()), "60.50 lbf.in");
  EXPECT_THAT(
      statedFromCode<TorqueTag>("60", "in-lb"),
      FailsWith(ErrorCode::InvalidInput,
                "“in-lb” is no torque unit; write one of N.m, N.cm, lbf.in, lbf.ft, kgf.m, kgf.cm, ozf.in."));
  EXPECT_THAT(statedFromCode<TorqueTag>("60,5", "lbf.in"), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(statedFromCode<TorqueTag>("", "lbf.in"), FailsWith(ErrorCode::InvalidInput));
}

}  // namespace
}  // namespace cw
