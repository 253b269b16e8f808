#include "core/fastener/condition_text.h"

#include <cctype>

#include "core/units/format.h"
#include "core/units/typed_text.h"

namespace cw {
namespace {

constexpr double kMostWrittenFactor = 1, kMostWrittenFriction = 0.5;

/// What stands behind "K" or "µ", if the text starts so and a number follows.
std::optional<std::string_view> numbersBehind(std::string_view text,
                                              std::initializer_list<std::string_view> symbols) {
  for (const std::string_view symbol : symbols) {
    if (!text.starts_with(symbol)) continue;
    std::string_view rest = withoutOuterBlanks(text.substr(symbol.size()));
    if (rest.starts_with("=")) rest = withoutOuterBlanks(rest.substr(1));
    const std::size_t first = rest.starts_with("-") ? 1 : 0;
    const bool number = rest.size() > first &&
                        (std::isdigit(static_cast<unsigned char>(rest[first])) != 0 || rest[first] == '.');
    if (number) return rest;
  }
  return std::nullopt;
}

std::pair<std::string_view, std::string_view> parted(std::string_view text,
                                                     std::initializer_list<std::string_view> marks) {
  for (const std::string_view mark : marks)
    if (const std::size_t at = text.find(mark, 1); at != std::string_view::npos)
      return {withoutOuterBlanks(text.substr(0, at)), withoutOuterBlanks(text.substr(at + mark.size()))};
  return {text, {}};
}

Result<double> numberIn(std::string_view text, double most, DecimalMark mark) {
  CW_TRY(digits, parseNumber(text, mark));
  const double value = numberOf(digits);
  if (value > 0 && value <= most) return value;
  return fail(ErrorCode::OutOfRange, "condition", text,
              {"%1 is outside what has been measured", {shown(text)}},
              {"write a number above 0, up to %1", {significant(most, 2)}});
}

Result<Range> rangeIn(std::string_view text, double most, DecimalMark mark) {
  const auto [lowText, highText] = parted(text, {" to ", "–", "-"});
  CW_TRY(low, numberIn(lowText, most, mark));
  if (highText.empty()) return Range{low, low, low};
  CW_TRY(high, numberIn(highText, most, mark));
  if (low <= high) return Range{low, (low + high) / 2, high};
  return fail(ErrorCode::OutOfRange, "condition", text, {"the range %1 falls", {shown(text)}},
              "write the lower number first");
}

std::string writtenRange(const Range& range) {
  const std::string low = significant(range.low, 4);
  return range.low < range.high ? low + " to " + significant(range.high, 4) : low;
}

Condition byHand(std::string name) {
  Condition condition;
  condition.name = std::move(name);
  condition.label = condition.name;
  condition.provenance = {"as typed", true, ""};
  return condition;
}

}  // namespace

Result<Condition> writtenCondition(std::string_view text, const Catalogue& catalogue, DecimalMark mark) {
  const std::string_view written = withoutOuterBlanks(text);
  if (const auto factor = numbersBehind(written, {"K", "k"})) {
    CW_TRY(range, rangeIn(*factor, kMostWrittenFactor, mark));
    Condition condition = byHand("K " + writtenRange(range));
    condition.nutFactor = range;
    return condition;
  }
  if (const auto friction = numbersBehind(written, {"µ", "μ", "mu"})) {
    const auto [inThread, inBearing] = parted(*friction, {"/", " and "});
    CW_TRY(thread, rangeIn(inThread, kMostWrittenFriction, mark));
    CW_TRY(bearing,
           inBearing.empty() ? Result<Range>(thread) : rangeIn(inBearing, kMostWrittenFriction, mark));
    Condition condition =
        byHand("µ " + writtenRange(thread) + (inBearing.empty() ? "" : " / " + writtenRange(bearing)));
    condition.threadFriction = thread;
    condition.bearingFriction = bearing;
    return condition;
  }
  return catalogue.condition(written);
}

}  // namespace cw
