#include "core/procedure/review.h"

#include <functional>
#include <ostream>

#include "core/units/parse.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::Contains;

StatedLength length(std::string_view text) {
  return *parse<LengthTag>(text);
}

TorqueTool wrench(std::string_view low, std::string_view high, std::string_view graduation) {
  TorqueTool tool;
  tool.id = "T-01";
  tool.scales = {{torque(low), torque(high), torque(graduation)}};
  tool.deviation = 0.04;
  return tool;
}

/// A shop that can carry out the small sheet, and a second person to approve it.
struct Shop {
  std::vector<TorqueTool> crib{wrench("5 N.m", "25 N.m", "0.5 N.m")};
  std::string approver = "jon";
  bool onePerson = false;

  Findings review(const Sheet& sheet) const {
    return cw::review(sheet, {shippedCatalogue(), std::span<const TorqueTool>(crib), approver, onePerson});
  }
};

std::string told(const Findings& findings) {
  std::string out;
  for (const Finding& finding : findings) out += finding.code + ": " + sentence(finding) + "\n";
  return out;
}

/// One thing done to a sheet or its shop, and what the review must say of it.
struct Case {
  const char* name;
  const char* code;
  Severity severity;
  const char* place;
  std::function<void(Sheet&, Shop&)> spoil;
};

void PrintTo(const Case& each, std::ostream* out) {
  *out << each.name;
}

Specification& specification(Sheet& sheet) {
  return sheet.specifications[0];
}

const Case kCases[] = {
    {"NoAuthor", "heading-missing", Severity::Blocking, "author", [](Sheet& s, Shop&) { s.author.clear(); }},
    {"NoModel", "heading-missing", Severity::Blocking, "model", [](Sheet& s, Shop&) { s.model.clear(); }},
    {"NoSerials", "heading-missing", Severity::Warning, "serials",
     [](Sheet& s, Shop&) { s.serials.clear(); }},
    {"SerialsInWords", "serials-not-read", Severity::Warning, "serials",
     [](Sheet& s, Shop&) { s.serials = "see bulletin 7-31"; }},
    {"SerialsTwice", "serials-disagree", Severity::Blocking, "serial_ranges",
     [](Sheet& s, Shop&) {
       s.serials = "100 to 480", s.serialRanges = {{"100", "470"}};
     }},
    {"TorqueAndAngle", "method-not-done", Severity::Blocking, "specifications[0].method",
     [](Sheet& s, Shop&) { specification(s).method = Method::TorqueAndAngle; }},
    {"StrayAngle", "method-not-done", Severity::Blocking, "specifications[0].angle",
     [](Sheet& s, Shop&) {
       specification(s).angle = StatedAngle{"90", &kDegree};
     }},
    {"RetorqueThatNobodyCalls", "retorque-not-called", Severity::Warning, "joints[0].passes.retorque",
     [](Sheet& s, Shop&) { s.joints[0].passes.retorque = Retorque{}; }},
    {"InjuryUnwatched", "injury-without-hold", Severity::Warning, "steps[1].hold",
     [](Sheet& s, Shop&) { s.joints[0].ifItLetsGo = IfItLetsGo::Injury; }},
    {"FourHolds", "many-holds", Severity::Note, "steps",
     [](Sheet& s, Shop&) {
       s.steps[1].hold = HoldDemand{Witness::Watched, {"marks"}, {}};
       while (s.steps.size() < 6) {
         s.steps.push_back(s.steps[1]);
         s.steps.back().id = "s" + std::to_string(s.steps.size());
       }
     }},
    {"ApprovedByAuthor", "approver-is-author", Severity::Blocking, "author",
     [](Sheet&, Shop& shop) { shop.approver = "ines"; }},
    {"AloneInTheShop", "not-independent", Severity::Warning, "author",
     [](Sheet&, Shop& shop) { shop.approver = "ines", shop.onePerson = true; }},
    {"JointLeftOut", "joint-never-tightened", Severity::Blocking, "joints[0]",
     [](Sheet& s, Shop&) { s.steps.erase(s.steps.begin() + 1); }},
    {"PartLeftOver", "part-unused", Severity::Warning, "parts[1]",
     [](Sheet& s, Shop&) {
       s.parts.push_back({"rag", "Rag", 1, false, false, {}});
     }},
    {"GasketNotRenewed", "single-use-not-renewed", Severity::Blocking, "parts[1]",
     [](Sheet& s, Shop&) {
       s.parts.push_back({"gasket", "Gasket", 1, true, false, {}});
     }},
    {"FastenerLeftOver", "entry-unused", Severity::Note, "fasteners[1]",
     [](Sheet& s, Shop&) { s.fasteners.push_back(s.fasteners[0]), s.fasteners[1].id = "spare"; }},
    {"NoSource", "source-missing", Severity::Blocking, "specifications[0].source",
     [](Sheet& s, Shop&) { specification(s).source.clear(); }},
    {"SourceWithoutPage", "source-vague", Severity::Warning, "sources[0]",
     [](Sheet& s, Shop&) { s.sources[0].page.clear(); }},
    {"NobodyReadIt", "interpreter-missing", Severity::Warning, "specifications[0].interpreted_by",
     [](Sheet& s, Shop&) { specification(s).interpretedBy.clear(); }},
    {"NoCondition", "condition-missing", Severity::Warning, "specifications[0].condition",
     [](Sheet& s, Shop&) { specification(s).condition.clear(); }},
    {"StrangeCondition", "condition-unknown", Severity::Blocking, "specifications[0].condition",
     [](Sheet& s, Shop&) { specification(s).condition = "buttered"; }},
    {"NoAim", "aim-missing", Severity::Blocking, "specifications[0].aim",
     [](Sheet& s, Shop&) { specification(s).aim.reset(); }},
    {"NoHigh", "tolerance-missing", Severity::Blocking, "specifications[0]",
     [](Sheet& s, Shop&) { specification(s).high.reset(); }},
    {"UnexplainedTolerance", "assumption-unexplained", Severity::Warning, "specifications[0].why",
     [](Sheet& s, Shop&) { specification(s).toleranceStated = false; }},
    {"PrintedElsewhere", "printed-outside-tolerance", Severity::Blocking, "specifications[0].printed",
     [](Sheet& s, Shop&) { specification(s).printed = "8-10 ft. lbs."; }},
    {"ColumnsExchanged", "columns-disagree", Severity::Blocking, "specifications[0].printed_second",
     [](Sheet& s, Shop&) { specification(s).printedSecond = "10.8-13.6 ft-lb"; }},
    {"ColumnsRounded", "columns-rounded", Severity::Note, "specifications[0].printed_second",
     [](Sheet& s, Shop&) {
       specification(s).printedSecond = "71.0-90.5 in-lb";
       specification(s).printed = "8.0-10.0 N·m";
     }},
    {"ColumnsOfDifferentLength", "columns-not-compared", Severity::Warning,
     "specifications[0].printed_second",
     [](Sheet& s, Shop&) { specification(s).printedSecond = "80 in-lb"; }},
    {"ThreadWouldStrip", "above-band", Severity::Blocking, "joints[0]",
     [](Sheet& s, Shop&) {
       s.fasteners[0].tapped = "cast aluminium A356-T6", s.fasteners[0].engagement = length("3 mm");
     }},
    {"FootForInchPounds", "past-yield", Severity::Blocking, "joints[0]",
     [](Sheet& s, Shop&) {
       specification(s).printed = "80 ft-lb";
       for (auto* each : {&specification(s).low, &specification(s).aim, &specification(s).high})
         *each = torque("80 lbf.ft");
     }},
    {"InchPoundsForNewtonMetres", "below-band", Severity::Blocking, "joints[0]",
     [](Sheet& s, Shop&) {
       specification(s).printed = "9 in-lb";
       for (auto* each : {&specification(s).low, &specification(s).aim, &specification(s).high})
         *each = torque("9 lbf.in");
     }},
    {"UnmarkedScrew", "not-judged", Severity::Note, "joints[0]",
     [](Sheet& s, Shop&) { s.fasteners[0].grade.clear(); }},
    {"GasketLimits", "not-judged", Severity::Note, "joints[0]",
     [](Sheet& s, Shop&) { s.fasteners[0].ungrounded = Ungrounded::LimitedByGasket; }},
    {"StrangeThread", "thread-unknown", Severity::Blocking, "fasteners[0].thread",
     [](Sheet& s, Shop&) { s.fasteners[0].thread = "M6.3"; }},
    {"StrangeGrade", "grade-unknown", Severity::Blocking, "fasteners[0].grade",
     [](Sheet& s, Shop&) { s.fasteners[0].grade = "99.9"; }},
    {"StrangeMaterial", "material-unknown", Severity::Blocking, "fasteners[0].tapped",
     [](Sheet& s, Shop&) { s.fasteners[0].tapped = "cheese", s.fasteners[0].engagement = length("10 mm"); }},
    {"EmptyCrib", "no-tool-fits", Severity::Warning, "specifications[0]",
     [](Sheet&, Shop& shop) { shop.crib.clear(); }},
    {"OnlyCoarseMarks", "no-tool-fits", Severity::Warning, "specifications[0]",
     [](Sheet&, Shop& shop) { shop.crib = {wrench("5 N.m", "50 N.m", "7 N.m")}; }},
    {"OnlyInQuarantine", "no-tool-fits", Severity::Warning, "specifications[0]",
     [](Sheet&, Shop& shop) { shop.crib[0].status = ToolStatus::Quarantined; }},
    {"BottomsInItsHole", "fastener-too-long", Severity::Blocking, "fasteners[0]",
     [](Sheet& s, Shop&) {
       s.fasteners[0].length = length("30 mm"), s.fasteners[0].grip = length("10 mm");
       s.fasteners[0].depth = length("18 mm");
     }},
    {"BarelyEngages", "fastener-too-short", Severity::Blocking, "fasteners[0]",
     [](Sheet& s, Shop&) {
       s.fasteners[0].length = length("20 mm"), s.fasteners[0].grip = length("15 mm");
       s.fasteners[0].engagement = length("9 mm");
     }},
    {"EngagesMoreThanItsHole", "engagement-too-long", Severity::Blocking, "fasteners[0]",
     [](Sheet& s, Shop&) {
       s.fasteners[0].engagement = length("12 mm"), s.fasteners[0].depth = length("10 mm");
     }},
    {"OrderNotItsRules", "order-not-by-rule", Severity::Blocking, "joints[0].order",
     [](Sheet& s, Shop&) { s.joints[0].rule = "circular"; }},
    {"RuleThatDoesNotFit", "rule-does-not-fit", Severity::Blocking, "joints[0].rule",
     [](Sheet& s, Shop&) { s.joints[0].rule = "army-circle"; }},
    {"CheckPassOnASoftGasket", "check-pass-barred", Severity::Blocking, "joints[0].passes.check",
     [](Sheet& s, Shop&) {
       s.joints[0].noSecondTurn = {NoSecondTurn::SoftGasket};
       s.joints[0].passes.check = CheckPass{};
     }},
    {"CheckPassAfterAngle", "check-pass-barred", Severity::Blocking, "joints[0].passes.check",
     [](Sheet& s, Shop&) {
       specification(s).method = Method::TorqueAndAngle;
       s.joints[0].passes.check = CheckPass{};
     }},
    {"TwoActions", "several-actions", Severity::Warning, "steps[0].text",
     [](Sheet& s, Shop&) { s.steps[0].text = "Clean the threads and apply oil."; }},
    {"TwoSentences", "several-actions", Severity::Warning, "steps[0].text",
     [](Sheet& s, Shop&) { s.steps[0].text = "Clean the threads. Apply oil."; }},
    {"LongSentence", "too-many-words", Severity::Warning, "steps[0].text",
     [](Sheet& s, Shop&) {
       s.steps[0].text =
           "Apply the oil that stands on the second shelf of the grey cupboard behind the door of the paint "
           "store to threads.";
     }},
    {"BareNumber", "bare-number", Severity::Blocking, "steps[1].text",
     [](Sheet& s, Shop&) { s.steps[1].text = "Tighten the cover to 9."; }},
    {"TorqueInText", "torque-in-text", Severity::Blocking, "steps[1].text",
     [](Sheet& s, Shop&) { s.steps[1].text = "Tighten the cover to 9 N·m."; }},
    {"VagueWord", "vague-word", Severity::Warning, "steps[1].text",
     [](Sheet& s, Shop&) { s.steps[1].text = "Tighten the cover securely."; }},
    {"ActionInCaution", "action-in-caution", Severity::Blocking, "steps[1].cautions[0]",
     [](Sheet& s, Shop&) { s.steps[1].cautions = {"Remove the dowel first."}; }},
    {"ActionInWarning", "action-in-caution", Severity::Blocking, "steps[1].warnings[0]",
     [](Sheet& s, Shop&) { s.steps[1].warnings = {"Wait until the case is cold."}; }},
    {"TorqueInNote", "value-in-caution", Severity::Blocking, "steps[1].notes[0]",
     [](Sheet& s, Shop&) { s.steps[1].notes = {"The old revision said 12 N·m."}; }},
    {"ValueInCaution", "value-in-caution", Severity::Warning, "steps[1].cautions[0]",
     [](Sheet& s, Shop&) { s.steps[1].cautions = {"The seal hardens above 80 °C."}; }},
    {"HoldWithoutSubject", "hold-says-nothing", Severity::Warning, "steps[1].hold",
     [](Sheet& s, Shop&) { s.steps[1].hold = HoldDemand{}; }},
    {"HoldAfterTheFact", "hold-too-late", Severity::Blocking, "steps[3].hold",
     [](Sheet& s, Shop&) {
       Step hold;
       hold.id = "s4", hold.kind = StepKind::Hold, hold.text = "Show the cover.";
       hold.hold = HoldDemand{Witness::Watched, {"setting"}, {}};
       s.steps.push_back(hold);
     }},
    {"HoldAlone", "hold-by-same-person", Severity::Warning, "steps[1].hold",
     [](Sheet& s, Shop& shop) {
       s.steps[1].hold = HoldDemand{Witness::Watched, {"setting"}, {}};
       shop.onePerson = true;
     }},
};

class Review : public testing::TestWithParam<Case> {};
INSTANTIATE_TEST_SUITE_P(, Review, testing::ValuesIn(kCases),
                         [](const auto& each) { return std::string(each.param.name); });

TEST_P(Review, FindsWhatIsWrongAndWhere) {
  Sheet sheet = smallSheet();
  Shop shop;
  GetParam().spoil(sheet, shop);
  const Findings findings = shop.review(sheet);
  EXPECT_THAT(findings, Contains(testing::AllOf(testing::Field(&Finding::code, GetParam().code),
                                                testing::Field(&Finding::severity, GetParam().severity),
                                                testing::Field(&Finding::place, GetParam().place))))
      << told(findings);
  for (const Finding& finding : findings) EXPECT_FALSE(finding.cure.empty()) << sentence(finding);
}

TEST(ReviewOfASoundSheet, SaysNothing) {
  EXPECT_EQ(told(Shop().review(smallSheet())), "");
}

TEST(ReviewOfASoundSheet, IsSilentOnWhatOnlyLooksWrong) {
  Sheet sheet = smallSheet();
  sheet.steps[0].text = "Apply oil to the 4 screws of the M6 thread, as step 2 wants it.";
  sheet.steps[1].cautions = {"Grease or paste in place of oil overloads the screws.",
                             "Never turn a screw again after the last pass."};
  sheet.steps[1].notes = {"Oil that stands open is dirty and spoils the threads."};
  sheet.steps[2].text = "Measure the gap at 0.5 mm from the edge.";
  EXPECT_EQ(told(Shop().review(sheet)), "");
}

TEST(ReviewOfASoundSheet, DoesNotMissToolsWhereNoShopIsOpen) {
  EXPECT_EQ(told(review(smallSheet(), {shippedCatalogue(), std::nullopt, "", false})), "");
}

TEST(ReviewOfASoundSheet, IsSilentOnRangesThatAgreeAndHoldsThatAreFew) {
  Sheet sheet = smallSheet();
  sheet.serials = "100 to 480, 500", sheet.serialRanges = {{"500", "500"}, {"0100", "480"}};
  sheet.joints[0].ifItLetsGo = IfItLetsGo::Injury;
  sheet.steps[1].hold = HoldDemand{Witness::Watched, {"setting"}, {}};
  EXPECT_EQ(told(Shop().review(sheet)), "");
}

class ShippedSheetReview : public testing::TestWithParam<std::string_view> {};
INSTANTIATE_TEST_SUITE_P(, ShippedSheetReview, testing::ValuesIn(shippedSheets()));

TEST_P(ShippedSheetReview, FindsNothing) {
  const Findings findings =
      review(sheetFrom(resource(GetParam())), {shippedCatalogue(), std::nullopt, "jon", false});
  EXPECT_EQ(told(findings), "");
}

}  // namespace
}  // namespace cw
