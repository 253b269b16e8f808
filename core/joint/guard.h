#pragma once
#include <optional>
#include <vector>

#include "core/base/words.h"
#include "core/joint/adapter.h"
#include "core/joint/capacity.h"
#include "core/units/stated.h"

namespace cw {

enum class Verdict { BelowBand, InBand, AboveBand, PastYield, NotJudged };
template <>
struct Words<Verdict> {
  static constexpr std::array<std::pair<Verdict, std::string_view>, 5> kAll{
      {{Verdict::BelowBand, "below-band"},
       {Verdict::InBand, "in-band"},
       {Verdict::AboveBand, "above-band"},
       {Verdict::PastYield, "past-yield"},
       {Verdict::NotJudged, "not-judged"}}};
};

/// Why a torque has nothing to do with what its fastener could bear.
enum class Ungrounded { Plug, BearingPreload, UnmarkedFastener, LimitedByGasket, LimitedByPlastic };

/// What is known of the fastener whose torque is judged.
struct GuardSubject : FastenerCase {
  std::optional<Ungrounded> ungrounded;  ///< set by whoever knows the part
};

/// The guard's answer with its numbers. Torques are zero where nothing was judged.
struct Judgement {
  Verdict verdict = Verdict::NotJudged;
  Message reason;       ///< why not judged; else empty
  StatedTorque torque;  ///< what was judged, as stated
  Torque low;           ///< band
  Torque high;
  Torque yieldTypical;  ///< reaches yield at the typical friction
  Torque yieldCertain;  ///< reaches yield even at the highest friction
  Limit limit = Limit::BoltYield;
  double utilisation = 0;  ///< of what bears least, at the typical friction
  bool conditionStated = true;
  std::vector<const TorqueUnit*> fits;  ///< units in which the same digits lie in the band, likeliest first
};

/// Judges one torque by what the fastener can bear.
///
/// The band is that of `capacityOf`: so narrow that a value in it never stays in it when in·lbf is exchanged
/// for N·m or ft·lbf. N·m for ft·lbf (1.36) cannot be seen here: see agreement.h. Above the band, *past
/// yield* is said where the bolt yields even at the highest friction, *above band* otherwise.
///
/// Torque must be a number above zero, else an Error; an impossible thread, a grade of another size or
/// system, friction or engagement out of range likewise. Absurd values are judged: they are past yield.
/// Rates on published tables: GuardRates tests.
Result<Judgement> judge(const StatedTorque& torque, const GuardSubject& subject);

/// The same for what a wrench is set to: through its adapter, less the prevailing torque that never clamps.
/// The judgement's torques are then settings too. Errors as above and those of adapter.h; prevailing torque
/// from zero to what takes the bolt to yield.
Result<Judgement> judgeSetting(const StatedTorque& setting, const std::optional<Lever>& lever,
                               Torque prevailing, const GuardSubject& subject);

/// in·lbf, ft·lbf or N·m: the units that stand side by side in manuals.
bool isCommon(const TorqueUnit* unit);

/// What the guard says, in sentences with numbers: verdict, band, what limits, and "did you mean …?".
std::vector<Message> explain(const Judgement& judgement);

}  // namespace cw
