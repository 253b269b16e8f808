#pragma once
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/base/finding.h"
#include "core/base/provenance.h"
#include "core/base/words.h"
#include "core/units/stated.h"

namespace cw {

/// Going round in a circle at the full value, again and again, until nothing moves.
struct CheckPass {
  std::size_t limit = 6;  ///< rounds after which work stops and is looked into; 1 and more
  bool operator==(const CheckPass&) const = default;
};

/// One more round at the full value after a wait (the gasket creeps, the faces embed).
struct Retorque {
  Duration wait = seconds(4 * 3600);  ///< at least so long; positive
  bool operator==(const Retorque&) const = default;
};

/// The gap between the faces, measured after some of the pattern passes.
struct GapReadings {
  std::size_t places = 8;                            ///< around the joint; 4 and more
  std::vector<std::size_t> afterPasses = {1, 2};     ///< pattern passes, counted from 1
  StatedLength mostDifference{"0.8", &kMillimetre};  ///< widest less narrowest; positive
  bool operator==(const GapReadings&) const = default;
};

/// The passes of one joint, as its author chose them. Shares are fractions of the target torque.
struct PassPlan {
  bool byHand = true;          ///< run every fastener to the face by finger first and count them
  std::optional<double> snug;  ///< then to at most this share of the target; above 0, at most 0.2
  std::vector<double> shares = {0.3, 0.7, 1.0};  ///< rising, the last 1
  std::optional<CheckPass> check = CheckPass{};
  std::optional<Retorque> retorque;
  std::optional<GapReadings> gaps;
  bool operator==(const PassPlan&) const = default;
};

/// Where the default values come from.
Provenance sourceOfShares();       ///< 30, 70, 100 %
Provenance sourceOfSnug();         ///< at most 20 % of target
Provenance sourceOfCheckLimit();   ///< 6 rounds
Provenance sourceOfRetorque();     ///< 4 h
Provenance sourceOfGapReadings();  ///< 8 places after passes 1 and 2, 0.8 mm

/// What forbids turning a fastener again once it has reached its value.
enum class NoSecondTurn { SetThreadlocker, CuredSealant, AngleTightening, SoftGasket };

/// Everything wrong with a plan: shares that do not rise, exceed the target or do not end at it; snug, limit,
/// wait or gap readings out of range; a check pass or retorque that `barred` forbids.
Findings reviewPasses(const PassPlan& plan, std::span<const NoSecondTurn> barred = {});

enum class PassKind { ByHand, Snug, Pattern, Check, Retorque };
template <>
struct Words<PassKind> {
  static constexpr std::array<std::pair<PassKind, std::string_view>, 5> kAll{
      {{PassKind::ByHand, "by-hand"},
       {PassKind::Snug, "snug"},
       {PassKind::Pattern, "pattern"},
       {PassKind::Check, "check"},
       {PassKind::Retorque, "retorque"}}};
};

/// One trip through the joint. ByHand has no share.
struct Pass {
  PassKind kind = PassKind::Pattern;
  std::optional<double> share{};
  bool isCircular = false;    ///< going round instead of the joint's order
  bool isByPosition = false;  ///< recorded position by position; else counted
  bool measuresGapsAfter = false;
  bool operator==(const Pass&) const = default;
};

/// The passes in the order they are done, the check pass once (it repeats, see `afterCheckRound`).
std::vector<Pass> passesOf(const PassPlan& plan);

enum class CheckVerdict {
  Done,   ///< nothing moved
  Again,  ///< something moved: go round once more
  Stop,   ///< still moving at the limit: stop and find out why
};

/// What follows after a check round in which `moved` fasteners moved; `round` counts from 1.
CheckVerdict afterCheckRound(const CheckPass& check, std::size_t round, std::size_t moved);

}  // namespace cw
