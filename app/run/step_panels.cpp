#include "app/run/step_panels.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/print/ask_pdf.h"
#include "app/print/document_pdf.h"
#include "app/run/course.h"
#include "app/run/leads_word.h"
#include "app/run/touch.h"
#include "core/record/lapsed.h"
#include "core/report/describe.h"
#include "core/report/headline.h"
#include "core/report/paper_sheet.h"
#include "core/units/parse.h"

namespace cw {
namespace {

const Part* partOf(const BenchView& view) {
  return view.job.sheet.part(view.step().part);
}

QCheckBox* bigCheck(const QString& text, const QString& objectName) {
  QCheckBox* box = touchCheck(text, objectName);
  fitForTouch(*box, bench::kTextHeight);
  return box;
}

}  // namespace

void WarningsPanel::present(const BenchView&) {}
void WarningsPanel::act() {
  course().state(WarningsRead{});
}

ActPanel::ActPanel(Course& course) : StagePanel(course) {
  m_part = addText(QStringLiteral("partText"));
  m_renewed = bigCheck(tr("A new one is fitted"), QStringLiteral("renewedCheck"));
  column()->addWidget(m_renewed);
  m_batch = addField(tr("Batch, from the pack"), QStringLiteral("batchField"));
  column()->addStretch(1);
  connect(m_renewed, &QCheckBox::toggled, this, &StagePanel::changed);
}

void ActPanel::present(const BenchView& view) {
  const Part* part = partOf(view);
  m_renews = part != nullptr && part->singleUse;
  m_wantsBatch = part != nullptr && part->batchWanted;
  m_part->setVisible(m_renews);
  m_renewed->setVisible(m_renews);
  m_renewed->setChecked(false);
  if (m_renews) {
    m_part->setText(toQt(part->name));
    m_renewed->setAccessibleName(tr("%1: a new one is fitted").arg(toQt(part->name)));
  }
  m_batch->clear();
  setShown(m_batch, m_wantsBatch);
}

QString ActPanel::mainAction() const {
  return m_renews ? tr("Done, new part fitted") : tr("Done");
}

bool ActPanel::isReady() const {
  return (!m_renews || m_renewed->isChecked()) && (!m_wantsBatch || isFilled(m_batch));
}

void ActPanel::act() {
  ActDone done;
  done.renewed = m_renews;
  done.batch = fromQt(m_batch->text().trimmed());
  course().state(done);
}

CheckPanel::CheckPanel(Course& course) : StagePanel(course) {
  m_remark = addField(tr("Remark, if any"), QStringLiteral("remarkField"));
  m_no = addButton(tr("No, it is not"), QStringLiteral("noButton"));
  column()->addStretch(1);
  connect(m_no, &QPushButton::clicked, this, [this] { answer(Answer::No); });
}

void CheckPanel::present(const BenchView&) {
  m_remark->clear();
}

void CheckPanel::answer(Answer answer) {
  CheckMade made;
  made.answer = answer;
  made.remark = fromQt(m_remark->text().trimmed());
  course().state(made);
}

MeasurePanel::MeasurePanel(Course& course) : StagePanel(course) {
  m_limits = addText(QStringLiteral("limitsText"));
  m_value = addField(tr("Reading"), QStringLiteral("readingField"));
  column()->addStretch(1);
}

void MeasurePanel::present(const BenchView& view) {
  const Step& step = view.step();
  m_unit = toQt(step.unit);
  m_value->clear();
  m_value->setPlaceholderText(m_unit);
  const QString low = toQt(step.low), high = toQt(step.high);
  if (low.isEmpty() && high.isEmpty())
    m_limits->setText(tr("Read it in %1.").arg(m_unit));
  else if (low.isEmpty())
    m_limits->setText(tr("At most %1 %2.").arg(high, m_unit));
  else if (high.isEmpty())
    m_limits->setText(tr("At least %1 %2.").arg(low, m_unit));
  else
    m_limits->setText(tr("From %1 to %2 %3.").arg(low, high, m_unit));
}

QString MeasurePanel::mainAction() const {
  return isFilled(m_value) ? tr("Reading %1 %2").arg(m_value->text().trimmed(), m_unit)
                           : tr("Type the reading");
}

bool MeasurePanel::isReady() const {
  return isFilled(m_value);
}

void MeasurePanel::act() {
  Measured measured;
  // A reading that is no number is refused by the rules in their own words, so it goes there as typed.
  const auto number = parseNumber(fromQt(m_value->text()), Settings().decimalMark(), true);
  measured.value = number ? *number : fromQt(m_value->text());
  measured.unit = fromQt(m_unit);
  course().state(measured);
}

ApplyPanel::ApplyPanel(Course& course) : StagePanel(course) {
  m_batch = addField(tr("Batch, from the pack"), QStringLiteral("batchField"));
  m_expiry = addField(tr("Good until (year-month-day), if printed"), QStringLiteral("expiryField"));
  column()->addStretch(1);
}

void ApplyPanel::present(const BenchView& view) {
  const Part* part = partOf(view);
  m_wantsBatch = part != nullptr && part->batchWanted;
  m_batch->clear();
  m_expiry->clear();
  setShown(m_batch, m_wantsBatch);
  setShown(m_expiry, m_wantsBatch);
}

bool ApplyPanel::isReady() const {
  return !m_wantsBatch || isFilled(m_batch);
}

void ApplyPanel::act() {
  Applied applied;
  applied.batch = fromQt(m_batch->text().trimmed());
  applied.expiry = fromQt(m_expiry->text().trimmed());
  course().state(applied);
}

ResumePanel::ResumePanel(Course& course) : StagePanel(course) {
  m_story = addText(QStringLiteral("pausedText"));
  m_lapsed = addText(QStringLiteral("lapsedText"));
  m_lapsed->setForegroundRole(QPalette::BrightText);
  m_pin = addPin(tr("PIN"), QStringLiteral("pinField"));
  m_supervisorPin = addPin(tr("PIN of the supervisor"), QStringLiteral("supervisorPinField"));
  addGap();
  m_repeat = bigCheck(tr("Repeat this pass"), QStringLiteral("repeatCheck"));
  column()->addWidget(m_repeat);
  m_tag = addButton(tr("Print the do-not-run tag…"), QStringLiteral("tagButton"));
  connect(m_tag, &QPushButton::clicked, this, &ResumePanel::printTag);
  column()->addStretch(1);
}

void ResumePanel::present(const BenchView& view) {
  const auto paused = std::find_if(view.job.entries.rbegin(), view.job.entries.rend(), [](const Kept& kept) {
    return std::holds_alternative<Paused>(kept.entry.body);
  });
  m_pin->clear();
  m_supervisorPin->clear();
  setShown(m_supervisorPin, !course().worker().supervisor.empty());
  m_repeat->setChecked(false);
  // A parked joint starts again in any case, and only a parked machine wears a tag.
  m_repeat->setVisible(!view.job.parked);
  m_tag->setVisible(view.job.parked);
  if (paused == view.job.entries.rend()) return;
  const auto before = std::next(paused);
  const Message last = before == view.job.entries.rend()
                           ? Message()
                           : describe(before->entry, view.job, view.floor.people).front();
  const QString who = toQt(nameOf(paused->entry.enteredBy, view.floor.people));
  const QString when = toQt(timeText(paused->entry.time));
  const QString why = toQt(std::get<Paused>(paused->entry.body).reason);
  const QString stopped = why.isEmpty() ? tr("Paused by %1 at %2.").arg(who, when)
                                        : tr("Paused by %1 at %2: %3.").arg(who, when, why);
  m_story->setText(tr("%1\nLast done: %2\n%3, give your PIN to go on.")
                       .arg(stopped, worded(last), toQt(nameOf(view.worker, view.floor.people))));
  m_lapsed->setText(lapsedSince(view).join(QLatin1Char('\n')));
  m_lapsed->setVisible(!m_lapsed->text().isEmpty());
}

QStringList ResumePanel::lapsedSince(const BenchView& view) const {
  QStringList out;
  for (const Message& each : lapsedBy(view.job, view.floor, course().now())) out << worded(each);
  if (!view.job.start.quick && course().isOverruled(view.job.sheet))
    out << tr("Revision %1 of the sheet is no longer issued; ask the trainer before going on.")
               .arg(toQt(view.job.sheet.revision));
  return out;
}

void ResumePanel::printTag() {
  const Job* job = course().job();
  if (job == nullptr) return;
  const auto target = askPdf(this, tr("Tag for the machine"), toQt(job->start.machine));
  if (!target) return;
  const auto tag =
      doNotRunTag(*job, course().floor().people, [](const Message& m) { return fromQt(worded(m)); });
  if (!tag) return emit course().refused(worded(tag.error()));
  if (const auto written = writeDocumentPdf(*tag, target->path, target->size, Existing::Replaced); !written)
    return emit course().refused(worded(written.error()));
  emit course().told(tr("The tag is in %1.").arg(toQt(target->path)));
}

bool ResumePanel::isReady() const {
  return isFilled(m_pin) && (course().worker().supervisor.empty() || isFilled(m_supervisorPin));
}

void ResumePanel::act() {
  Resumed resumed;
  resumed.repeatPass = m_repeat->isChecked();
  course().resume(m_pin->text(), m_supervisorPin->text(), resumed);
}

FinishPanel::FinishPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("finishText"));
  m_unconfirmed = addText(QStringLiteral("unconfirmedWords"));
  m_remark = addField(tr("Remark for the record, if any"), QStringLiteral("remarkField"));
  m_word = addLeadsWord(tr("Allowed by (sign of a shop lead)"), tr("The lead's reason"));
  column()->addStretch(1);
}

void FinishPanel::present(const BenchView& view) {
  m_remark->clear();
  m_word->present(Given::HereOrByPhone);
  QStringList missing;
  for (const Shortfall& each : shortfallsOf(view.job)) missing << worded(shortfallText(view.job, each));
  m_short = !missing.empty();
  m_word->setVisible(m_short);
  m_text->setText(
      m_short ? tr("Not done: %1. Only a shop lead can let the job end so; it stands first on the record.")
                    .arg(missing.join(QStringLiteral("; ")))
              : tr("All %1 steps are closed. Finishing ends the job; its record is sealed and never opened "
                   "again.")
                    .arg(view.job.steps.size()));
  QStringList waiting;
  for (const std::string& sign : unconfirmedPeople(view.job))
    waiting << toQt(nameOf(sign, view.floor.people));
  m_unconfirmed->setVisible(!waiting.empty());
  m_unconfirmed->setText(
      tr("Said by phone and not confirmed yet by: %1. After the end it stays so; they confirm "
         "it under “Trouble”.")
          .arg(waiting.join(QStringLiteral(", "))));
}

QString FinishPanel::mainAction() const {
  return m_short ? tr("Finish the job as it is") : tr("Finish the job");
}

void FinishPanel::act() {
  Finished finished;
  finished.remark = fromQt(m_remark->text().trimmed());
  if (m_short) {
    finished.allowedBy = fromQt(m_word->sign());
    finished.reason = m_word->reason();
    course().stateAllowed(m_word->given(), finished);
  } else {
    course().state(finished);
  }
}

}  // namespace cw
