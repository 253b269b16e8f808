#include <ostream>

#include "core/base/json.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

/// One change to the small sheet and how the refusal begins.
struct Fault {
  const char* name;
  const char* from;
  const char* to;
  const char* sentence;
};

void PrintTo(const Fault& fault, std::ostream* out) {
  *out << fault.name;
}

constexpr Fault kFaults[] = {
    {"OtherFormat", "clampwright.sheet", "clampwright.settle",
     "format: this file is of another format, “clampwright.settle”"},
    {"NoVersion", "\"version\": 1,", "", "version: this field is missing"},
    {"VersionZero", "\"version\": 1", "\"version\": 0", "version: 0 is out of range"},
    {"VersionInQuotes", "\"version\": 1", "\"version\": \"1\"", "version: \"1\" is not a whole number"},
    {"NoId", "\"id\": \"019ab0c4-5e00-7a10-8f3e-6d2b41c07e99\",", "", "id: this field is missing"},
    {"BadId", "019ab0c4", "019ab0cX", "id: “019ab0cX-5e00-7a10-8f3e-6d2b41c07e99” is not a UUID"},
    {"NoTitle", "\"title\": \"Small cover\",", "", "title: this field is missing"},
    {"BlankTitle", "\"Small cover\"", "\" \"", "title: this text is empty"},
    {"NumberForText", "\"Small cover\"", "12", "title: 12 is not a text"},
    {"DuplicateKey", "\"title\": \"Small cover\",", "\"title\": \"A\", \"title\": \"B\",",
     "title: the key “title” stands twice"},
    {"SourcesNoList", "\"sources\": [", "\"sources\": {\"a\": [], \"b\": [", "line "},
    {"SourceNoObject", "\"sources\": [{", "\"sources\": [7, {", "sources[0]: this is not an object"},
    {"DateThatIsNone", "2020-02-29", "2021-02-29", "sources[0].date: "},
    {"PartCountZero", "\"count\": 1}", "\"count\": 0}", "parts[0].count: 0 is out of range"},
    {"UnknownFastenerKind", "\"screw\", \"thread\"", "\"rivet\", \"thread\"",
     "fasteners[0].kind: “rivet” is not known here; write one of bolt, screw, stud, nut."},
    {"UnknownReading", "\"range\"", "\"guess\"", "specifications[0].reading: “guess” is not known here"},
    {"UnknownUnit", "\"8\", \"unit\": \"N.m\"", "\"8\", \"unit\": \"lb\"", "specifications[0].low"},
    {"TorqueAsNumber", "{\"value\": \"8\",", "{\"value\": 8,",
     "specifications[0].low.value: 8 is not a text"},
    {"TorqueGrouped", "{\"value\": \"8\",", "{\"value\": \"1,200\",", "specifications[0].low"},
    {"TorqueNegative", "{\"value\": \"8\",", "{\"value\": \"-8\",", "specifications[0].low"},
    {"TorqueNotANumber", "{\"value\": \"8\",", "{\"value\": \"NaN\",", "specifications[0].low"},
    {"TorqueWithMore", "{\"value\": \"8\",", "{\"spread\": \"1\", \"value\": \"8\",",
     "specifications[0].low: the field “spread” is not known here"},
    {"AimBelowLow", "\"9\", \"unit\"", "\"7\", \"unit\"", "specifications[0].aim: 7"},
    {"AimAboveHigh", "\"9\", \"unit\"", "\"11\", \"unit\"", "specifications[0].high: 10"},
    {"MixedUnits", "\"10\", \"unit\": \"N.m\"", "\"10\", \"unit\": \"lbf.ft\"",
     "specifications[0].high: 9\u202fN·m and 10\u202fft·lbf are in different units"},
    {"RangeWithoutLow", "\"low\": {\"value\": \"8\", \"unit\": \"N.m\"},", "",
     "specifications[0].low: this field is missing"},
    {"AngleMissing", "\"reading\": \"range\",", "\"reading\": \"range\", \"method\": \"torque-and-angle\",",
     "specifications[0].angle: this field is missing"},
    {"DanglingSource", "\"source\": \"manual\"", "\"source\": \"bulletin\"",
     "specifications[0].source: there is no “bulletin” among the sources"},
    {"DanglingFastener", "\"fastener\": \"screw\",\n      \"spec", "\"fastener\": \"bolt\",\n      \"spec",
     "joints[0].fastener: there is no “bolt” among the fasteners"},
    {"DanglingSpecification", "\"specification\": \"torque\"", "\"specification\": \"torsion\"",
     "joints[0].specification: there is no “torsion” among the specifications"},
    {"DanglingAtPosition", "{\"2\": {\"fastener\": \"screw\"}}", "{\"2\": {\"fastener\": \"bolt\"}}",
     "joints[0].positions[2].fastener: there is no “bolt”"},
    {"UnknownPosition", "{\"2\": {", "{\"5\": {", "joints[0].positions: there is no position “5”"},
    {"TwiceInOrder", "[\"1\", \"3\", \"2\", \"4\"]", "[\"1\", \"3\", \"2\", \"3\"]",
     "joints[0].order[3]: position “3” stands twice in the order; list every label once."},
    {"MissingInOrder", "[\"1\", \"3\", \"2\", \"4\"]", "[\"1\", \"3\", \"2\"]",
     "joints[0].order: position “4” is missing from the order"},
    {"StrangerInOrder", "[\"1\", \"3\", \"2\", \"4\"]", "[\"1\", \"3\", \"2\", \"9\"]",
     "joints[0].order[3]: there is no position “9”"},
    {"NumbersInOrder", "[\"1\", \"3\", \"2\", \"4\"]", "[1, 3, 2, 4]", "joints[0].order[0]: 1 is not a text"},
    {"UnknownRule", "\"order\": [", "\"rule\": \"zigzag\", \"order\": [", "joints[0].rule: "},
    {"NoLayout", "\"layout\": {\"unit\": \"mm\", \"circle\": {\"count\": 4, \"diameter\": \"80\"}},", "",
     "joints[0].layout: this field is missing"},
    {"NoShape", "\"circle\": {\"count\": 4, \"diameter\": \"80\"}", "\"oval\": {}",
     "joints[0].layout: this layout has no shape"},
    {"TwoShapes", "\"circle\": {", "\"line\": {\"count\": 1}, \"circle\": {",
     "joints[0].layout: this layout has several shapes"},
    {"CircleOfTwo", "\"count\": 4", "\"count\": 2", "joints[0].layout.circle.count: "},
    {"DiameterAsNumber", "\"diameter\": \"80\"", "\"diameter\": 80",
     "joints[0].layout.circle.diameter: 80 is not a text"},
    {"DiameterNegative", "\"diameter\": \"80\"", "\"diameter\": \"-80\"",
     "joints[0].layout.circle.diameter: "},
    {"UnknownLengthUnit", "\"unit\": \"mm\", \"circle\"", "\"unit\": \"cubit\", \"circle\"",
     "joints[0].layout.unit: “cubit” is no unit of length"},
    {"UnknownInShape", "\"count\": 4,", "\"count\": 4, \"tilt\": \"1\",",
     "joints[0].layout.circle: the field “tilt” is not known here"},
    {"SharesThatFall", "[\"50\", \"100\"]", "[\"50\", \"40\", \"100\"]",
     "joints[0].passes.shares_percent[1]: "},
    {"SharesThatStopShort", "[\"50\", \"100\"]", "[\"50\", \"90\"]", "joints[0].passes.shares_percent[1]: "},
    {"NoShares", "[\"50\", \"100\"]", "[]", "joints[0].passes.shares_percent: there is no pass"},
    {"UnknownBar", "\"passes\"", "\"no_second_turn\": [\"cork\"], \"passes\"",
     "joints[0].no_second_turn: “cork” is not known here"},
    {"UnknownConsequence", "\"passes\"", "\"if_it_lets_go\": \"boredom\", \"passes\"",
     "joints[0].if_it_lets_go: “boredom” is not known here; write one of nuisance, leak, damage, injury."},
    {"UnknownStepKind", "\"kind\": \"apply\"", "\"kind\": \"polish\"",
     "steps[0].kind: “polish” is not known here; write one of act, check, measure, apply, tighten, hold."},
    {"StepIdTwice", "\"id\": \"s2\"", "\"id\": \"s1\"", "steps[1].id: the id “s1” stands twice"},
    {"StepWithoutText", "\"text\": \"Tighten the cover.\",", "", "steps[1].text: this field is missing"},
    {"TightenNothing", ", \"joint\": \"cover\"", "", "steps[1].joint: this field is missing"},
    {"TightenUnknown", ", \"joint\": \"cover\"", ", \"joint\": \"lid\"",
     "steps[1].joint: there is no “lid” among the joints"},
    {"ApplyUnknown", "\"part\": \"oil\"", "\"part\": \"tar\"",
     "steps[0].part: there is no “tar” among the parts"},
    {"FieldOfAnotherKind", "\"kind\": \"tighten\"", "\"unit\": \"mm\", \"kind\": \"tighten\"",
     "steps[1].unit: a step of kind “tighten” has no such field"},
    {"MeasureWithoutUnit", "\"unit\": \"mm\", \"low\"", "\"low\"", "steps[2].unit: this field is missing"},
    {"MeasureUnknownUnit", "\"unit\": \"mm\", \"low\"", "\"unit\": \"hair\", \"low\"",
     "steps[2].unit: “hair” is no unit known here"},
    {"LimitsReversed", "\"low\": \"0\"", "\"low\": \"0.2\"", "steps[2].high: 0.1 is less than 0.2"},
    {"LimitAsWords", "\"low\": \"0\"", "\"low\": \"none\"", "steps[2].low: “none” is not a number"},
    {"HoldWithoutDemand",
     "\"kind\": \"measure\", \"text\": \"Measure the gap.\", \"unit\": \"mm\", \"low\": \"0\", \"high\": "
     "\"0.1\"",
     "\"kind\": \"hold\", \"text\": \"Show the gap.\"", "steps[2].hold: this field is missing"},
    {"UnknownWitness", "\"joint\": \"cover\"}", "\"joint\": \"cover\", \"hold\": {\"witness\": \"nobody\"}}",
     "steps[1].hold.witness: “nobody” is not known here"},
};

class BadSheet : public testing::TestWithParam<Fault> {};
INSTANTIATE_TEST_SUITE_P(, BadSheet, testing::ValuesIn(kFaults),
                         [](const auto& each) { return std::string(each.param.name); });

TEST_P(BadSheet, IsRefusedWithPlaceAndReason) {
  const auto sheet = readSheet(replaced(smallSheetText(), GetParam().from, GetParam().to));
  ASSERT_FALSE(sheet.has_value());
  EXPECT_THAT(sentence(sheet.error()), StartsWith(GetParam().sentence));
  EXPECT_EQ(exitCode(sheet.error().code), 2);
  EXPECT_FALSE(sheet.error().expected.empty()) << "says what would be right";
}

TEST(BadSheetFile, IsNotJson) {
  EXPECT_THAT(readSheet("torque: 60"), FailsWith(ErrorCode::InvalidInput, HasSubstr("line 1, column ")));
  EXPECT_THAT(readSheet(""), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(readSheet("[]"), FailsWith(ErrorCode::InvalidInput, HasSubstr("not an object")));
}

TEST(BadSheetFile, IsNotUtf8) {
  EXPECT_THAT(readSheet(replaced(smallSheetText(), "Small", "Sm\xff")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("UTF-8")));
}

TEST(BadSheetFile, IsNestedTooDeep) {
  EXPECT_THAT(readSheet(std::string(100'000, '[')), FailsWith(ErrorCode::InvalidInput, HasSubstr("deeper")));
}

TEST(BadSheetFile, IsFromANewerProgram) {
  const auto sheet = readSheet(replaced(smallSheetText(), "\"version\": 1", "\"version\": 2"));
  EXPECT_THAT(sheet, FailsWith(ErrorCode::NewerVersion, HasSubstr("version 2")));
  EXPECT_EQ(exitCode(sheet.error().code), 3);
}

std::string withMoreSteps(const std::string& step, std::size_t count) {
  std::string steps;
  for (std::size_t i = 0; i < count; ++i) steps += step + ",";
  return replaced(smallSheetText(), "\"steps\": [", "\"steps\": [" + steps);
}

TEST(BadSheetFile, HasMoreStepsThanASheetHolds) {
  EXPECT_THAT(readSheet(withMoreSteps("{}", kMostListed - 3)),
              FailsWith(ErrorCode::InvalidInput, StartsWith("steps[0].id: ")));
  EXPECT_THAT(readSheet(withMoreSteps("{}", kMostListed - 2)),
              FailsWith(ErrorCode::OutOfRange, StartsWith("steps: 10001 are too many")));
  EXPECT_THAT(readSheet(withMoreSteps("{}", 999'997)),
              FailsWith(ErrorCode::OutOfRange, StartsWith("steps: 1000000 are too many")));
}

TEST(BadSheetFile, HasMorePositionsThanASheetHolds) {
  const std::string joint =
      R"({"id":"a","name":"A","layout":{"unit":"mm","circle":{"count":1999,"diameter":"9000"}},)"
      R"("rule":"balanced","passes":{"shares_percent":["100"]}},)";
  std::string joints;
  for (int i = 0; i < 6; ++i) joints += joint;
  EXPECT_THAT(readSheet(replaced(smallSheetText(), "\"joints\": [", "\"joints\": [" + joints)),
              FailsWith(ErrorCode::OutOfRange, StartsWith("joints.layout: 11998 are too many")));
}

TEST(BadSheetFile, IsRefusedWhereverItIsCut) {
  const std::string whole = smallSheetText();
  const std::size_t end = whole.rfind('}');
  for (std::size_t length = 0; length <= end; ++length)
    ASSERT_FALSE(readSheet(std::string_view(whole).substr(0, length)).has_value()) << length;
}

}  // namespace
}  // namespace cw
