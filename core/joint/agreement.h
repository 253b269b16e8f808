#pragma once
#include <optional>
#include <vector>

#include "core/base/result.h"
#include "core/base/words.h"
#include "core/units/stated.h"

namespace cw {

enum class Agreement {
  Agrees,     ///< the same torque within the printed digits
  Rounded,    ///< within 5 %: somebody rounded generously
  Disagrees,  ///< not the same torque
};
template <>
struct Words<Agreement> {
  static constexpr std::array<std::pair<Agreement, std::string_view>, 3> kAll{
      {{Agreement::Agrees, "agrees"}, {Agreement::Rounded, "rounded"}, {Agreement::Disagrees, "disagrees"}}};
};

/// How two printed columns of one line stand to each other.
struct ColumnsAgreement {
  Agreement agreement = Agreement::Disagrees;
  double ratio = 1;                            ///< second over first
  bool exchanged = false;                      ///< they agree once their units change places
  std::optional<StatedTorque> firstShouldBe;   ///< the second in the first one's unit, if they disagree
  std::optional<StatedTorque> secondShouldBe;  ///< the first in the second one's unit, if they disagree
};

/// Do the columns that a manual prints side by side state the same torque? This catches N·m read as ft·lbf
/// (1.36 times), which hides inside friction scatter. Digits count as rounded to their last place.
/// InvalidInput if both are in one unit (nothing is checked) or one is missing; OutOfRange unless both are
/// above zero.
Result<ColumnsAgreement> columnsAgree(const StatedTorque& first, const StatedTorque& second);

/// The finding in a sentence with numbers.
Message explain(const ColumnsAgreement& found, const StatedTorque& first, const StatedTorque& second);

}  // namespace cw
