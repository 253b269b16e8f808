#include "app/bench/start_panel.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>

#include "app/bench/shop_choices.h"
#include "app/common/wording.h"
#include "core/procedure/model_fit.h"

namespace cw {
namespace {

QString nameOf(Reason reason) {
  switch (reason) {
    case Reason::NewWork:
      return StartPanel::tr("new work");
    case Reason::Warranty:
      return StartPanel::tr("warranty");
    case Reason::Comeback:
      return StartPanel::tr("comeback of a record");
    case Reason::RetorqueDue:
      return StartPanel::tr("retorque due from a record");
  }
  return {};
}

bool follows(Reason reason) {
  return reason == Reason::Comeback || reason == Reason::RetorqueDue;
}

}  // namespace

StartPanel::StartPanel(Workspace& workspace, QWidget* parent)
    : BenchForm({tr("Start a job"), tr("Start"), "startButton"}, parent), m_workspace(workspace) {
  m_workOrder = addField(tr("Work order"), "workOrderField");
  m_hours = addField(tr("Hours, as read, with unit"), "hoursField");
  m_machine = addChoice(tr("Machine"), "machineChoice", Width::Whole);
  m_machine->setEditable(true);
  m_machine->lineEdit()->setAccessibleName(tr("Machine"));
  m_sheet = addChoice(tr("Sheet"), "sheetChoice", Width::Whole);
  m_reason = addChoice(tr("Reason"), "reasonChoice");
  for (const auto& [reason, word] : Words<Reason>::kAll) m_reason->addItem(nameOf(reason), toQt(word));
  m_person = addChoice(tr("Who does it"), "personChoice");
  m_parent = addChoice(tr("Record it follows from"), "parentChoice", Width::Whole, 2);
  m_supervisor = addChoice(tr("Supervised by"), "supervisorChoice", Width::Whole);
  m_pin = addPin("pinField");
  connect(this, &BenchForm::acted, this, &StartPanel::start);
  connect(m_machine, &QComboBox::currentTextChanged, this, &StartPanel::offerSheets);
  connect(m_sheet, &QComboBox::currentIndexChanged, this, &StartPanel::judgeSheet);
  connect(m_reason, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
  connect(m_person, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
}

void StartPanel::present() {
  say({});
  for (QLineEdit* field : {m_workOrder, m_hours, m_pin}) field->clear();
  m_issued.clear();
  if (const auto sheets = m_workspace.shop().sheets().all())
    for (const SheetRow& row : *sheets)
      if (row.status == SheetStatus::Issued) m_issued.push_back(row);
  fillRecords(*m_parent, m_workspace.shop());
  fillMachines(*m_machine, m_workspace.shop());
  fillWorkers(*m_person, m_workspace.shop());
  fillWorkers(*m_supervisor, m_workspace.shop(), true);
  offerSheets();
  if (m_issued.empty()) say(tr("No sheet is issued yet; a trainer issues one first."));
  refresh();
  m_workOrder->setFocus();
}

std::string StartPanel::machineModel() const {
  const auto machine = m_workspace.shop().machines().find(machineIn(*m_machine));
  return machine ? machine->model : std::string();
}

void StartPanel::offerSheets() {
  const std::string model = machineModel();
  const QSignalBlocker quiet(m_sheet);
  m_sheet->clear();
  for (const bool other : {false, true})
    for (const SheetRow& row : m_issued)
      if (forAnotherModel(row.model, model).has_value() == other)
        m_sheet->addItem(tr("%1, rev %2, for %3").arg(toQt(row.title), toQt(row.revision), toQt(row.model)),
                         static_cast<int>(&row - m_issued.data()));
  judgeSheet();
}

const SheetRow* StartPanel::chosenSheet() const {
  return m_sheet->currentIndex() < 0 ? nullptr
                                     : &m_issued[static_cast<std::size_t>(m_sheet->currentData().toInt())];
}

void StartPanel::judgeSheet() {
  const SheetRow* sheet = chosenSheet();
  const auto other = sheet != nullptr ? forAnotherModel(sheet->model, machineModel()) : std::nullopt;
  say(other ? worded(*other) : QString());
}

void StartPanel::refresh() {
  setShown(m_parent, follows(static_cast<Reason>(m_reason->currentIndex())));
  setShown(m_supervisor, isApprentice(m_workspace, *m_person));
}

void StartPanel::start() {
  const SheetRow* sheet = chosenSheet();
  if (sheet == nullptr) return;
  Beginning beginning;
  beginning.sheetDigest = sheet->digest;
  beginning.by = fromQt(m_person->currentData().toString());
  beginning.pin = fromQt(m_pin->text());
  if (isApprentice(m_workspace, *m_person))
    beginning.supervisor = fromQt(m_supervisor->currentData().toString());
  beginning.start.workOrder = fromQt(m_workOrder->text().trimmed());
  beginning.start.machine = machineIn(*m_machine);
  beginning.start.hours = fromQt(m_hours->text().trimmed());
  beginning.start.reason = static_cast<Reason>(m_reason->currentIndex());
  if (follows(beginning.start.reason)) beginning.start.parent = fromQt(m_parent->currentData().toString());
  const auto job = m_workspace.startJob(beginning);
  if (!job) return say(worded(job.error()));
  emit started(*job, {beginning.by, beginning.supervisor});
}

}  // namespace cw
