#pragma once
#include <QString>
#include <vector>

#include "core/base/result.h"
#include "core/units/parse.h"

namespace cw {

/// Shares of a target as people type them, in percent: "30 70 100".
QString sharesText(const std::vector<double>& shares);

/// Reads that. The errors of parseNumber.
Result<std::vector<double>> sharesIn(const std::string& text, DecimalMark mark);

}  // namespace cw
