#include "core/procedure/sheet_check.h"

#include <fmt/format.h>

#include <set>

#include "core/pattern/order.h"
#include "core/procedure/step_check.h"
#include "core/units/format.h"

namespace cw {
namespace {

std::string placeIn(std::string_view list, std::size_t index) {
  return fmt::format("{}[{}]", list, index);
}

template <class Item>
Result<void> checkIds(const std::vector<Item>& items, std::string_view list) {
  std::set<std::string_view> seen;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (!seen.insert(items[i].id).second)
      return fail(ErrorCode::InvalidInput, placeIn(list, i) + ".id", items[i].id,
                  {"the id “%1” stands twice", {shown(items[i].id)}}, "give every one an id of its own");
  return {};
}

Result<void> checkReference(bool found, const std::string& place, const std::string& id,
                            std::string_view list) {
  if (found) return {};
  return fail(ErrorCode::InvalidInput, place, id,
              {"there is no “%1” among the %2", {shown(id), std::string(list)}},
              "name one that is there, or add it");
}

Result<void> checkNeeds(const Specification& specification) {
  const auto missing = [](std::string_view field, Message expected) {
    return fail(ErrorCode::InvalidInput, std::string(field), "", "this field is missing",
                std::move(expected));
  };
  if (specification.reading == Reading::Value && !specification.aim)
    return missing("aim", "a value needs the torque to aim at");
  if (specification.reading == Reading::Range && !specification.low)
    return missing("low", "a range needs its lowest torque");
  if (specification.reading != Reading::Value && specification.reading != Reading::Words &&
      !specification.high)
    return missing("high", "a range or a maximum needs its highest torque");
  if (specification.method == Method::TorqueAndAngle && !specification.angle)
    return missing("angle", "torque and angle needs the angle to turn after the torque");
  return {};
}

Result<void> checkAscending(const std::optional<StatedTorque>& lower,
                            const std::optional<StatedTorque>& upper, std::string_view upperField) {
  if (!lower || !upper) return {};
  if (lower->unit != upper->unit)
    return fail(ErrorCode::InvalidInput, std::string(upperField), codeText(*upper),
                {"%1 and %2 are in different units", {text(*lower), text(*upper)}},
                "state low, aim and high in the unit that is printed");
  if (lower->value() > upper->value())
    return fail(ErrorCode::OutOfRange, std::string(upperField), codeText(*upper),
                {"%1 is less than %2", {text(*upper), text(*lower)}},
                "low may not exceed aim, nor aim exceed high");
  return {};
}

Result<void> checkValues(const Specification& specification) {
  CW_CHECK(checkNeeds(specification));
  CW_CHECK(checkAscending(specification.low, specification.aim, "aim"));
  CW_CHECK(checkAscending(specification.aim, specification.high, "high"));
  CW_CHECK(checkAscending(specification.low, specification.high, "high"));
  for (const auto& torque : {specification.aim, specification.high})
    if (torque && torque->value() <= Torque())
      return fail(ErrorCode::OutOfRange, "", codeText(*torque), {"%1 tightens nothing", {text(*torque)}},
                  "give a torque above zero");
  return {};
}

Result<void> checkSpecifications(const Sheet& sheet) {
  for (std::size_t i = 0; i < sheet.specifications.size(); ++i) {
    const Specification& specification = sheet.specifications[i];
    const std::string place = placeIn("specifications", i);
    if (!specification.source.empty())
      CW_CHECK(checkReference(sheet.source(specification.source) != nullptr, place + ".source",
                              specification.source, "sources"));
    if (auto sound = checkValues(specification); !sound) return fail(within(place, sound.error()));
  }
  return {};
}

Result<void> checkOrder(const Joint& joint, const std::set<std::string>& labels) {
  std::set<std::string_view> seen;
  for (std::size_t i = 0; i < joint.order.size(); ++i) {
    const std::string& label = joint.order[i];
    if (!labels.contains(label))
      return fail(ErrorCode::InvalidInput, placeIn("order", i), label,
                  {"there is no position “%1”", {shown(label)}}, "list the labels of the layout");
    if (!seen.insert(label).second)
      return fail(ErrorCode::InvalidInput, placeIn("order", i), label,
                  {"position “%1” stands twice in the order", {shown(label)}}, "list every label once");
  }
  for (const std::string& label : labels)
    if (!seen.contains(label))
      return fail(ErrorCode::InvalidInput, "order", label,
                  {"position “%1” is missing from the order", {shown(label)}}, "list every label once");
  return {};
}

/// The order itself is trusted: a later program's rule may give another, and the sheet was issued with this
/// one. Whether they agree is for the review to say.
Result<void> checkRule(const Joint& joint) {
  if (joint.rule.empty()) return {};
  CW_CHECK(orderRule(joint.rule));
  return {};
}

Result<void> checkPosition(const Sheet& sheet, const Joint& joint, const std::string& label) {
  const bool differs = joint.positions.contains(label);
  const std::string place = differs ? "positions[" + shown(label) + "]." : "";
  const std::string &fastener = joint.fastenerAt(label), &specification = joint.specificationAt(label);
  CW_CHECK(checkReference(sheet.fastener(fastener) != nullptr, place + "fastener", fastener, "fasteners"));
  return checkReference(sheet.specification(specification) != nullptr, place + "specification", specification,
                        "specifications");
}

Result<void> checkJoint(const Sheet& sheet, const Joint& joint) {
  auto placed = positions(joint.layout);
  if (!placed) return fail(within("layout", placed.error()));
  std::set<std::string> labels;
  for (const Position& position : *placed) labels.insert(position.label);
  for (const auto& [label, detail] : joint.positions)
    if (!labels.contains(label))
      return fail(ErrorCode::InvalidInput, "positions", label, {"there is no position “%1”", {shown(label)}},
                  "name labels of the layout");
  for (const std::string& label : labels) CW_CHECK(checkPosition(sheet, joint, label));
  CW_CHECK(checkOrder(joint, labels));
  return checkRule(joint);
}

}  // namespace

Result<std::vector<std::string>> orderByRule(const Joint& joint) {
  CW_TRY(rule, orderRule(joint.rule));
  auto placed = positions(joint.layout);
  if (!placed) return fail(within("layout", placed.error()));
  auto order = tighteningOrder(joint.layout, rule);
  if (!order) return fail(within("rule", order.error()));
  std::vector<std::string> labels;
  for (const std::size_t position : order->positions) labels.push_back((*placed)[position - 1].label);
  return labels;
}

Result<void> checkSheet(const Sheet& sheet) {
  CW_CHECK(checkIds(sheet.sources, "sources"));
  CW_CHECK(checkIds(sheet.parts, "parts"));
  CW_CHECK(checkIds(sheet.fasteners, "fasteners"));
  CW_CHECK(checkIds(sheet.specifications, "specifications"));
  CW_CHECK(checkIds(sheet.joints, "joints"));
  CW_CHECK(checkIds(sheet.steps, "steps"));
  CW_CHECK(checkSpecifications(sheet));
  for (std::size_t i = 0; i < sheet.joints.size(); ++i)
    if (auto sound = checkJoint(sheet, sheet.joints[i]); !sound)
      return fail(within(placeIn("joints", i), sound.error()));
  for (std::size_t i = 0; i < sheet.steps.size(); ++i)
    if (auto sound = checkStep(sheet, sheet.steps[i]); !sound)
      return fail(within(placeIn("steps", i), sound.error()));
  return {};
}

}  // namespace cw
