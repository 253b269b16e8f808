#include "core/units/percent.h"

#include "core/units/format.h"
#include "core/units/typed_text.h"

namespace cw {
namespace {

/// What stands before `tail`, if the text ends so.
std::optional<std::string_view> before(std::string_view text, std::string_view tail) {
  if (!text.ends_with(tail)) return std::nullopt;
  return withoutOuterBlanks(text.substr(0, text.size() - tail.size()));
}

std::optional<std::string_view> beforePercentSign(std::string_view text) {
  for (const std::string_view tail : {"%", "percent", "per cent"})
    if (const auto number = before(text, tail)) return number;
  return std::nullopt;
}

std::string_view withoutSign(std::string_view text) {
  for (const std::string_view sign : {"±", "+/-", "+-"})
    if (text.starts_with(sign)) return withoutOuterBlanks(text.substr(sign.size()));
  return text;
}

/// The two ends of "26 to 34 N·m".
std::optional<std::pair<std::string_view, std::string_view>> ends(std::string_view text) {
  for (const std::string_view between : {" to ", "–", "...", "…", "-"}) {
    const std::size_t at = text.find(between);
    if (at == std::string_view::npos || at == 0) continue;
    const std::string_view low = withoutOuterBlanks(text.substr(0, at));
    // The hyphen of "5 ft-lb" parts no numbers.
    if (!low.empty() && (low.find_first_of("0123456789") == std::string_view::npos)) continue;
    const std::string_view high = withoutOuterBlanks(text.substr(at + between.size()));
    if (!high.empty() && (std::isdigit(static_cast<unsigned char>(high.front())) || high.front() == '.'))
      return std::pair(low, high);
  }
  return std::nullopt;
}

Result<TorqueBand> rangeOf(std::string_view lowText, std::string_view highText, DecimalMark mark) {
  CW_TRY(high, parse<TorqueTag>(highText, mark));
  if (const auto digits = parseNumber(lowText, mark))
    return TorqueBand{StatedTorque{*digits, high.unit}.value(), high.value()};
  CW_TRY(low, parse<TorqueTag>(lowText, mark));
  return TorqueBand{low.value(), high.value()};
}

Result<TorqueBand> checked(const TorqueBand& band, std::string_view given, const StatedTorque& aim) {
  if (band.low <= aim.value() && aim.value() <= band.high && band.low.si() >= 0) return band;
  return fail(ErrorCode::OutOfRange, "tolerance", given,
              {"%1 does not hold the torque aimed at, %2", {shown(given), text(aim)}},
              "write for example ±5 %, ±2 N·m or 28 to 32 N·m");
}

}  // namespace

Result<double> parsePercent(std::string_view given, DecimalMark mark) {
  const auto number = beforePercentSign(withoutSign(withoutOuterBlanks(given)));
  if (!number)
    return fail(ErrorCode::InvalidInput, "", given, {"“%1” is no percentage", {shown(given)}},
                "write a number and %, for example 4 %");
  CW_TRY(digits, parseNumber(*number, mark));
  return numberOf(digits) / 100;
}

std::string percentOf(double fraction) {
  return significant(fraction * 100, 3) + kUnitSpace + "%";
}

Result<TorqueBand> parseTolerance(std::string_view given, const StatedTorque& aim, DecimalMark mark) {
  const std::string_view wanted = withoutOuterBlanks(given);
  const std::string_view plainText = withoutSign(wanted);
  if (beforePercentSign(plainText)) {
    CW_TRY(share, parsePercent(plainText, mark));
    if (share < 1) return TorqueBand{aim.value() * (1 - share), aim.value() * (1 + share)};
    return fail(ErrorCode::OutOfRange, "tolerance", given, {"%1 leaves nothing to keep to", {shown(given)}},
                "write less than 100 %");
  }
  if (const auto both = ends(plainText)) {
    auto band = rangeOf(both->first, both->second, mark);
    if (!band) return fail(within("tolerance", band.error()));
    return checked(*band, wanted, aim);
  }
  auto either = parse<TorqueTag>(plainText, mark);
  if (!either) return fail(within("tolerance", either.error()));
  return checked({aim.value() - either->value(), aim.value() + either->value()}, wanted, aim);
}

}  // namespace cw
