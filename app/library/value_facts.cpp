#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/library/both_units.h"
#include "app/library/row_facts.h"
#include "core/fastener/catalogue.h"
#include "core/report/record_words.h"
#include "core/units/percent.h"

namespace cw {
namespace {

struct ValueText {
  Q_DECLARE_TR_FUNCTIONS(ValueFacts)
};

std::string aliasText(const std::vector<std::string>& aliases) {
  std::string out;
  for (const std::string& alias : aliases) out += (out.empty() ? "" : ", ") + alias;
  return out;
}

void addAliases(const std::vector<std::string>& aliases, Facts& facts) {
  if (!aliases.empty()) facts.rows.push_back({fromQt(ValueText::tr("Also called")), aliasText(aliases)});
}

std::string sizesText(const Grade& grade) {
  const LengthUnit& unit = *grade.sizeUnit;
  if (grade.from.si() <= 0) return fromQt(ValueText::tr("up to %1").arg(toQt(text(grade.upTo, unit, 6))));
  return fromQt(ValueText::tr("%1 to %2")
                    .arg(toQt(significant(in(unit, grade.from), 6)), toQt(text(grade.upTo, unit, 6))));
}

std::string threadsText(const std::optional<ThreadSystem>& system) {
  if (!system) return fromQt(ValueText::tr("metric and inch threads"));
  return *system == ThreadSystem::Metric ? fromQt(ValueText::tr("metric threads"))
                                         : fromQt(ValueText::tr("inch threads"));
}

std::string stressCell(const std::optional<Stress>& stress, const StressUnit& unit) {
  return stress ? significant(in(unit, *stress), 5) : "–";
}

/// Every size range of the same grade, this one among them.
Section allSizes(const Catalogue& catalogue, const Grade& grade) {
  const StressUnit& unit = *grade.stressUnit;
  const std::string in = ", " + std::string(unit.symbol);
  Table table{{{fromQt(ValueText::tr("Sizes")), 34},
               {fromQt(ValueText::tr("Proof")) + in, 22, true},
               {fromQt(ValueText::tr("Yield")) + in, 22, true},
               {fromQt(ValueText::tr("Tensile")) + in, 22, true}},
              {}};
  for (const Grade& each : catalogue.rows().grades)
    if (each.name == grade.name)
      table.rows.push_back({{sizesText(each)},
                            {stressCell(each.proof, unit)},
                            {stressCell(each.yield, unit)},
                            {stressCell(each.tensile, unit)}});
  return {fromQt(ValueText::tr("This grade in every size")), {std::move(table)}, false};
}

std::string percent(double share) {
  return "±" + percentOf(share);
}

}  // namespace

std::vector<Section> sectionsOf(const Catalogue& catalogue, const Grade& grade) {
  Facts facts;
  facts.rows = {{fromQt(ValueText::tr("Sizes")), sizesText(grade)},
                {fromQt(ValueText::tr("For")), threadsText(grade.system)}};
  facts.rows.push_back({fromQt(ValueText::tr("Proof stress Sp, least")),
                        grade.proof ? inBoth(*grade.proof, *grade.stressUnit)
                                    : fromQt(ValueText::tr("the standard states none"))});
  facts.rows.push_back(
      {fromQt(ValueText::tr("Yield or 0.2 % proof stress, least")), inBoth(grade.yield, *grade.stressUnit)});
  facts.rows.push_back(
      {fromQt(ValueText::tr("Tensile strength Rm, least")), inBoth(grade.tensile, *grade.stressUnit)});
  addAliases(grade.aliases, facts);
  std::vector<Section> out = {{"", {std::move(facts)}, false}};
  Section sizes = allSizes(catalogue, grade);
  if (std::get<Table>(sizes.blocks.front()).rows.size() > 1) out.push_back(std::move(sizes));
  return out;
}

std::vector<Section> sectionsOf(const Catalogue&, const Condition& condition) {
  Facts facts;
  facts.rows = {{fromQt(ValueText::tr("State")), condition.label}};
  addAliases(condition.aliases, facts);
  Table table{{{fromQt(ValueText::tr("No unit")), 40},
               {fromQt(ValueText::tr("Low")), 20, true},
               {fromQt(ValueText::tr("Typical")), 20, true},
               {fromQt(ValueText::tr("High")), 20, true}},
              {}};
  const auto add = [&](const QString& label, const std::optional<Range>& range) {
    const auto number = [&](double Range::*end) { return range ? significant((*range).*end, 4) : "–"; };
    table.rows.push_back(
        {{fromQt(label)}, {number(&Range::low)}, {number(&Range::typical)}, {number(&Range::high)}});
  };
  add(ValueText::tr("Nut factor K"), condition.nutFactor);
  add(ValueText::tr("Thread friction µt"), condition.threadFriction);
  add(ValueText::tr("Bearing friction µb"), condition.bearingFriction);
  return {{"",
           {std::move(facts), std::move(table),
            Paragraph{
                fromQt(ValueText::tr("Friction scatters this far between parts that look the same. A clamp "
                                     "load computed from a torque is known no better than the range; a – is "
                                     "not known.")),
                Tone::Quiet}},
           false}};
}

std::vector<Section> sectionsOf(const Catalogue&, const TappedMaterial& material) {
  Facts facts;
  facts.rows = {{fromQt(ValueText::tr("Family")), material.family},
                {fromQt(ValueText::tr("Shear strength, least")), inBoth(material.shearStrength, kMegapascal)},
                {fromQt(ValueText::tr("Young's modulus")), inBoth(material.modulus, kMegapascal)}};
  addAliases(material.aliases, facts);
  Section out{"", {}, false};
  if (!material.caution.empty())
    out.blocks.push_back(
        Paragraph{fromQt(ValueText::tr("CAUTION: %1").arg(toQt(material.caution))), Tone::Caution});
  out.blocks.push_back(std::move(facts));
  return {std::move(out)};
}

std::vector<Section> sectionsOf(const Catalogue&, const PrevailingTorque& torque) {
  Facts facts;
  facts.rows = {{fromQt(ValueText::tr("Thread")), torque.thread},
                {fromQt(ValueText::tr("Fastener")), torque.fastener},
                {fromQt(ValueText::tr("Least prevailing torque")), text(torque.minimum)}};
  for (const TorqueUnit* unit : {&kNewtonMetre, &kPoundInch, &kPoundFoot})
    if (unit != torque.minimum.unit)
      facts.rows.push_back({fromQt(ValueText::tr("that is")), "= " + text(torque.minimum.value(), *unit, 4)});
  return {{"",
           {std::move(facts),
            Paragraph{fromQt(ValueText::tr("Below it the locking feature is worn out: use a new fastener.")),
                      Tone::Strong}},
           false}};
}

std::vector<Section> sectionsOf(const Catalogue&, const ToolClass& tool) {
  Facts facts;
  facts.rows = {
      {fromQt(ValueText::tr("Type")), tool.type == "I" ? fromQt(ValueText::tr("I, shows the torque"))
                                                       : fromQt(ValueText::tr("II, is set, and signals"))},
      {fromQt(ValueText::tr("Class")), tool.letter},
      {fromQt(ValueText::tr("What it is")), tool.description},
      {fromQt(ValueText::tr("May be off, up to %1").arg(toQt(text(newtonMetres(10), kNewtonMetre)))),
       percent(tool.upToTenNewtonMetres)},
      {fromQt(ValueText::tr("May be off, above")), percent(tool.aboveTenNewtonMetres)}};
  return {{"",
           {std::move(facts),
            Paragraph{fromQt(ValueText::tr("What the standard allows a new tool. A tool is judged "
                                           "by its own calibration, in the tool crib.")),
                      Tone::Quiet}},
           false}};
}

}  // namespace cw
