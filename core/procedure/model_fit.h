#pragma once
#include <optional>
#include <string>

#include "core/base/message.h"

namespace cw {

/// What to say where a sheet, as far as the names tell, is for another machine: "This sheet is for %1; the
/// machine is %2." Names are free text as on the plates, so one that contains the other agrees with it
/// ("PS-40 and PS-42" with "PS-40", not with "PS-4"), and one that is not known agrees with all.
std::optional<Message> forAnotherModel(const std::string& sheetModel, const std::string& machineModel);

}  // namespace cw
