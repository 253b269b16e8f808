#include <algorithm>

#include "core/base/near_name.h"
#include "core/joint/bolt_stiffness.h"
#include "core/joint/tightening_angle.h"
#include "core/report/figures.h"

namespace cw {
namespace {

constexpr Stress kBoltModulus = gigapascals(207);  // steel, Shigley 9th ed., table 8-8

/// Gives a symbol of the working another name, so that two workings fit on one sheet.
void renameGiven(Working& working, const std::string& from, const std::string& to) {
  for (Working::Given& row : working.given)
    if (row.symbol == from) row.symbol = to;
  for (Working::Step& row : working.steps)
    if (row.formula.starts_with(from + "·")) row.formula = to + row.formula.substr(from.size());
}

void forget(Working& working, const std::string& symbol) {
  std::erase_if(working.given, [&](const Working::Given& row) { return row.symbol == symbol; });
}

}  // namespace

const std::vector<MemberMaterial>& memberMaterials() {
  static const std::vector<MemberMaterial> kMaterials{{"steel", kSteelFit, gigapascals(207)},
                                                      {"grey iron", kGreyIronFit, gigapascals(100)},
                                                      {"aluminium", kAluminiumFit, gigapascals(71)},
                                                      {"copper", kCopperFit, gigapascals(119)}};
  return kMaterials;
}

Result<MemberMaterial> memberMaterial(std::string_view name) {
  std::vector<std::string_view> names;
  for (const MemberMaterial& material : memberMaterials()) {
    if (material.name == name) return material;
    names.push_back(material.name);
  }
  const auto near = nearNames(name, names);
  return fail(ErrorCode::NotFound, "members", name, {"“%1” is no material of parts here", {shown(name)}},
              near.empty() ? Message("write steel, grey iron, aluminium or copper")
                           : Message("%1", {didYouMean(near)}));
}

Result<Outcome> angleFromSnug(const AngleQuestion& question) {
  const Length d = question.thread.diameter, grip = question.plain + question.threaded;
  const Area shank = Area::si(kPi / 4 * d.si() * d.si());
  CW_TRY(bolt,
         boltStiffness({question.plain, question.threaded, shank, question.thread.stressArea, kBoltModulus}));
  CW_TRY(members, memberStiffness(question.members.fit, question.members.modulus, d, grip));
  CW_TRY(angle, angleAfterSnug(question.load, question.snug, {bolt.value, members.value}, question.thread));

  renameGiven(members.working, "E", "Em");
  forget(angle.working, "kb");
  forget(angle.working, "km");
  Working working;
  working.include(bolt.working).include(members.working).include(angle.working);
  working.formula = angle.working.formula;

  FigureAnswer answer;
  answer.lead = {"From snug at %1 to %2, turn",
                 {text(question.snug, kKilonewton), text(question.load, kKilonewton)}};
  answer.number = text(angle.value, kDegree, 3);
  answer.sentences.push_back(
      {"Bolt %1, clamped parts %2.",
       {text(bolt.value, kKilonewtonPerMillimetre), text(members.value, kKilonewtonPerMillimetre)}});
  answer.cautions = {
      "Computed for smooth, closed faces; gaskets, paint and open gaps need more turn. Find the angle by "
      "test, or take the maker's."};
  return Outcome{{std::move(answer)}, std::move(working)};
}

}  // namespace cw
