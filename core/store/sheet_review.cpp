#include "core/store/sheet_review.h"

#include <algorithm>

#include "core/procedure/review.h"
#include "core/procedure/sheet_file.h"

namespace cw {

Result<Findings> reviewAgainst(Shop& shop, const Sheet& sheet, const std::string& approver) {
  CW_TRY(tools, shop.tools().all());
  CW_TRY(active, shop.people().activeCount());
  CW_TRY(catalogue, shop.library().catalogue());
  return review(sheet, {*catalogue, tools, approver, active == 1});
}

Result<void> issueReviewed(Shop& shop, const Id& sheet, const std::string& revision, const Deed& deed) {
  CW_TRY(row, shop.sheets().find(sheet, revision));
  CW_TRY(bytes, shop.sheets().bytes(row.digest));
  CW_TRY(content, readSheet(bytes));
  CW_TRY(findings, reviewAgainst(shop, content, deed.by));
  const auto stops = std::find_if(findings.begin(), findings.end(), [](const Finding& finding) {
    return finding.severity == Severity::Blocking;
  });
  if (stops != findings.end())
    return fail(ErrorCode::NotPermitted, stops->place, "", stops->problem, stops->cure);
  return shop.sheets().issue(sheet, revision, deed);
}

}  // namespace cw
