#pragma once
#include <span>
#include <string>

#include "core/procedure/sheet.h"
#include "core/record/job.h"
#include "core/report/document.h"
#include "core/report/wording.h"
#include "core/shop/person.h"

namespace cw {

/// A sheet on paper, for the day without a screen: every step with its warnings before it and room to write,
/// every joint with its diagram and a line a position. What is written there is entered later, marked late.
/// `digest` is that of the sheet's bytes and stands in the footer.
Document backupSheet(const Sheet& sheet, const std::string& digest, const Wording& wording);

/// The tag that hangs on the machine of a parked job. OutOfTurn if the job is not parked.
Result<Document> doNotRunTag(const Job& job, std::span<const Person> people, const Wording& wording);

}  // namespace cw
