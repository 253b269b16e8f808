#pragma once
#include <string>
#include <vector>

#include "core/fastener/library.h"

namespace cw {

// What each kind of row answers to, folded as in folded_name.h.

std::vector<std::string> rowKeys(const Thread& thread);
std::vector<std::string> rowKeys(const Grade& grade);
std::vector<std::string> rowKeys(const Condition& condition);
std::vector<std::string> rowKeys(const TappedMaterial& material);
std::vector<std::string> rowKeys(const Head& head);
std::vector<std::string> rowKeys(const ClearanceHole& hole);
std::vector<std::string> rowKeys(const SizeLimits& limits);
std::vector<std::string> rowKeys(const PrevailingTorque& torque);
std::vector<std::string> rowKeys(const ToolClass& toolClass);

// The same from what somebody asks for.

std::string sizeKey(ThreadSystem system, Length diameter);
std::string headKey(std::string_view kind, ThreadSystem system, Length diameter);
std::string limitsKey(std::string_view thread, std::string_view toleranceClass);
std::string prevailingKey(std::string_view thread, std::string_view fastener);
std::string toolClassKey(std::string_view type, std::string_view letter);

}  // namespace cw
