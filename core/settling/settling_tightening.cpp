#include "core/settling/settling_tightening.h"

#include <fmt/format.h>

namespace cw {
namespace {

std::string number(double value) {
  return fmt::format("{:g}", value);
}

Result<void> checkTargets(const TighteningPlan& tightening, int bolts) {
  const auto count = static_cast<std::size_t>(bolts);
  if (tightening.targets.size() != 1 && tightening.targets.size() != count)
    return fail(
        ErrorCode::InvalidInput, "target", number(static_cast<double>(tightening.targets.size())),
        {"%1 targets do not fit %2 bolts",
         {number(static_cast<double>(tightening.targets.size())), number(static_cast<double>(count))}},
        "one target for all, or one for each bolt");
  for (const Force target : tightening.targets)
    if (!(target > Force() && target <= newtons(1e12)))
      return fail(ErrorCode::OutOfRange, "target", number(target.si()),
                  {"%1 N is no clamp load to aim at", {number(target.si())}}, "above 0, up to 1e12 N");
  return {};
}

Result<void> checkShare(const std::string& place, double share) {
  if (share > 0 && share <= 2) return {};
  return fail(ErrorCode::OutOfRange, place, number(share), {"%1 is no share of the target", {number(share)}},
              "above 0, at most 2");
}

Result<void> checkPass(const std::string& place, const SettlingPass& pass, int bolts) {
  CW_CHECK(checkShare(place + ".share", pass.share));
  return checkOrder(place + ".order", pass.order, bolts);
}

}  // namespace

Result<void> checkOrder(const std::string& place, const std::vector<int>& order, int bolts) {
  std::vector<bool> seen(static_cast<std::size_t>(bolts), false);
  const Message right("every bolt from 1 to %1 once", {number(bolts)});
  for (const int bolt : order) {
    if (bolt < 1 || bolt > bolts)
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"there is no bolt %1", {number(bolt)}},
                  right);
    if (seen[static_cast<std::size_t>(bolt - 1)])
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"bolt %1 comes twice", {number(bolt)}},
                  right);
    seen[static_cast<std::size_t>(bolt - 1)] = true;
  }
  for (int bolt = 1; bolt <= bolts; ++bolt)
    if (!seen[static_cast<std::size_t>(bolt - 1)])
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"bolt %1 is missing", {number(bolt)}},
                  right);
  return {};
}

Result<void> checkTightening(const TighteningPlan& tightening, int bolts) {
  CW_CHECK(checkTargets(tightening, bolts));
  if (tightening.snugShare != 0) CW_CHECK(checkShare("snug_share", tightening.snugShare));
  const auto passes = static_cast<double>(tightening.passes.size());
  if (passes > 100)
    return fail(ErrorCode::OutOfRange, "passes", number(passes), {"%1 passes are too many", {number(passes)}},
                "at most 100");
  for (std::size_t i = 0; i < tightening.passes.size(); ++i)
    CW_CHECK(checkPass(fmt::format("passes[{}]", i), tightening.passes[i], bolts));
  return {};
}

}  // namespace cw
