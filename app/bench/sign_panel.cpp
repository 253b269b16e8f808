#include "app/bench/sign_panel.h"

#include <QComboBox>
#include <QLineEdit>

#include "app/bench/shop_choices.h"
#include "app/common/wording.h"

namespace cw {

SignPanel::SignPanel(Workspace& workspace, QWidget* parent)
    : BenchForm({tr("Go on with a job"), tr("Go on"), "goOnButton"}, parent), m_workspace(workspace) {
  m_person = addChoice(tr("Who goes on with it?"), "personChoice");
  m_supervisor = addChoice(tr("Supervised by"), "supervisorChoice");
  m_pin = addPin("pinField");
  m_supervisorPin = addPin("supervisorPinField", tr("PIN of the supervisor"));
  connect(this, &BenchForm::acted, this, &SignPanel::goOn);
  connect(m_person, &QComboBox::currentIndexChanged, this, &SignPanel::refresh);
}

void SignPanel::present(const Id& jobId) {
  m_job = jobId;
  for (QLineEdit* field : {m_pin, m_supervisorPin}) field->clear();
  say({});
  m_person->clear();
  const auto job = m_workspace.shop().ledger().refresh(jobId);
  if (!job) return say(worded(job.error()));
  m_paused = (*job)->paused;
  setTitle(QStringLiteral("%1, %2, %3")
               .arg(toQt((*job)->start.workOrder), toQt((*job)->start.machine), toQt((*job)->sheet.title)));
  const Entry& last = *(*job)->last();
  for (const auto& filled :
       {fillWorkers(*m_person, m_workspace.shop()), fillWorkers(*m_supervisor, m_workspace.shop(), true)})
    if (!filled) return say(worded(filled.error()));
  m_person->setCurrentIndex(std::max(0, m_person->findData(toQt(last.enteredBy))));
  m_supervisor->setCurrentIndex(std::max(0, m_supervisor->findData(toQt(last.supervisor))));
  // A paused job asks for the PIN where it shows what was done last.
  setShown(m_pin, !m_paused);
  refresh();
  (m_paused ? static_cast<QWidget*>(action()) : m_pin)->setFocus();
}

void SignPanel::refresh() {
  const auto apprentice = isApprentice(m_workspace, *m_person);
  if (!apprentice) say(worded(apprentice.error()));
  const bool supervised = apprentice.value_or(true);
  setShown(m_supervisor, supervised);
  setShown(m_supervisorPin, supervised && !m_paused);
}

Result<Worker> SignPanel::worker() const {
  Worker out{fromQt(m_person->currentData().toString())};
  CW_TRY(apprentice, isApprentice(m_workspace, *m_person));
  if (apprentice) out.supervisor = fromQt(m_supervisor->currentData().toString());
  return out;
}

Result<Receipt> SignPanel::signIn(const Worker& who) {
  Draft draft;
  draft.enteredBy = who.sign;
  draft.supervisor = who.supervisor;
  draft.body = SignedIn{};
  Pins pins{{who.sign, fromQt(m_pin->text())}};
  if (!who.supervisor.empty()) pins[who.supervisor] = fromQt(m_supervisorPin->text());
  return m_workspace.enter(m_job, std::move(draft), pins);
}

void SignPanel::goOn() {
  const auto who = worker();
  if (!who) return say(worded(who.error()));
  if (!m_paused)
    if (const auto receipt = signIn(*who); !receipt) {
      m_pin->clear();
      return say(worded(receipt.error()));
    }
  emit signedIn(m_job, *who);
}

}  // namespace cw
