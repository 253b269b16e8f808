// Layout files and pass plans: whatever the bytes, the answer is a layout that every rule orders whole and
// that survives writing, or one sentence.
#include <algorithm>

#include "core/pattern/explain.h"
#include "core/pattern/layout_json.h"
#include "core/pattern/passes_json.h"
#include "core/pattern/several_tools.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

using fuzz::checkRefusal;
using fuzz::require;

constexpr std::size_t kMostOrdered = 64;

void checkOrder(const Layout& layout, const std::vector<Position>& where, OrderRule rule) {
  const auto order = tighteningOrder(layout, rule);
  if (!order) return checkRefusal(order.error());
  std::vector<std::size_t> sorted = order->positions;
  std::sort(sorted.begin(), sorted.end());
  require(sorted.size() == where.size(), "an order holds every position");
  for (std::size_t i = 0; i < sorted.size(); ++i) require(sorted[i] == i + 1, "each position once");
  require(!explainOrder(where, order->positions).empty(), "an order is told in words");
  for (const std::size_t tools : {2U, 4U})
    if (const auto steps = shareAmongTools(layout, *order, tools); !steps) checkRefusal(steps.error());
}

void checkLayout(std::string_view bytes) {
  const auto layout = readLayoutFile(bytes);
  if (!layout) return checkRefusal(layout.error());
  const auto where = positions(*layout);
  require(where.has_value(), "a layout that is read has positions");
  if (where->size() <= kMostOrdered)
    for (const OrderRule rule : kOrderRules) checkOrder(*layout, *where, rule);
  Json again = toJson(*layout);
  again.set("format", "clampwright.layout").set("version", 1);
  const auto reread = readLayoutFile(canonical(again));
  if (!reread) return checkRefusal(reread.error());  // places rounded to nine digits may meet
  require(toJson(*reread) == toJson(*layout), "a second writing changes nothing");
}

void checkPasses(std::string_view bytes) {
  const auto json = parseJson(bytes);
  if (!json) return checkRefusal(json.error());
  auto reader = JsonReader::of(*json, "");
  if (!reader) return checkRefusal(reader.error());
  const auto plan = readPasses(*reader);
  if (!plan) return checkRefusal(plan.error());
  require(!hasBlocking(reviewPasses(*plan)), "a plan that is read is sound");
  require(!passesOf(*plan).empty(), "a plan has passes");
}

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  cw::checkLayout(cw::fuzz::text(data, size));
  cw::checkPasses(cw::fuzz::text(data, size));
  return 0;
}
