#include "tests/rules_walk/floor.h"

#include "tests/support/sample_job.h"

namespace cw::test {
namespace {

TorqueTool wrench(std::string id, std::vector<Scale> scales, const char* due) {
  TorqueTool out = sampleTools().front();
  out.id = std::move(id);
  out.scales = std::move(scales);
  out.calibrations.front().due = *parseDate(due);
  return out;
}

Scale scale(const char* low, const char* high, const char* graduation, const TorqueUnit& unit) {
  return {{low, &unit}, {high, &unit}, {graduation, &unit}};
}

}  // namespace

Floor drawnFloor(Dice& dice) {
  Floor out;
  out.people = samplePeople();
  const auto add = [&](std::string sign, std::string name, std::set<Role> roles) {
    out.people.push_back({std::move(sign), std::move(name), std::move(roles), false, true, ""});
  };
  add("nils", "Nils Berg", {Role::Technician});
  add("olga", "Olga Reim", {Role::Inspector, Role::Technician});
  add("lars", "Lars Holm", {Role::ShopLead, Role::Technician});
  out.tools = {wrench("T-07", {scale("20", "150", "1", kPoundInch)}, "2099-01-10"),
               wrench("T-03", {scale("2", "60", "0.5", kPoundInch)}, "2099-01-10"),
               wrench("T-11", {scale("1", "40", "0.1", kNewtonMetre), scale("1", "30", "0", kPoundFoot)},
                      "2099-01-10"),
               wrench("T-08", {scale("20", "150", "1", kPoundInch)}, "2026-02-01")};
  out.tools[2].type = ToolType::Indicating;
  out.alone = dice.inHundred(12);
  if (!out.alone) return out;
  const std::size_t left = dice.of(std::vector<std::size_t>{0, 2, 5, 7});
  for (std::size_t i = 0; i < out.people.size(); ++i) out.people[i].active = i == left;
  return out;
}

void change(Floor& floor, Dice& dice) {
  const std::vector<Role> roles{Role::Technician, Role::ServiceWriter, Role::Trainer, Role::Inspector,
                                Role::ShopLead};
  Person& person = floor.people[dice.below(floor.people.size())];
  TorqueTool& tool = floor.tools[dice.below(floor.tools.size())];
  switch (dice.below(9)) {
    case 0:
      person.roles.insert(dice.of(roles));
      break;
    case 1:
      if (person.roles.size() > 1) person.roles.erase(person.roles.begin());
      break;
    case 2:
      person.apprentice = !person.apprentice;
      break;
    case 3:
      if (!floor.alone) person.active = !person.active;
      break;
    case 4:
      tool.dueNow = *parseDate("2026-03-04");
      break;
    case 5:
      tool.status = dice.inHundred(50) ? ToolStatus::Quarantined : ToolStatus::Retired;
      break;
    case 6:
      tool.calibrations.back().due = *parseDate(dice.inHundred(50) ? "2026-02-28" : "2027-03-01");
      break;
    case 7:
      tool.deviation = dice.inHundred(50) ? 0.04 : 0.2;
      break;
    default:
      tool.status = ToolStatus::InUse;
      tool.dueNow.reset();
  }
}

}  // namespace cw::test
