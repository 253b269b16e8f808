#include "app/command_line/typed_options.h"

#include "core/units/typed_text.h"

namespace cw {
namespace {

constexpr std::string_view kUpTo = "..";

Result<double> readNumber(std::string_view option, std::string_view typed) {
  return named(option, parseNumber(typed, DecimalMark::Point, true)).map([](const std::string& digits) {
    return numberOf(digits);
  });
}

}  // namespace

Result<double> readShare(std::string_view option, std::string_view typed) {
  const std::string_view text = withoutOuterBlanks(typed);
  if (text.ends_with('%'))
    return readNumber(option, text.substr(0, text.size() - 1)).map([](double percent) {
      return percent / 100;
    });
  return fail(ErrorCode::InvalidInput, std::string(option), typed,
              {"“%1” has no percent sign", {shown(typed)}}, "write it like 75%");
}

Result<Range> readRange(std::string_view option, std::string_view typed) {
  const std::size_t dots = typed.find(kUpTo);
  if (dots == std::string_view::npos)
    return readNumber(option, typed).map([](double value) { return Range{value, value, value}; });
  CW_TRY(low, readNumber(option, typed.substr(0, dots)));
  CW_TRY(high, readNumber(option, typed.substr(dots + kUpTo.size())));
  return Range{low, (low + high) / 2, high};
}

Result<Angle> readAngle(std::string_view option, std::string_view typed) {
  if (const auto bare = parseNumber(typed, DecimalMark::Point, true)) return degrees(numberOf(*bare));
  return readStated<AngleTag>(option, typed).map([](const StatedAngle& angle) { return angle.value(); });
}

Result<StatedRange> readTorqueRange(std::string_view option, std::string_view typed) {
  const std::size_t dots = typed.find(kUpTo);
  if (dots == std::string_view::npos)
    return fail(ErrorCode::InvalidInput, std::string(option), typed, {"“%1” is not a range", {shown(typed)}},
                "write it like 5..25 N.m");
  CW_TRY(high, readStated<TorqueTag>(option, typed.substr(dots + kUpTo.size())));
  CW_TRY(low, named(option, parseNumber(typed.substr(0, dots))));
  return StatedRange{{low, high.unit}, high};
}

}  // namespace cw
