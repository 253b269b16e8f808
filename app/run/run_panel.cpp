#include "app/run/run_panel.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/common/wording.h"
#include "app/run/hand_panel.h"
#include "app/run/notices.h"
#include "app/run/step_list.h"
#include "app/run/ways_out.h"
#include "core/report/describe.h"

namespace cw {
namespace {

/// Of the wrench that is set for this step. A second person is not told what the first has taken.
const TorqueUnit* unitInHand(const BenchView& view) {
  if (view.next.stage == Stage::WitnessBeforeFinal || view.next.stage == Stage::Hold) return nullptr;
  const ToolSet* set = view.inHand();
  return set ? set->setting.unit : nullptr;
}

}  // namespace

RunPanel::RunPanel(QWidget* parent) : RunFrame(parent) {
  setObjectName(QStringLiteral("runPanel"));
  setFocusPolicy(Qt::ClickFocus);  // Tab goes to the main button, which takes the same keys
  setAccessibleName(tr("Bench"));
  for (QPushButton* button : findChildren<QPushButton*>()) button->installEventFilter(this);
  connect(this, &RunFrame::pauseWanted, this, &RunPanel::pause);
  connect(this, &RunFrame::wayOutWanted, this, &RunPanel::openWaysOut);
  connect(this, &RunFrame::wrenchWanted, this, &RunPanel::changeWrench);
  connect(this, &RunFrame::mainPressed, this, &RunPanel::act);
}

void RunPanel::open(std::unique_ptr<Course> course) {
  // Whoever only gave their PIN anew finds what they had typed.
  const bool isSame = m_course != nullptr && m_course->id() == course->id() &&
                      m_course->worker().sign == course->worker().sign;
  if (isSame && m_panel != nullptr && isUpToDate()) return say({}), giveKeyboard();
  for (auto& [stage, panel] : m_panels) delete panel;
  m_panels.clear();
  m_panel = nullptr;
  forgetPages();
  delete m_ways;
  m_course = std::move(course);
  m_ways = new WaysOut(*m_course);
  addPage(m_ways);
  connect(m_ways, &WaysOut::left, this, &RunPanel::present);
  connect(m_ways, &WaysOut::changed, this, &RunPanel::refreshMain);
  connect(m_course.get(), &Course::changed, this, &RunPanel::present);
  connect(m_course.get(), &Course::refused, this, &RunPanel::sayRefusal);
  connect(m_course.get(), &Course::told, this, &RunPanel::say);
  present();
}

/// A sign-in is an entry too, but changes nothing of what is to be done.
bool RunPanel::isUpToDate() {
  const Job* job = m_course->job();
  return job != nullptr && !job->ended() && next(*job) == m_next;
}

void RunPanel::present() {
  say({});
  const Job* job = m_course->job();
  if (job == nullptr) return;
  presentHead(*job);
  if (job->finished) return emit jobFinished(job->id);
  if (job->calledOff) return emit jobCalledOff(job->id);
  presentStage(viewOf(*job));
  sayWhatStaysOpen(*job);
  giveKeyboard();
}

BenchView RunPanel::viewOf(const Job& job) const {
  return {job, next(job), m_course->floor(), m_course->worker().sign};
}

/// What was refused may have had an entry of the program's own before it, which is shown: a wrench was
/// stopped.
void RunPanel::sayRefusal(const QString& sentence) {
  if (shownPage() != m_ways && m_stage != Stage::Nothing && !isUpToDate()) present();
  say(sentence);
}

/// To the first thing that the stage still wants, or, where it wants nothing, to the keys of the main action.
/// Never to a button: a stray Enter would press it.
void RunPanel::giveKeyboard() {
  const auto takesInput = [this](const QWidget* widget) {
    return widget->isVisibleTo(m_panel) && widget->isEnabled() &&
           (widget->focusPolicy() & Qt::TabFocus) != 0 && qobject_cast<const QPushButton*>(widget) == nullptr;
  };
  if (m_panel != nullptr && !m_panel->isReady())
    for (QWidget* input : m_panel->findChildren<QWidget*>())
      if (takesInput(input)) return input->setFocus();
  setFocus();
}

void RunPanel::presentHead(const Job& job) {
  const QString sheet =
      job.start.quick ? tr("(no issued sheet)") : tr("rev %1").arg(toQt(job.sheet.revision).toHtmlEscaped());
  setHead(QStringLiteral("<b>%1</b> &nbsp; %2 &nbsp; %3 %4")
              .arg(toQt(job.start.workOrder).toHtmlEscaped(), toQt(job.start.machine).toHtmlEscaped(),
                   toQt(job.sheet.title).toHtmlEscaped(), sheet),
          toQt(nameOf(m_course->worker().sign, m_course->floor().people)), !job.paused && !job.ended());
}

/// An answer that leaves its step where it was would else look like a key that did nothing.
void RunPanel::sayWhatStaysOpen(const Job& job) {
  if (!leftOpen(job)) return;
  QStringList told;
  for (const Message& sentence : describe(*job.last(), job, m_course->floor().people))
    told << worded(sentence);
  say(tr("%1 It is still to be done.").arg(told.join(QLatin1Char(' '))));
}

StagePanel* RunPanel::panelFor(Stage stage) {
  StagePanel*& panel = m_panels[stage];
  if (panel != nullptr) return panel;
  panel = makeStagePanel(stage, *m_course);
  if (panel == nullptr) return nullptr;
  addPage(panel);
  connect(panel, &StagePanel::changed, this, &RunPanel::refreshMain);
  if (QLineEdit* field = panel->digitField()) field->installEventFilter(this);
  return panel;
}

void RunPanel::presentStage(const BenchView& view) {
  m_next = view.next;
  m_stage = view.next.stage;
  StagePanel* panel = panelFor(m_stage);
  if (panel == nullptr) return;
  m_panel = panel;
  const bool inStep = m_stage != Stage::Resume && m_stage != Stage::Finish;
  inStep ? notices()->present(view.step(), unitInHand(view)) : notices()->clear();
  setTitle(titleOf(view), subtitleOf(view));
  setWrenchChangeable(inStep && m_stage != Stage::CheckPass && m_stage != Stage::ReadGaps &&
                      view.inHand() != nullptr);
  steps()->present(view.job, view.next);
  inStep ? hand()->present(view) : hand()->clear();
  panel->present(view);
  // The cautions of a tighten step have been read by then; the drawing is what is looked at.
  const bool inPasses = inStep && view.step().kind == StepKind::Tighten && m_stage != Stage::ReadWarnings;
  bringUp(panel, inPasses ? InLowWindow::Page : InLowWindow::Words);
  refreshMain();
}

QString RunPanel::titleOf(const BenchView& view) const {
  if (m_stage == Stage::Resume) return tr("The job is paused");
  if (m_stage == Stage::Finish) return tr("Everything is closed");
  return withUnitInHand(view.step().text, unitInHand(view));
}

QString RunPanel::subtitleOf(const BenchView& view) const {
  const Next& next = view.next;
  const bool tightens =
      m_stage != Stage::Resume && m_stage != Stage::Finish && view.step().kind == StepKind::Tighten;
  if (!tightens || m_stage == Stage::ReadWarnings) return {};
  if (m_stage == Stage::CheckPass)
    return tr("Check pass, round %1 of at most %2").arg(next.round).arg(checkRoundsOf(view.job, view.step()));
  if (next.pass == 0) return {};
  const int passes = passesOf(view.job, view.step());
  QString text = tr("Pass %1 of %2").arg(next.pass).arg(passes);
  if (m_stage == Stage::ReadGaps) text += tr("; the gap all round");
  if (m_stage == Stage::TightenPosition)
    text += tr("; %1 of %2 done")
                .arg(view.job.steps[next.step].tightening.tightened.size())
                .arg(view.joint()->order.size());
  return text;
}

void RunPanel::refreshMain() {
  if (m_panel == nullptr) return;
  if (shownPage() == m_ways) {
    main()->setText(m_ways->action());
    return main()->setEnabled(true);
  }
  const QString then = m_panel->afterwards();
  main()->setText(then.isEmpty() ? m_panel->mainAction()
                                 : QStringLiteral("%1    %2").arg(m_panel->mainAction(), then));
  main()->setAccessibleName(main()->text());
  main()->setEnabled(m_panel->isReady());
}

void RunPanel::act() {
  if (m_course == nullptr || m_panel == nullptr) return;
  // After a while without an entry the PIN is asked for again, where else it would only be refused.
  if (m_stage != Stage::Resume && !m_course->isSignedIn()) return emit signInWanted(m_course->id());
  if (shownPage() == m_ways) return m_ways->stateIt();
  if (m_panel->isReady()) m_panel->act();
}

void RunPanel::openWaysOut(const QString& way) {
  const Job* job = m_course->job();
  if (job == nullptr) return;
  say({});
  m_ways->present(viewOf(*job));
  notices()->clear();  // nothing is done meanwhile, and there is the more room to say why
  bringUp(m_ways, InLowWindow::Words);
  m_ways->choose(way);
  refreshMain();
}

/// In the middle of a pass another wrench is taken, or this one set anew; once more, and the pass goes on.
void RunPanel::changeWrench() {
  const Job* job = m_course->job();
  if (job == nullptr) return;
  if (m_panel == panelFor(Stage::SetTool) && m_stage != Stage::SetTool) return present();
  say({});
  m_panel = panelFor(Stage::SetTool);
  const BenchView view = viewOf(*job);
  notices()->present(view.step(), unitInHand(view));
  m_panel->present(view);
  bringUp(m_panel, InLowWindow::Page);
  refreshMain();
  giveKeyboard();
}

void RunPanel::pause() {
  if (!m_course->isSignedIn()) return emit signInWanted(m_course->id());
  if (m_course->state(Paused{})) emit jobLeft();
}

bool RunPanel::takeKey(QKeyEvent* event) {
  const bool confirm = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  const bool space = event->key() == Qt::Key_Space;
  if (m_panel == nullptr) return false;
  if (shownPage() == m_ways) {
    if (confirm && !event->isAutoRepeat()) act();
    return confirm;
  }
  if (confirm || space) {
    // A held key or pedal counts once; Space stops where something must be looked at first.
    if (!event->isAutoRepeat() && (confirm || m_panel->takesSpace())) act();
    return true;
  }
  QLineEdit* field = m_panel->digitField();
  const QString typed = event->text();
  const bool digit = !typed.isEmpty() &&
                     (typed[0].isDigit() || typed[0] == QLatin1Char('.') || typed[0] == QLatin1Char(','));
  if (field == nullptr || !digit) return false;
  field->insert(typed);
  field->setFocus();
  return true;
}

void RunPanel::keyPressEvent(QKeyEvent* event) {
  if (!takeKey(event)) QWidget::keyPressEvent(event);
}

bool RunPanel::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  auto* key = static_cast<QKeyEvent*>(event);
  const bool confirms = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
  // In a field Enter is the main action; on the main button Space and Enter are held-key safe.
  if (watched == main() || (qobject_cast<QLineEdit*>(watched) != nullptr && confirms)) return takeKey(key);
  if (qobject_cast<QPushButton*>(watched) != nullptr && key->isAutoRepeat()) return true;
  return QWidget::eventFilter(watched, event);
}

}  // namespace cw
