#pragma once
#include <string>

#include "core/base/result.h"
#include "core/shop/person.h"
#include "core/shop/tool.h"

namespace cw {

// Inside core/store only: pages of the registers, each as its row holds it. Corrupt naming the row where the
// page cannot be read, or is another's.

Result<Person> personOfPage(const std::string& sign, const std::string& page);
Result<TorqueTool> toolOfPage(const std::string& id, const std::string& page);

}  // namespace cw
