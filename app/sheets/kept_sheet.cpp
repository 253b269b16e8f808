#include "app/sheets/kept_sheet.h"

#include <QCoreApplication>

#include "app/common/wording.h"
#include "core/procedure/sheet_file.h"
#include "core/report/describe.h"
#include "core/report/sheet_document.h"
#include "core/store/sheet_review.h"

namespace cw {
namespace {

struct SheetText {
  Q_DECLARE_TR_FUNCTIONS(KeptSheet)
};

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

Result<KeptSheet> keptSheet(Shop& shop, const SheetRow& row) {
  KeptSheet out;
  out.row = row;
  CW_TRY(bytes, shop.sheets().bytes(row.digest));
  CW_TRY(sheet, readSheet(bytes));
  CW_TRY(findings, reviewAgainst(shop, sheet, ""));
  CW_TRY(history, shop.sheets().history(row.sheet, row.revision));
  out.findings = std::move(findings);
  out.sheet = std::move(sheet);
  out.history = std::move(history);
  return out;
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
