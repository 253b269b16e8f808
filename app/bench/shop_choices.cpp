#include "app/bench/shop_choices.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QStandardItemModel>

#include "app/common/wording.h"
#include "core/base/found.h"

namespace cw {
namespace {

struct ShopChoiceTexts {
  Q_DECLARE_TR_FUNCTIONS(ShopChoices)
};

/// A last line that cannot be chosen.
void addRemark(QComboBox& choice, const QString& text) {
  choice.addItem(text);
  if (auto* items = qobject_cast<QStandardItemModel*>(choice.model()))
    items->item(choice.count() - 1)->setEnabled(false);
}

}  // namespace

Result<void> fillMachines(QComboBox& choice, Shop& shop) {
  choice.clear();
  CW_TRY(machines, shop.machines().all());
  for (const Machine& machine : machines)
    choice.addItem(QStringLiteral("%1  %2").arg(toQt(machine.id), toQt(machine.model)), toQt(machine.id));
  return {};
}

std::string machineIn(const QComboBox& choice) {
  const int known = choice.findText(choice.currentText());
  return fromQt(known >= 0 ? choice.itemData(known).toString() : choice.currentText().trimmed());
}

Result<void> fillRecords(QComboBox& choice, Shop& shop) {
  choice.clear();
  JobQuery sealed;
  sealed.states = {JobState::Sealed};
  CW_TRY(listed, shop.findJobs(sealed));
  for (const JobRow& row : listed.rows)
    choice.addItem(QStringLiteral("%1  %2  %3  %4")
                       .arg(toQt(row.workOrder), toQt(row.machine), toQt(row.title),
                            toQt(isoDate(localDate(row.started)))),
                   toQt(row.job.text()));
  if (listed.cut())
    addRemark(choice,
              ShopChoiceTexts::tr("the latest %1 of %2 records").arg(listed.rows.size()).arg(listed.total));
  return {};
}

Result<void> fillWorkers(QComboBox& choice, Shop& shop, bool noApprentices) {
  choice.clear();
  CW_TRY(people, shop.people().all());
  for (const Person& person : people) {
    const bool works = person.active && (person.may(Role::Technician) || person.may(Role::ShopLead));
    if (works && !(noApprentices && person.apprentice)) choice.addItem(toQt(person.name), toQt(person.sign));
  }
  return {};
}

Result<void> fillLeads(QComboBox& choice, Shop& shop) {
  choice.clear();
  choice.addItem(ShopChoiceTexts::tr("nobody"), QString());
  CW_TRY(people, shop.people().all());
  for (const Person& person : people)
    if (person.active && person.may(Role::ShopLead)) choice.addItem(toQt(person.name), toQt(person.sign));
  return {};
}

Result<bool> isApprentice(Workspace& workspace, const QComboBox& workers) {
  if (!workspace.hasShop()) return false;
  CW_TRY(person, ifFound(workspace.shop().people().find(fromQt(workers.currentData().toString()))));
  return person && person->apprentice;
}

}  // namespace cw
