#include "app/bench/start_panel.h"

#include <QComboBox>
#include <QLineEdit>

#include "app/bench/shop_choices.h"
#include "app/common/wording.h"

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
  connect(m_reason, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
  connect(m_person, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
}

void StartPanel::present() {
  say({});
  for (QLineEdit* field : {m_workOrder, m_hours, m_pin}) field->clear();
  m_sheet->clear();
  m_sheets.clear();
  if (const auto sheets = m_workspace.shop().sheets().all())
    for (const SheetRow& row : *sheets)
      if (row.status == SheetStatus::Issued) {
        m_sheets.push_back(row);
        m_sheet->addItem(tr("%1, rev %2").arg(toQt(row.title), toQt(row.revision)));
      }
  fillRecords(*m_parent, m_workspace.shop());
  fillMachines(*m_machine, m_workspace.shop());
  fillWorkers(*m_person, m_workspace.shop());
  fillWorkers(*m_supervisor, m_workspace.shop(), true);
  if (m_sheets.empty()) say(tr("No sheet is issued yet; a trainer issues one first."));
  refresh();
  m_workOrder->setFocus();
}

void StartPanel::refresh() {
  setShown(m_parent, follows(static_cast<Reason>(m_reason->currentIndex())));
  setShown(m_supervisor, isApprentice(m_workspace, *m_person));
}

void StartPanel::start() {
  const int sheet = m_sheet->currentIndex();
  if (sheet < 0) return;
  Beginning beginning;
  beginning.sheetDigest = m_sheets[static_cast<std::size_t>(sheet)].digest;
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
