#include "core/procedure/model_fit.h"

#include "core/fastener/folded_name.h"

namespace cw {
namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

/// Not within a longer number.
bool contains(const std::string& whole, const std::string& part) {
  for (std::size_t at = whole.find(part); at != whole.npos; at = whole.find(part, at + 1)) {
    const std::size_t end = at + part.size();
    const bool goesOn = !part.empty() && end < whole.size() && isDigit(part.back()) && isDigit(whole[end]);
    if (!goesOn) return true;
  }
  return false;
}

}  // namespace

std::optional<Message> forAnotherModel(const std::string& sheetModel, const std::string& machineModel) {
  const std::string sheet = foldedName(sheetModel), machine = foldedName(machineModel);
  if (contains(sheet, machine) || contains(machine, sheet)) return std::nullopt;
  return Message("This sheet is for %1; the machine is %2.", {sheetModel, machineModel});
}

}  // namespace cw
