// Fields that no program knows, or that were meant otherwise.
#include <set>

#include "core/procedure/review.h"
#include "core/procedure/sheet_objects.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;

Findings reviewed(const Sheet& sheet) {
  return review(sheet, {shippedCatalogue(), std::nullopt, "jon", false});
}

Findings ofFields(const Sheet& sheet) {
  Findings out;
  for (Finding& finding : reviewed(sheet))
    if (finding.code.starts_with("field-")) out.push_back(std::move(finding));
  return out;
}

/// The one finding that the small sheet gets for a member put before `from`.
Finding foundFor(std::string_view from, const std::string& member) {
  const Findings found =
      ofFields(sheetFrom(replaced(smallSheetText(), from, member + ", " + std::string(from))));
  if (found.size() == 1) return found[0];
  ADD_FAILURE() << member << ": " << found.size() << " findings";
  return {};
}

TEST(UnknownField, BlocksWhereItIsWrittenLikeOneOfItsObject) {
  const struct {
    const char *from, *member, *place, *meant;
  } cases[] = {
      {R"("id": "oil")", R"("single-use": true)", "parts[0].single-use", "single_use"},
      {R"("id": "oil")", R"("singleUse": true)", "parts[0].singleUse", "single_use"},
      {R"("id": "oil")", R"("SINGLE_USE": true)", "parts[0].SINGLE_USE", "single_use"},
      {R"("id": "oil")", R"("s i-n_g-l_e-u-s-e": true)", "parts[0].s i-n_g-l_e-u-s-e", "single_use"},
      {R"("id": "s2")", R"("warning": ["Hot."])", "steps[1].warning", "warnings"},
      {R"("id": "s2")", R"("caution": "Hot.")", "steps[1].caution", "cautions"},
      {R"("id": "s2")", R"("holds": {"witness": "watched"})", "steps[1].holds", "hold"},
      {R"("id": "s2")", R"("joints": ["cover"])", "steps[1].joints", "joint"},
      {R"("id": "screw")", R"("grades": "10.9")", "fasteners[0].grades", "grade"},
      {R"("printed": )", R"("tolerance-stated": true)", "specifications[0].tolerance-stated",
       "tolerance_stated"},
      {R"("name": "Cover")", R"("no_second_turns": ["angle"])", "joints[0].no_second_turns",
       "no_second_turn"},
      {R"("shares_percent")", R"("byHand": true)", "joints[0].passes.byHand", "by_hand"},
      {R"("unit": "mm", "circle")", R"("label": "letters")", "joints[0].layout.label", "labels"},
      {R"("fastener": "screw"}})", R"("fasteners": "bolt")", "joints[0].positions[2].fasteners", "fastener"},
      {R"("document")", R"("pages": "7")", "sources[0].pages", "page"},
      {R"("title")", R"("serial": "100 to 480")", "serial", "serials"},
      {R"("title")", R"("Notice": "Draft")", "Notice", "notice"},
  };
  for (const auto& [from, member, place, meant] : cases) {
    const Finding finding = foundFor(from, member);
    EXPECT_EQ(finding.severity, Severity::Blocking) << member;
    EXPECT_EQ(finding.place, place) << member;
    EXPECT_THAT(sentence(finding),
                HasSubstr("is not known here; did you mean “" + std::string(meant) + "”?"));
  }
}

TEST(UnknownField, OfAHoldIsFoundToo) {
  const Finding finding =
      foundFor(R"("joint": "cover"})", R"("hold": {"witness": "watched", "whats": ["marks"]})");
  EXPECT_EQ(finding.place, "steps[1].hold.whats");
  EXPECT_EQ(finding.severity, Severity::Blocking);
}

TEST(UnknownField, IsARemarkWhereNothingIsNear) {
  const Finding finding = foundFor(R"("id": "oil")", R"("shelf": "B 7")");
  EXPECT_EQ(finding.severity, Severity::Note);
  EXPECT_EQ(finding.code, "field-unknown");
  EXPECT_EQ(finding.place, "parts[0].shelf");
}

TEST(UnknownField, IsSaidWhereAnotherObjectReadsIt) {
  const Finding finding = foundFor(R"("name": "Cover")", R"("warnings": ["Hot."])");
  EXPECT_EQ(finding.severity, Severity::Warning);
  EXPECT_THAT(sentence(finding), HasSubstr("write it where it is read (step)"));
}

TEST(UnknownField, BlocksWhereItAsksForWhatTheBenchDoesNotDo) {
  for (const char* member :
       {R"("adapter": {})", R"("prevailing-torque": {})", R"("Turns": 2)", R"("wait": "1 h")"}) {
    const Finding finding = foundFor(R"("name": "Cover")", member);
    EXPECT_EQ(finding.severity, Severity::Blocking) << member;
    EXPECT_EQ(finding.code, "field-not-done") << member;
  }
}

TEST(UnknownField, IsNamedWithoutWhatCannotBeSeen) {
  const Finding finding = foundFor(R"("id": "oil")", R"("she\u001blf\u202e": 1)");
  EXPECT_THAT(sentence(finding), HasSubstr("“she\\x1blf\\xe2\\x80\\xae”"));
}

/// A sheet with every field of every open object; the schema is the judge of what there is.
constexpr std::string_view kEveryField = R"({
  "format":"clampwright.sheet","version":1,"id":"019ab0c4-5e00-7a10-8f3e-6d2b41c07e99","title":"T","revision":"A",
  "model":"M","serials":"1 to 5","serial_ranges":[{"from":"1","to":"5"}],"notice":"N","author":"ines",
  "sources":[{"id":"m","document":"D","page":"1","revision":"2","date":"2020-02-29","photograph":null}],
  "parts":[{"id":"p","name":"P","count":2,"single_use":true,"batch_wanted":true}],
  "fasteners":[{"id":"f","kind":"screw","thread":"M6","grade":"8.8","length":{"value":"20","unit":"mm"},"tapped":"steel",
    "engagement":{"value":"9","unit":"mm"},"grip":{"value":"9","unit":"mm"},"depth":{"value":"15","unit":"mm"},
    "ungrounded":"gasket"}],
  "specifications":[{"id":"s","printed":"9 N·m","printed_second":"80 in-lb","source":"m","reading":"range",
    "low":{"value":"8","unit":"N.m"},"aim":{"value":"9","unit":"N.m"},"high":{"value":"10","unit":"N.m"},
    "tolerance_stated":true,"condition":"oiled","method":"torque-and-angle","angle":{"value":"90","unit":"deg"},
    "interpreted_by":"ines","why":"W"}],
  "joints":[{"id":"j","name":"J","fastener":"f","specification":"s","positions":{"2":{"fastener":"f","specification":"s"}},
    "layout":{"unit":"mm","circle":{"count":4,"diameter":"80"},"view":{"rotation":"90"},"labels":"numbers",
      "left_out":[4],"groups":[{"positions":[1,2]},{"positions":[3]}],"outline":{"diameter":"90"}},
    "rule":"","order":["1","2","3"],"no_second_turn":["angle"],"if_it_lets_go":"damage",
    "passes":{"by_hand":false,"snug_percent":"10","shares_percent":["50","100"],"check":null,
      "retorque":{"wait":{"value":"4","unit":"h"}},
      "gaps":{"places":4,"after_passes":[1],"most_difference":{"value":"1","unit":"mm"}}}}],
  "steps":[{"id":"s1","kind":"tighten","text":"T","warnings":["W"],"cautions":["C"],"notes":["N"],"joint":"j",
      "hold":{"witness":"watched","what":["marks"]}},
    {"id":"s2","kind":"apply","text":"A","part":"p"},
    {"id":"s3","kind":"measure","text":"M","unit":"mm","low":"1","high":"2"}]})";

void collect(const Json& value, std::set<std::string>& keys) {
  if (const auto* items = value.array())
    for (const Json& item : *items) collect(item, keys);
  if (const auto* members = value.object())
    for (const auto& [key, member] : *members) keys.insert(key), collect(member, keys);
}

TEST(KnownFields, AreAllReadAndNoneIsTakenForUnknown) {
  EXPECT_TRUE(ofFields(sheetFrom(kEveryField)).empty());
  std::set<std::string> written;
  collect(*parseJson(kEveryField), written);
  const std::set<std::string_view> otherShapes{"rows", "perimeter", "line", "circles", "points"};
  for (const std::string_view kind : {"sheet", "source", "part", "fastener", "specification", "joint",
                                      "position", "layout", "passes", "step", "hold"}) {
    EXPECT_FALSE(fieldNames(kind).empty()) << kind;
    for (const std::string_view field : fieldNames(kind))
      if (!otherShapes.contains(field)) {
        EXPECT_TRUE(written.contains(std::string(field))) << kind << " " << field;
      }
  }
}

}  // namespace
}  // namespace cw
