#include "core/store/promote.h"

#include "core/procedure/quick_joint.h"
#include "core/procedure/sheet_file.h"
#include "core/record/verify.h"

namespace cw {

Result<SheetRow> promoteQuickJoint(Shop& shop, const Id& job, const Deed& deed) {
  CW_TRY(bytes, shop.records().bytes(job));
  CW_TRY(record, readRecord(bytes));
  if (!record.job.start.quick)
    return fail(ErrorCode::OutOfTurn, "job " + job.text(), record.job.sheet.title,
                {"this job was done by revision %1 of a sheet", {record.job.sheet.revision}},
                "only a quick joint becomes a draft");
  return shop.sheets().saveDraft(writeSheet(draftFromQuickSheet(record.job.sheet, deed.by)), deed);
}

}  // namespace cw
