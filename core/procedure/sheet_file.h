#pragma once
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

inline constexpr std::string_view kSheetFormat = "clampwright.sheet";
inline constexpr int kSheetVersion = 1;
inline constexpr std::size_t kMostListed = 10'000;  ///< steps, positions of all joints, each other list
inline constexpr std::size_t kMostJoints = 1'000;

/// Reads a sheet file ("format": "clampwright.sheet", version 1; resources/formats/sheet.schema.json).
/// InvalidInput or OutOfRange naming place, value and what would be right: bad JSON, a missing or wrong
/// field, an unknown unit, a label twice in an order, a reference to nothing, more than 10 000 steps.
/// NewerVersion if the file's version is above ours.
Result<Sheet> readSheet(std::string_view bytes);

/// A sheet as its file has it, unknown fields included.
Json toJson(const Sheet& sheet);

/// The file text of a sheet; readSheet gives the same Sheet back, unknown fields included.
std::string writeSheet(const Sheet& sheet);

}  // namespace cw
