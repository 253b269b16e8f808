#include "core/fastener/row_keys.h"

#include "core/fastener/folded_name.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace cw {
namespace {

std::vector<std::string> namedKeys(const std::string& name, const std::vector<std::string>& aliases) {
  std::vector<std::string> keys = {foldedName(name)};
  for (const std::string& alias : aliases) keys.push_back(foldedName(alias));
  return keys;
}

std::string paired(std::string first, const std::string& second) {
  return std::move(first) + "|" + second;
}

}  // namespace

std::vector<std::string> rowKeys(const Thread& thread) {
  const std::string full = foldedThread(thread.designation).key;
  std::vector<std::string> keys = {full};
  if (thread.system == ThreadSystem::Metric && full.find('X') == std::string::npos)
    keys.push_back(full + "X" + significant(inMillimetres(thread.pitch), 6));
  if (const std::size_t series = thread.designation.find(' '); series != std::string::npos)
    keys.push_back(foldedThread(std::string_view(thread.designation).substr(0, series)).key);
  return keys;
}

std::vector<std::string> rowKeys(const Grade& grade) {
  return namedKeys(grade.name, grade.aliases);
}

std::vector<std::string> rowKeys(const Condition& condition) {
  return namedKeys(condition.name, condition.aliases);
}

std::vector<std::string> rowKeys(const TappedMaterial& material) {
  return namedKeys(material.name, material.aliases);
}

std::vector<std::string> rowKeys(const Head& head) {
  return {headKey(head.kind, head.system, head.diameter)};
}

std::vector<std::string> rowKeys(const ClearanceHole& hole) {
  return {sizeKey(hole.system, hole.diameter)};
}

std::vector<std::string> rowKeys(const SizeLimits& limits) {
  return {limitsKey(limits.thread, limits.toleranceClass)};
}

std::vector<std::string> rowKeys(const PrevailingTorque& torque) {
  return {prevailingKey(torque.thread, torque.fastener)};
}

std::vector<std::string> rowKeys(const ToolClass& toolClass) {
  return {toolClassKey(toolClass.type, toolClass.letter)};
}

std::string sizeKey(ThreadSystem system, Length diameter) {
  const LengthUnit& unit = system == ThreadSystem::Metric ? kMillimetre : kInch;
  return significant(in(unit, diameter), 6) + std::string(unit.code);
}

std::string headKey(std::string_view kind, ThreadSystem system, Length diameter) {
  return paired(foldedName(kind), sizeKey(system, diameter));
}

std::string limitsKey(std::string_view thread, std::string_view toleranceClass) {
  return paired(foldedThread(thread).key, foldedName(toleranceClass));
}

std::string prevailingKey(std::string_view thread, std::string_view fastener) {
  return paired(foldedThread(thread).key, foldedName(fastener));
}

std::string toolClassKey(std::string_view type, std::string_view letter) {
  return paired(foldedName(type), foldedName(letter));
}

}  // namespace cw
