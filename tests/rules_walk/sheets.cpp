#include "tests/rules_walk/sheets.h"

#include "tests/support/quick_joint.h"

namespace cw::test {
namespace {

Specification torque(std::string id, const char* low, const char* aim, const char* high,
                     const TorqueUnit& unit, std::string condition) {
  Specification out;
  out.id = std::move(id);
  out.printed = aim;
  out.source = "manual";
  out.reading = low == nullptr ? Reading::Maximum : Reading::Range;
  if (low != nullptr) out.low = StatedTorque{low, &unit};
  out.aim = StatedTorque{aim, &unit};
  if (high != nullptr) out.high = StatedTorque{high, &unit};
  out.toleranceStated = true;
  out.condition = std::move(condition);
  out.interpretedBy = "tilda";
  return out;
}

/// A range, a range in another unit, "not over", a single value with limits, and one without a condition.
std::vector<Specification> torques() {
  return {torque("range", "60", "65", "70", kPoundInch, "dry"),
          torque("metric", "9.0", "10", "11", kNewtonMetre, "oiled"),
          torque("not-over", nullptr, "85", "90", kPoundInch, "dry"),
          torque("feet", "9", "10", "11", kPoundFoot, ""),
          torque("wide", "30", "40", "50.0", kPoundInch, "dry")};
}

PassPlan drawnPasses(Dice& dice) {
  PassPlan out;
  const std::vector<std::vector<double>> shares{{1}, {0.5, 1}, {0.3, 0.7, 1}};
  out.shares = dice.of(shares);
  out.byHand = dice.inHundred(75);
  if (dice.inHundred(30)) out.snug = 0.2;
  out.check.reset();
  if (dice.inHundred(55)) out.check = CheckPass{1 + dice.below(3)};
  if (dice.inHundred(25)) {
    out.gaps = GapReadings{};
    out.gaps->places = 4;
    out.gaps->afterPasses = {1 + dice.below(out.shares.size())};
    if (dice.inHundred(40)) out.gaps->afterPasses = {out.shares.size()};
  }
  return out;
}

Joint drawnJoint(Dice& dice, const std::string& id) {
  const std::vector<std::string> ids{"range", "metric", "not-over", "feet", "wide"};
  const std::size_t places = 3 + dice.below(4);
  Joint out;
  out.id = id;
  out.name = "Cover " + id;
  out.layout.shape = Circle{places, millimetres(80), {}, 1, Direction::Clockwise};
  out.fastener = dice.of(std::vector<std::string>{"screw", "stud", "left"});
  out.specification = dice.of(ids);
  for (std::size_t i = 1; i <= places; ++i) out.order.push_back(std::to_string(i));
  dice.shuffle(out.order);
  if (dice.inHundred(40))
    for (const std::string& label : out.order)
      if (dice.inHundred(40)) out.positions[label].specification = dice.of(ids);
  out.passes = drawnPasses(dice);
  return out;
}

HoldDemand drawnHold(Dice& dice, bool ofAJoint) {
  HoldDemand out;
  out.witness = dice.inHundred(50) ? Witness::Independent : Witness::Watched;
  for (const char* what : {"setting", "marks", "count", "the drain is clear"})
    if (dice.inHundred(what == std::string_view("setting") && ofAJoint ? 80 : 30))
      out.what.emplace_back(what);
  if (out.what.empty()) out.what = {"marks"};
  return out;
}

Step drawnStep(Dice& dice, std::size_t number, StepKind kind, Sheet& sheet) {
  Step out;
  out.id = "s" + std::to_string(number);
  out.kind = kind;
  out.text = "Do it.";
  if (dice.inHundred(20)) out.warnings = {"Parts move."};
  if (dice.inHundred(10)) out.cautions = {"Threads are soft."};
  if (kind == StepKind::Act && dice.inHundred(60)) out.part = dice.inHundred(70) ? "gasket" : "bracket";
  if (kind == StepKind::Apply) out.part = "compound";
  if (kind == StepKind::Measure) {
    out.unit = "mm";
    if (dice.inHundred(70)) out.low = "0.02";
    if (dice.inHundred(70)) out.high = "0.10";
  }
  if (kind == StepKind::Hold) out.hold = drawnHold(dice, false);
  if (kind == StepKind::Tighten) {
    out.joint = "j" + std::to_string(sheet.joints.size() + 1);
    sheet.joints.push_back(drawnJoint(dice, out.joint));
    if (dice.inHundred(45)) out.hold = drawnHold(dice, true);
  }
  return out;
}

}  // namespace

Sheet drawnSheet(Dice& dice) {
  Sheet sheet = sampleSheet();
  sheet.parts = {{"gasket", "Cover gasket", 1, true, dice.inHundred(50), {}},
                 {"bracket", "Bracket", 1, false, false, {}},
                 {"compound", "Thread compound", 1, false, dice.inHundred(60), {}}};
  Fastener stud = sheet.fasteners.front(), left = stud;
  stud.id = "stud", stud.kind = FastenerKind::Stud;
  left.id = "left", left.thread += "-LH";
  sheet.fasteners.push_back(stud), sheet.fasteners.push_back(left);
  sheet.specifications = torques();
  sheet.joints.clear(), sheet.steps.clear();
  const std::vector<StepKind> kinds{StepKind::Act,   StepKind::Check,   StepKind::Measure,
                                    StepKind::Apply, StepKind::Tighten, StepKind::Hold};
  const std::size_t steps = 2 + dice.below(6), joint = dice.below(steps);
  for (std::size_t i = 0; i < steps; ++i)
    sheet.steps.push_back(drawnStep(dice, i + 1, i == joint ? StepKind::Tighten : dice.of(kinds), sheet));
  return sheet;
}

Sheet drawnQuickSheet(Dice& dice) {
  QuickJoint joint = quickCover();
  if (dice.inHundred(50)) joint.passes.check = CheckPass{2};
  if (dice.inHundred(30)) joint.passes.byHand = false;
  return quickSheetOf(joint);
}

}  // namespace cw::test
