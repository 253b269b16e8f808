#include "app/command_line/fastener_options.h"

#include <CLI/CLI.hpp>

#include "app/command_line/typed_options.h"
#include "core/fastener/catalogue.h"

namespace cw {
namespace {

constexpr std::pair<std::string_view, Fit> kFits[] = {{"6g6H", Fit::Metric6g6H},
                                                      {"6h6H", Fit::Metric6h6H},
                                                      {"2A2B", Fit::Unified2A2B},
                                                      {"3A3B", Fit::Unified3A3B}};

Result<Fit> readFit(const std::string& written) {
  for (const auto& [name, fit] : kFits)
    if (name == written) return fit;
  return fail(ErrorCode::InvalidInput, "--fit", written, {"“%1” is no fit known here", {shown(written)}},
              "write 6g6H, 6h6H, 2A2B or 3A3B");
}

Condition statedCondition(std::string name) {
  Condition condition;
  condition.name = std::move(name);
  condition.provenance.source = "as stated";
  return condition;
}

Result<Condition> byFriction(const FastenerOptions& given) {
  CW_TRY(inThread, readRange("--friction", given.friction));
  Condition condition = statedCondition("friction");
  condition.threadFriction = inThread;
  condition.bearingFriction = inThread;
  if (given.bearingFriction.empty()) return condition;
  CW_TRY(atBearing, readRange("--bearing-friction", given.bearingFriction));
  condition.bearingFriction = atBearing;
  return condition;
}

Result<Condition> byNutFactor(const std::string& written) {
  CW_TRY(factor, readRange("--nut-factor", written));
  Condition condition = statedCondition("nut factor");
  condition.nutFactor = factor;
  return condition;
}

Result<std::optional<Condition>> conditionOf(const FastenerOptions& given, const Catalogue& catalogue) {
  const int stated = !given.condition.empty() + !given.friction.empty() + !given.nutFactor.empty();
  if (stated > 1)
    return fail(ErrorCode::InvalidInput, "condition", "", "the condition is given in more than one way",
                "give one of --condition, --friction and --nut-factor");
  if (given.friction.empty() && !given.bearingFriction.empty())
    return fail(ErrorCode::InvalidInput, "--bearing-friction", given.bearingFriction,
                "the friction of the thread is missing beside it", "add --friction");
  const auto some = [](Condition condition) { return std::optional(std::move(condition)); };
  if (!given.condition.empty()) return named("--condition", catalogue.condition(given.condition)).map(some);
  if (!given.friction.empty()) return byFriction(given).map(some);
  if (!given.nutFactor.empty()) return byNutFactor(given.nutFactor).map(some);
  return std::optional<Condition>();
}

Result<std::optional<TappedHole>> holeOf(const FastenerOptions& given, const Catalogue& catalogue) {
  if (given.tapped.empty() && given.engagement.empty() && given.threadLength.empty() && given.fit.empty())
    return std::optional<TappedHole>();
  if (given.tapped.empty() || given.engagement.empty())
    return fail(ErrorCode::InvalidInput, given.tapped.empty() ? "--tapped" : "--engagement", "",
                "the tapped hole is half described",
                "give its material with --tapped and the full threads that engage with --engagement");
  TappedHole hole;
  CW_TRY(material, named("--tapped", catalogue.material(given.tapped)));
  CW_TRY(engagement, readStated<LengthTag>("--engagement", given.engagement));
  hole.material = material;
  hole.engagement = engagement.value();
  if (!given.threadLength.empty()) {
    CW_TRY(length, readStated<LengthTag>("--thread-length", given.threadLength));
    hole.threadLength = length.value();
  }
  if (!given.fit.empty()) {
    CW_TRY(fit, readFit(given.fit));
    hole.fit = fit;
  }
  return std::optional(std::move(hole));
}

}  // namespace

void addThreadOption(CLI::App& app, FastenerOptions& into) {
  app.add_option("--thread", into.thread, "M8, M8x1, 3/8-16 UNC, #10-32 …")->required();
}

void addGradeOption(CLI::App& app, FastenerOptions& into) {
  app.add_option("--grade", into.grade, "Strength grade: 8.8, A2-70, SAE 5, ASTM A193 B7 …");
}

void addFaceOption(CLI::App& app, FastenerOptions& into) {
  app.add_option("--face", into.face,
                 "What turns on the part: hex, hex flange, socket head …; else 1.25 diameters are assumed");
}

void addConditionOptions(CLI::App& app, FastenerOptions& into) {
  app.add_option("--condition", into.condition, "Condition by name: dry, oiled, moly paste …");
  app.add_option("--friction", into.friction, "Friction in the thread, 0.12 or 0.10..0.14");
  app.add_option("--bearing-friction", into.bearingFriction,
                 "Friction under the head; as in the thread if not given");
  app.add_option("--nut-factor", into.nutFactor, "Nut factor K, 0.2 or 0.16..0.24");
}

void addHoleOptions(CLI::App& app, FastenerOptions& into) {
  app.add_option("--tapped", into.tapped,
                 "Material the bolt is screwed into: cast aluminium A356-T6, steel S235 …");
  app.add_option("--engagement", into.engagement, "Length of full threads that engage, with its unit");
  app.add_option("--thread-length", into.threadLength, "Length of full threads in the hole, if known");
  app.add_option("--fit", into.fit, "6g6H, 6h6H, 2A2B or 3A3B; the usual one if not given");
}

Result<FastenerCase> fastenerCase(const FastenerOptions& given, const Catalogue& catalogue) {
  FastenerCase fastener;
  CW_TRY(thread, named("--thread", catalogue.thread(given.thread)));
  fastener.thread = thread;
  if (!given.grade.empty()) {
    CW_TRY(grade, named("--grade", catalogue.grade(given.grade, thread)));
    fastener.grade = grade;
  }
  if (!given.face.empty()) {
    CW_TRY(face, named("--face", catalogue.bearingFace(given.face, thread)));
    fastener.face = face;
  }
  CW_TRY(condition, conditionOf(given, catalogue));
  fastener.condition = condition;
  CW_TRY(hole, holeOf(given, catalogue));
  fastener.hole = hole;
  return fastener;
}

}  // namespace cw
