#include "core/joint/clamp_target.h"

#include "core/joint/utilisation.h"
#include "core/units/percent.h"
#include "core/units/typed_text.h"

namespace cw {
namespace {

enum class ShareOf { Proof, Yield };

std::optional<ShareOf> strengthNamed(std::string_view text) {
  const std::string words = joinedWords(text);
  if (words.ends_with("proof")) return ShareOf::Proof;
  if (words.ends_with("yield")) return ShareOf::Yield;
  return std::nullopt;
}

}  // namespace

Result<Worked<Force>> writtenClampLoad(std::string_view text, const Thread& thread,
                                       const std::optional<Grade>& grade, DecimalMark mark) {
  const std::size_t sign = text.find('%');
  if (sign == std::string_view::npos) {
    auto stated = parse<ForceTag>(text, mark);
    if (stated) return Worked<Force>{stated->value(), {}};
    Error error = stated.error();
    error.expected = "write it like 17 kN, 3800 lbf, 75 % of proof or 90 % of yield";
    return fail(std::move(error));
  }
  const auto strength = strengthNamed(text.substr(sign + 1));
  if (!strength)
    return fail(ErrorCode::InvalidInput, "load", text, {"“%1” does not say of what", {shown(text)}},
                "write of proof or of yield behind it");
  CW_TRY(share, parsePercent(text.substr(0, sign + 1), mark));
  if (!grade)
    return fail(ErrorCode::InvalidInput, "grade", "", "a share of strength needs the strength grade",
                "write the fastener's grade, or the clamp load in kN or lbf");
  return *strength == ShareOf::Proof ? loadAtProof(share, thread, *grade)
                                     : loadAtYield(share, thread, *grade);
}

}  // namespace cw
