#pragma once
#include "app/common/workspace.h"

class QComboBox;

namespace cw {

// What the shop's registers offer in the forms of the bench. Errors of storage, with nothing offered.

/// Every machine of the shop; another one may be typed.
Result<void> fillMachines(QComboBox& choice, Shop& shop);
/// The machine that is chosen or typed, as the register calls it.
std::string machineIn(const QComboBox& choice);

/// The sealed records, the latest first, with the job's id as data; the last line says if there are more.
Result<void> fillRecords(QComboBox& choice, Shop& shop);

/// Everybody who may do the work, by name, with the sign as data; of `noApprentices` only those.
Result<void> fillWorkers(QComboBox& choice, Shop& shop, bool noApprentices = false);

/// Is the person who is chosen there an apprentice, who needs a supervisor?
Result<bool> isApprentice(Workspace& workspace, const QComboBox& workers);

/// Shop leads, after “nobody”.
Result<void> fillLeads(QComboBox& choice, Shop& shop);

}  // namespace cw
