#pragma once
#include "core/store/shop.h"

namespace cw {

/// Makes the sheet of a quick joint whose record is sealed a draft, for the trainer to go on with. It keeps
/// the sheet's id, so that the record counts as its first use. NotFound without a record; OutOfTurn for a job
/// that was no quick joint; the errors of Sheets::saveDraft.
Result<SheetRow> promoteQuickJoint(Shop& shop, const Id& job, const Deed& deed);

}  // namespace cw
