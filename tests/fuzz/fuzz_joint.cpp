// The engine's entry points with any numbers: the answer is finite, in order and undone by its inverse, or
// one sentence.
#include <cmath>
#include <limits>

#include "core/fastener/catalogue.h"
#include "core/joint/agreement.h"
#include "core/joint/bolt_stiffness.h"
#include "core/joint/clamp_band.h"
#include "core/joint/guard.h"
#include "core/joint/losses.h"
#include "core/joint/member_stiffness.h"
#include "core/joint/recondition.h"
#include "core/joint/setting.h"
#include "core/joint/stripping.h"
#include "core/joint/utilisation.h"
#include "tests/fuzz/bytes.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

using fuzz::Bytes;
using fuzz::checkRefusal;
using fuzz::require;

template <class Row>
const Row& anyOf(const std::vector<Row>& rows, Bytes& in) {
  return rows[in.byte() * 251U % rows.size()];
}

bool nearlyEqual(double a, double b) {
  return std::abs(a - b) <= 1e-9 * std::abs(b) + std::numeric_limits<double>::min();
}

bool isFinite(double value) {
  return std::isfinite(value);
}

void checkWorking(const Working& working) {
  require(!working.steps.empty(), "a result shows its steps");
  for (const std::string& line : lines(working)) require(isUtf8(line), "the working is UTF-8");
}

StatedTorque anyTorque(Bytes& in) {
  const TorqueUnit* unit = unitsOf<TorqueTag>()[in.choice(unitsOf<TorqueTag>().size())];
  const double value = in.number();
  return {std::isfinite(value) ? significant(std::abs(value), 6) : "0", unit};
}

std::optional<Lever> anyLever(Bytes& in) {
  if (in.byte() % 2 == 0) return std::nullopt;
  return Lever{metres(in.number()), metres(in.number()), degrees(in.number())};
}

std::optional<TappedHole> anyHole(Bytes& in) {
  if (in.byte() % 2 == 0) return std::nullopt;
  TappedHole hole{anyOf(shippedCatalogue().rows().materials, in), millimetres(in.number())};
  if (in.byte() % 2 == 0) hole.threadLength = millimetres(in.number());
  if (in.byte() % 2 == 0) hole.fit = static_cast<Fit>(in.choice(4));
  return hole;
}

/// A fastener of the library, or a thread that could not be.
GuardSubject anySubject(Bytes& in) {
  GuardSubject subject;
  subject.thread = anyOf(shippedCatalogue().rows().threads, in);
  if (in.byte() >= 240) subject.thread.pitchDiameter = metres(in.number());
  if (in.byte() >= 240) subject.thread.stressArea = squareMillimetres(in.number());
  if (in.byte() % 8 != 0) subject.grade = anyOf(shippedCatalogue().rows().grades, in);
  if (in.byte() % 4 != 0) subject.condition = anyOf(shippedCatalogue().rows().conditions, in);
  if (in.byte() >= 200)
    subject.face = BearingFace{"any", "", millimetres(in.number()), millimetres(in.number()), {}};
  subject.hole = anyHole(in);
  return subject;
}

void checkJudgement(const Result<Judgement>& judged) {
  if (!judged) return checkRefusal(judged.error());
  for (const Message& message : explain(*judged)) require(!plain(message).empty(), "the guard says why");
  if (judged->verdict == Verdict::NotJudged) return;
  require(isFinite(judged->low.si()) && judged->low < judged->high, "the band has two ends");
  require((judged->verdict == Verdict::InBand) ==
              (judged->torque.value() >= judged->low && judged->torque.value() <= judged->high),
          "in band is between the ends");
}

void checkGuard(Bytes& in) {
  const GuardSubject subject = anySubject(in);
  checkJudgement(judge(anyTorque(in), subject));
  const StatedTorque setting = anyTorque(in);
  const std::optional<Lever> lever = anyLever(in);
  checkJudgement(judgeSetting(setting, lever, newtonMetres(in.number()), subject));
  if (const auto working = capacityWorking(subject))
    checkWorking(*working);
  else
    checkRefusal(working.error());
}

void checkClamp(Bytes& in) {
  const GuardSubject subject = anySubject(in);
  const auto range = resistanceOf(static_cast<const FastenerCase&>(subject));
  if (!range) return checkRefusal(range.error());
  const double deviation = in.byte() % 4 == 0 ? in.number() : in.share();
  const auto band = clampFromTorque(newtonMetres(in.number()), *range, deviation, subject.thread);
  if (!band) return checkRefusal(band.error());
  const auto& [low, typical, high] = band->value;
  require(isFinite(high.si()) && low <= typical && typical <= high && low >= Force(), "the band is in order");
  checkWorking(band->working);
  const auto back = torqueFromClamp(typical, *range, deviation, subject.thread);
  require(back.has_value(), "a clamp load that came out goes back in");
  require(nearlyEqual((back->value.typical / range->typical.arm).si(), typical.si()),
          "there and back is the same");
  if (!subject.grade) return;
  const auto used = utilisation(typical, range->typical.friction.thread, subject.thread, *subject.grade);
  if (used)
    require(isFinite(*used) && *used >= 0, "a utilisation is a share");
  else
    checkRefusal(used.error());
}

void checkRecondition(Bytes& in) {
  const auto& rows = shippedCatalogue().rows();
  std::optional<Condition> from;
  if (in.byte() % 8 != 0) from = anyOf(rows.conditions, in);
  const auto changed = recondition(newtonMetres(in.number()), from, anyOf(rows.conditions, in),
                                   anyOf(rows.threads, in), std::nullopt);
  if (!changed) return checkRefusal(changed.error());
  const RequiredTorque& torque = changed->value.torque;
  require(isFinite(torque.high.si()) && torque.low <= torque.typical && torque.typical <= torque.high,
          "the band is in order");
  checkWorking(changed->working);
}

void checkSetting(Bytes& in) {
  const Torque aim = newtonMetres(in.number());
  TorqueTarget target{aim,
                      {aim * (1 - in.share()), aim * (1 + in.share())},
                      newtonMetres(in.number()),
                      static_cast<PrevailingRule>(in.choice(3))};
  if (in.byte() >= 240) target.tolerance.low = newtonMetres(in.number());
  const std::optional<Lever> lever = anyLever(in);
  const auto found = wrenchSetting(target, lever, anyTorque(in));
  if (!found) return checkRefusal(found.error());
  const Torque set = found->value.setting.value();
  const Torque grain = 1e-9 * found->value.allowed.high;
  require(set >= found->value.allowed.low - grain && set <= found->value.allowed.high + grain,
          "a setting lies in its tolerance");
  checkWorking(found->working);
}

void checkLever(Bytes& in) {
  const std::optional<Lever> lever = anyLever(in);
  const Torque torque = newtonMetres(in.number());
  if (!lever) return;
  const auto setting = settingFor(torque, *lever);
  if (!setting) return checkRefusal(setting.error());
  const auto back = appliedBy(setting->value, *lever);
  require(back.has_value(), "a setting that came out goes back in");
  require(nearlyEqual(back->value.si(), torque.si()),
          "there and back is the same");
}

void checkStripping(Bytes& in) {
  const GuardSubject subject = anySubject(in);
  if (!subject.grade || !subject.hole) return;
  const auto found = stripping(subject.thread, *subject.grade, *subject.hole);
  if (!found) return checkRefusal(found.error());
  require(isFinite(found->value.load.si()) && found->value.load > Force(), "something fails at some load");
  require(isFinite(found->value.neededEngagement.si()), "some engagement is enough");
  checkWorking(found->working);
}

void checkElasticity(Bytes& in) {
  const BoltGrip grip{millimetres(in.number()), millimetres(in.number()), squareMillimetres(in.number()),
                      squareMillimetres(in.number()), gigapascals(in.number())};
  const auto bolt = boltStiffness(grip);
  if (!bolt) return checkRefusal(bolt.error());
  const auto members = memberStiffness(kSteelFit, gigapascals(in.number()), millimetres(in.number()),
                                       millimetres(in.number()));
  if (!members) return checkRefusal(members.error());
  const JointStiffness joint{bolt->value, members->value};
  const auto loss = embeddingLoss(Length::si(in.number()), joint);
  if (!loss) return checkRefusal(loss.error());
  require(loss->value >= Force(), "embedding never tightens");
}

void checkColumns(Bytes& in) {
  const StatedTorque first = anyTorque(in), second = anyTorque(in);
  const auto found = columnsAgree(first, second);
  if (!found) return checkRefusal(found.error());
  require(!plain(explain(*found, first, second)).empty(), "it says how they stand");
}

constexpr void (*kChecks[])(Bytes&) = {checkGuard, checkClamp,     checkRecondition, checkSetting,
                                       checkLever, checkStripping, checkElasticity,  checkColumns};

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  cw::fuzz::Bytes in(data, size);
  while (!in.empty()) cw::kChecks[in.choice(std::size(cw::kChecks))](in);
  return 0;
}
