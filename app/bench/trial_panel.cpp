#include "app/bench/trial_panel.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>

#include "app/bench/shop_choices.h"
#include "app/common/wording.h"
#include "app/documents/document_view.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/report/record_document.h"

namespace cw {
namespace {

constexpr double kDocumentHeight = 90;  ///< mm; the rest of it scrolls

}  // namespace

TrialPanel::TrialPanel(Workspace& workspace, QWidget* parent)
    : BenchForm({tr("A job of a trial version"), tr("Call the job off"), "callOffButton"}, parent),
      m_workspace(workspace) {
  QLabel* why =
      textLabel(tr("This job was begun by a trial version, whose rules are not judged any more. It can be "
                   "read, and called off; work on it goes on in a new job."),
                fontOfHeight(bench::kTextHeight, this));
  why->setObjectName(QStringLiteral("trialText"));
  addWide(why);
  m_document = new DocumentView;
  m_document->setObjectName(QStringLiteral("trialDocument"));
  m_document->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_document->setMinimumHeight(static_cast<int>(pixels(kDocumentHeight, this)));
  addWide(m_document);
  m_reason = addField(tr("Why it is called off"), "reasonField", Width::Whole);
  m_person = addChoice(tr("Who calls it off"), "personChoice");
  m_pin = addPin("pinField");
  connect(this, &BenchForm::acted, this, &TrialPanel::callOff);
}

void TrialPanel::present(const Id& jobId) {
  m_job = jobId;
  m_reason->clear();
  m_pin->clear();
  say({});
  const auto job = m_workspace.shop().ledger().refresh(jobId);
  const auto floor = m_workspace.shop().ledger().floor();
  if (!job || !floor) return say(worded(job ? floor.error() : job.error()));
  setTitle(QStringLiteral("%1, %2, %3")
               .arg(toQt((*job)->start.workOrder), toQt((*job)->start.machine), toQt((*job)->sheet.title)));
  m_document->present(
      recordDocument(contentOf(**job, *floor, m_workspace.shop().identity().name, inWindow), inWindow));
  m_document->setAccessibleName(tr("What the job holds"));
  if (const auto filled = fillWorkers(*m_person, m_workspace.shop(), true); !filled)
    say(worded(filled.error()));
}

void TrialPanel::callOff() {
  Draft draft;
  draft.enteredBy = fromQt(m_person->currentData().toString());
  draft.body = CalledOff{fromQt(m_reason->text().trimmed())};
  const auto entered = m_workspace.enter(m_job, draft, {{draft.enteredBy, fromQt(m_pin->text())}});
  m_pin->clear();
  if (!entered) return say(worded(entered.error()));
  emit calledOff(m_job);
}

}  // namespace cw
