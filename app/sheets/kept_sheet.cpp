#include "app/sheets/kept_sheet.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/common/wording.h"
#include "core/fastener/catalogue.h"
#include "core/procedure/review.h"
#include "core/procedure/sheet_file.h"
#include "core/report/describe.h"
#include "core/report/sheet_document.h"

namespace cw {
namespace {

struct SheetText {
  Q_DECLARE_TR_FUNCTIONS(KeptSheet)
};

std::string inWindow(const Message& message) {
  return fromQt(worded(message));
}

Section standing(const KeptSheet& kept) {
  Facts facts;
  for (const SheetEvent& event : kept.history)
    facts.rows.push_back(
        {fromQt(statusText(event.status)), timeText(event.deed.at) + ", " + event.deed.by +
                                               (event.deed.remark.empty() ? "" : ": " + event.deed.remark)});
  Section out{"", {std::move(facts)}, false};
  if (kept.row.independent == false)
    out.blocks.push_back(Paragraph{
        fromQt(SheetText::tr("Not independent: author and approver are the same person.")), Tone::Caution});
  return out;
}

}  // namespace

Result<KeptSheet> keptSheet(Shop& shop, const SheetRow& row, const std::string& approver) {
  KeptSheet out;
  out.row = row;
  CW_TRY(bytes, shop.sheets().bytes(row.digest));
  CW_TRY(sheet, readSheet(bytes));
  CW_TRY(tools, shop.tools().all());
  CW_TRY(active, shop.people().activeCount());
  CW_TRY(history, shop.sheets().history(row.sheet, row.revision));
  out.findings = review(sheet, {shippedCatalogue(), tools, approver, active == 1});
  out.sheet = std::move(sheet);
  out.history = std::move(history);
  return out;
}

Result<void> issueKept(Workspace& workspace, const SheetRow& row, const Signed& by) {
  CW_TRY(kept, keptSheet(workspace.shop(), row, fromQt(by.sign)));
  const auto stops = std::find_if(kept.findings.begin(), kept.findings.end(), [](const Finding& finding) {
    return finding.severity == Severity::Blocking;
  });
  if (stops != kept.findings.end())
    return fail(ErrorCode::NotPermitted, stops->place, "", stops->problem, stops->cure);
  return workspace.moveSheet(&Sheets::issue, row, by);
}

QString statusText(SheetStatus status) {
  switch (status) {
    case SheetStatus::Draft:
      return SheetText::tr("draft");
    case SheetStatus::InReview:
      return SheetText::tr("in review");
    case SheetStatus::Issued:
      return SheetText::tr("issued");
    case SheetStatus::Superseded:
      return SheetText::tr("superseded");
    case SheetStatus::Withdrawn:
      return SheetText::tr("withdrawn");
  }
  return {};
}

Document documentOf(const KeptSheet& kept) {
  Document out = sheetDocument(kept.sheet, inWindow);
  out.subtitle =
      fromQt(SheetText::tr("Revision %1, %2").arg(toQt(kept.row.revision), statusText(kept.row.status)));
  out.sections.insert(out.sections.begin(), {standing(kept), reviewSection(kept.findings, inWindow)});
  return out;
}

}  // namespace cw
