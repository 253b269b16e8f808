#pragma once
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/procedure/sheet.h"

namespace cw {

enum class Applies { Fits, Unfit, NotJudged };

/// Is a sheet for a machine, and what keeps one from saying so.
struct Applicability {
  Applies verdict = Applies::Fits;
  std::vector<Message> doubts;  ///< whole sentences, of the model and of the serial number; none if it fits
};

/// By the model and serial number on the machine's plate; empty: not known, as of a machine that the shop's
/// register does not list. Unfit if either is another than the sheet's, else NotJudged if either cannot be
/// compared. A sheet without model is for any.
Applicability applicability(const Sheet& sheet, const std::string& model, const std::string& serial);

}  // namespace cw
