#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/job.h"

namespace cw::test {

// What the texts of entries say, read without the code that judges them.

std::string textOf(const Json& object, std::string_view key);  ///< empty if it is not there
int wholeOf(const Json& object, std::string_view key);         ///< 0 if it is not there
const Json* voucherOf(const Json& entry, const std::string& sign);

double newtonMetres(const StatedTorque& torque);
double newtonMetresOf(const Json& stated);  ///< {"value","unit"}

/// What is allowed at a position, N·m.
struct Band {
  double low = 0, high = 0;
  bool holds(double value) const { return value >= low - 1e-6 && value <= high + 1e-6; }
};

/// By the sheet, or by the last deviation with a torque before entry `before`.
Band bandAt(const Job& job, const std::vector<Json>& entries, const Step& step, const std::string& label,
            int before);

/// What a wrench was last set to in the step before entry `before`, N·m; nothing where no setting of it
/// holds.
std::optional<double> settingOf(const Job& job, const std::vector<Json>& entries, const std::string& step,
                                const std::string& tool, int before);

}  // namespace cw::test
