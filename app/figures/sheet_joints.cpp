#include "app/figures/sheet_joints.h"

#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/common/workspace.h"
#include "core/procedure/sheet_file.h"

namespace cw {
namespace {

class SheetJointTexts {
  Q_DECLARE_TR_FUNCTIONS(SheetJoints)
};

Result<SettlingExample> predicted(const Sheet& sheet, const Joint& joint, Workspace& workspace) {
  CW_TRY(catalogue, workspace.catalogue());
  const Fastener* fastener = sheet.fastener(joint.fastener);
  CW_TRY(thread, catalogue->thread(fastener == nullptr ? joint.fastener : fastener->thread));
  return coverWith(joint.layout, thread, {"%1", {joint.name}});
}

SettlingWay wayOf(const Joint& joint) {
  SettlingWay way;
  if (const auto rule = orderRule(joint.rule)) way.rule = *rule;
  way.shares = joint.passes.shares;
  return way;
}

}  // namespace

std::vector<SheetJoint> sheetJoints(Workspace& workspace) {
  std::vector<SheetJoint> out;
  if (!workspace.hasShop()) return out;
  const auto rows = workspace.shop().sheets().all();
  if (!rows) return {{SheetJointTexts::tr("the shop's sheets"), {}, fail(rows.error()), {}}};
  for (const SheetRow& row : *rows) {
    if (row.status != SheetStatus::Issued && row.status != SheetStatus::Draft) continue;
    const auto bytes = workspace.shop().sheets().bytes(row.digest);
    const auto sheet = bytes ? readSheet(*bytes) : Result<Sheet>(fail(bytes.error()));
    if (!sheet) {
      out.push_back({SheetJointTexts::tr("%1 rev %2").arg(toQt(row.title), toQt(row.revision)),
                     {},
                     fail(sheet.error()),
                     {}});
      continue;
    }
    for (const Joint& joint : sheet->joints)
      out.push_back(
          {SheetJointTexts::tr("%1 rev %2: %3").arg(toQt(row.title), toQt(row.revision), toQt(joint.name)),
           SheetJointTexts::tr(
               "Places and thread are the sheet's; part, gasket and target are illustrative values."),
           predicted(*sheet, joint, workspace), wayOf(joint)});
  }
  return out;
}

}  // namespace cw
