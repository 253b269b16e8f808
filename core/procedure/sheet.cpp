#include "core/procedure/sheet.h"

#include <algorithm>

namespace cw {
namespace {

template <class Item>
const Item* withId(const std::vector<Item>& items, std::string_view id) {
  const auto found =
      std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; });
  return found == items.end() ? nullptr : &*found;
}

}  // namespace

const std::string& Joint::fastenerAt(const std::string& label) const {
  const auto detail = positions.find(label);
  return detail == positions.end() || detail->second.fastener.empty() ? fastener : detail->second.fastener;
}

const std::string& Joint::specificationAt(const std::string& label) const {
  const auto detail = positions.find(label);
  return detail == positions.end() || detail->second.specification.empty() ? specification
                                                                           : detail->second.specification;
}

const Step* Sheet::step(std::string_view stepId) const {
  return withId(steps, stepId);
}
const Joint* Sheet::joint(std::string_view jointId) const {
  return withId(joints, jointId);
}
const Part* Sheet::part(std::string_view partId) const {
  return withId(parts, partId);
}
const Fastener* Sheet::fastener(std::string_view fastenerId) const {
  return withId(fasteners, fastenerId);
}
const Specification* Sheet::specification(std::string_view specificationId) const {
  return withId(specifications, specificationId);
}
const Source* Sheet::source(std::string_view sourceId) const {
  return withId(sources, sourceId);
}

}  // namespace cw
