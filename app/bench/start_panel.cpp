#include "app/bench/start_panel.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalBlocker>

#include "app/bench/lead_fields.h"
#include "app/bench/shop_choices.h"
#include "app/common/wording.h"
#include "core/base/found.h"
#include "core/procedure/applicability.h"
#include "core/procedure/model_fit.h"
#include "core/procedure/sheet_file.h"

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
  m_supervisorPin = addPin("supervisorPinField", tr("PIN of the supervisor"));
  m_lead = new LeadFields(*this, tr("Lead who allows this sheet here"));
  connect(this, &BenchForm::acted, this, &StartPanel::start);
  connect(m_machine, &QComboBox::currentTextChanged, this, &StartPanel::offerSheets);
  connect(m_sheet, &QComboBox::currentIndexChanged, this, &StartPanel::judgeSheet);
  connect(m_reason, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
  connect(m_person, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
}

void StartPanel::present() {
  say({});
  for (QLineEdit* field : {m_workOrder, m_hours, m_pin, m_supervisorPin}) field->clear();
  m_lead->clear();
  const auto filled = fill();
  offerSheets();
  refresh();
  if (!filled)
    say(worded(filled.error()));
  else if (m_issued.empty())
    say(tr("No sheet is issued yet; a trainer issues one first."));
  m_workOrder->setFocus();
}

Result<void> StartPanel::fill() {
  Shop& shop = m_workspace.shop();
  m_issued.clear();
  CW_TRY(sheets, shop.sheets().all());
  for (const SheetRow& row : sheets)
    if (row.status == SheetStatus::Issued) m_issued.push_back(row);
  CW_CHECK(fillRecords(*m_parent, shop));
  CW_CHECK(fillMachines(*m_machine, shop));
  CW_CHECK(fillWorkers(*m_person, shop));
  CW_CHECK(m_lead->fill(shop));
  return fillWorkers(*m_supervisor, shop, true);
}

/// Empty for a machine that the shop does not know.
Result<std::string> StartPanel::machineModel() const {
  CW_TRY(machine, ifFound(m_workspace.shop().machines().find(machineIn(*m_machine))));
  return machine ? machine->model : std::string();
}

void StartPanel::offerSheets() {
  const std::string model = machineModel().value_or("");  // judgeSheet says why it is not known
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

Result<const Sheet*> StartPanel::read(const SheetRow& row) {
  if (m_readDigest != row.digest) {
    CW_TRY(bytes, m_workspace.shop().sheets().bytes(row.digest));
    CW_TRY(sheet, readSheet(bytes));
    m_read = std::move(sheet);
    m_readDigest = row.digest;
  }
  return &m_read;
}

void StartPanel::judgeSheet() {
  const SheetRow* row = chosenSheet();
  const std::string name = machineIn(*m_machine);
  m_lead->setShown(false);
  if (row == nullptr || name.empty()) return say({});
  const auto sheet = read(*row);
  if (!sheet) return say(worded(sheet.error()));
  const auto machine = ifFound(m_workspace.shop().machines().find(name));
  if (!machine) return say(worded(machine.error()));
  const Applicability fit = applicability(**sheet, *machine ? (*machine)->model : std::string(),
                                          *machine ? (*machine)->serial : std::string());
  const bool isUnfit = fit.verdict == Applies::Unfit;
  m_lead->setShown(isUnfit);
  QStringList doubts;
  for (const Message& doubt : fit.doubts) doubts << worded(doubt);
  if (isUnfit) doubts << tr("Only a shop lead can allow it, with a reason that goes on the record.");
  say(doubts.join(QLatin1Char(' ')));
}

void StartPanel::refresh() {
  setShown(m_parent, follows(static_cast<Reason>(m_reason->currentIndex())));
  const auto apprentice = isApprentice(m_workspace, *m_person);
  if (!apprentice) say(worded(apprentice.error()));
  const bool supervised = apprentice.value_or(true);
  setShown(m_supervisor, supervised);
  setShown(m_supervisorPin, supervised);
}

void StartPanel::start() {
  const SheetRow* sheet = chosenSheet();
  if (sheet == nullptr) return;
  Beginning beginning;
  beginning.sheetDigest = sheet->digest;
  beginning.by = fromQt(m_person->currentData().toString());
  beginning.pin = fromQt(m_pin->text());
  const auto apprentice = isApprentice(m_workspace, *m_person);
  if (!apprentice) return say(worded(apprentice.error()));
  if (*apprentice) beginning.supervisor = fromQt(m_supervisor->currentData().toString());
  if (!beginning.supervisor.empty()) beginning.others[beginning.supervisor] = fromQt(m_supervisorPin->text());
  beginning.start.workOrder = fromQt(m_workOrder->text().trimmed());
  beginning.start.machine = machineIn(*m_machine);
  beginning.start.hours = fromQt(m_hours->text().trimmed());
  beginning.start.reason = static_cast<Reason>(m_reason->currentIndex());
  if (follows(*beginning.start.reason)) beginning.start.parent = fromQt(m_parent->currentData().toString());
  m_lead->addTo(beginning, beginning.start.fitAllowedBy, beginning.start.fitReason);
  const auto job = m_workspace.startJob(beginning);
  if (!job) return say(worded(job.error()));
  emit started(*job, {beginning.by, beginning.supervisor});
}

}  // namespace cw
