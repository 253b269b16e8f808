#include "app/bench/shop_choices.h"

#include <QComboBox>

#include "app/common/wording.h"

namespace cw {

void fillMachines(QComboBox& choice, Shop& shop) {
  choice.clear();
  if (const auto machines = shop.machines().all())
    for (const Machine& machine : *machines)
      choice.addItem(QStringLiteral("%1  %2").arg(toQt(machine.id), toQt(machine.model)), toQt(machine.id));
}

std::string machineIn(const QComboBox& choice) {
  const int known = choice.findText(choice.currentText());
  return fromQt(known >= 0 ? choice.itemData(known).toString() : choice.currentText().trimmed());
}

void fillRecords(QComboBox& choice, Shop& shop) {
  choice.clear();
  JobQuery sealed;
  sealed.state = JobState::Sealed;
  if (const auto rows = shop.findJobs(sealed))
    for (const JobRow& row : *rows)
      choice.addItem(QStringLiteral("%1  %2  %3  %4")
                         .arg(toQt(row.workOrder), toQt(row.machine), toQt(row.title),
                              toQt(isoDate(localDate(row.started)))),
                     toQt(row.job.text()));
}

void fillWorkers(QComboBox& choice, Shop& shop, bool noApprentices) {
  choice.clear();
  if (const auto people = shop.people().all())
    for (const Person& person : *people) {
      const bool works = person.active && (person.may(Role::Technician) || person.may(Role::ShopLead));
      if (works && !(noApprentices && person.apprentice))
        choice.addItem(toQt(person.name), toQt(person.sign));
    }
}

bool isApprentice(Workspace& workspace, const QComboBox& workers) {
  if (!workspace.hasShop()) return false;
  const auto person = workspace.shop().people().find(fromQt(workers.currentData().toString()));
  return person && person->apprentice;
}

}  // namespace cw
