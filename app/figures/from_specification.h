#pragma once
#include <QString>
#include <map>

#include "core/procedure/sheet.h"

namespace cw {

/// What a specification and its fastener fill into the inputs of Figures. Inputs of which they say nothing
/// are emptied, so that nothing of another joint stays.
std::map<QString, QString> inputsFrom(const Specification& specification, const Fastener& fastener);

}  // namespace cw
