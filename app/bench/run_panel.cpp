#include "app/bench/run_panel.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/bench/hand_panel.h"
#include "app/bench/notices.h"
#include "app/bench/step_list.h"
#include "app/bench/ways_out.h"
#include "app/common/measures.h"
#include "app/common/style.h"
#include "app/common/wording.h"
#include "core/report/describe.h"

namespace cw {
namespace {

QFrame* line(QFrame::Shape shape) {
  auto* frame = new QFrame;
  frame->setFrameShape(shape);
  frame->setFrameShadow(QFrame::Plain);
  frame->setForegroundRole(QPalette::Mid);
  return frame;
}

/// A column that scrolls when the window is small, without a frame of its own.
QScrollArea* scrolling(QWidget* content) {
  auto* area = new QScrollArea;
  area->setWidget(content);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

}  // namespace

RunPanel::RunPanel(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(makeHead());
  column->addWidget(line(QFrame::HLine));
  column->addWidget(makeBody(), 1);
  column->addWidget(line(QFrame::HLine));
  column->addWidget(makeFoot());
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("Bench"));
}

QWidget* RunPanel::makeHead() {
  auto* head = new QWidget;
  auto* across = new QHBoxLayout(head);
  across->setContentsMargins(24, 8, 24, 8);
  m_head = new QLabel;
  m_head->setObjectName(QStringLiteral("jobHead"));
  m_head->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_head->setMinimumWidth(0);
  m_person = new QLabel;
  m_person->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_pause = makeWayOut(tr("Pause"), QStringLiteral("pauseButton"));
  across->addWidget(m_head, 1);
  across->addWidget(m_person);
  across->addSpacing(16);
  across->addWidget(m_pause);
  connect(m_pause, &QPushButton::clicked, this, &RunPanel::pause);
  return head;
}

QWidget* RunPanel::makeBody() {
  auto* body = new QWidget;
  auto* across = new QHBoxLayout(body);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(0);
  m_steps = new StepList;
  m_steps->setObjectName(QStringLiteral("stepList"));
  m_steps->setContentsMargins(16, 8, 8, 8);
  across->addWidget(m_steps, 24);
  across->addWidget(line(QFrame::VLine));

  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(24, 16, 24, 16);
  column->setSpacing(8);
  m_notices = new Notices;
  m_title = new QLabel;
  m_title->setObjectName(QStringLiteral("stepTitle"));
  m_title->setFont(fontOfHeight(bench::kTextHeight * 1.1, this, QFont::Bold));
  m_subtitle = new QLabel;
  m_subtitle->setObjectName(QStringLiteral("stepSubtitle"));
  m_subtitle->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_subtitle->setForegroundRole(QPalette::PlaceholderText);
  for (QLabel* label : {m_title, m_subtitle}) label->setWordWrap(true), label->setTextFormat(Qt::PlainText);
  auto* pages = new QWidget;
  m_pages = new QVBoxLayout(pages);
  m_pages->setContentsMargins(0, 0, 0, 0);
  for (QWidget* part : std::initializer_list<QWidget*>{m_notices, m_title, m_subtitle})
    column->addWidget(part);
  column->addWidget(pages, 1);
  across->addWidget(scrolling(middle), 50);
  across->addWidget(line(QFrame::VLine));

  m_hand = new HandPanel;
  m_hand->setContentsMargins(24, 16, 16, 16);
  across->addWidget(scrolling(m_hand), 26);
  return body;
}

QPushButton* RunPanel::makeWayOut(const QString& text, const QString& objectName) {
  auto* button = new QPushButton(text);
  button->setObjectName(objectName);
  button->setFont(fontOfHeight(bench::kLabelHeight, this));
  const int target = static_cast<int>(pixels(bench::kTarget, this));
  button->setMinimumSize(target, target);
  button->installEventFilter(this);
  return button;
}

QWidget* RunPanel::makeFoot() {
  auto* foot = new QWidget;
  auto* down = new QVBoxLayout(foot);
  down->setContentsMargins(24, 8, 24, 16);
  m_said = new QLabel;
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_said->setForegroundRole(QPalette::BrightText);
  m_said->setWordWrap(true);
  m_said->hide();
  down->addWidget(m_said);
  auto* across = new QHBoxLayout;
  across->setSpacing(static_cast<int>(pixels(bench::kGap, this)));
  auto* aside = makeWayOut(tr("Set aside"), QStringLiteral("asideButton"));
  auto* trouble = makeWayOut(tr("Trouble"), QStringLiteral("troubleButton"));
  m_main = new QPushButton;
  m_main->setObjectName(QStringLiteral("mainButton"));
  m_main->setProperty(kMainProperty, true);
  m_main->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_main->setMinimumSize(static_cast<int>(pixels(bench::kMainTargetWidth, this)),
                         static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  m_main->installEventFilter(this);
  across->addWidget(aside);
  across->addWidget(trouble);
  across->addStretch(1);
  across->addWidget(m_main, 4);
  down->addLayout(across);
  connect(aside, &QPushButton::clicked, this, [this] { openWaysOut(QStringLiteral("aside")); });
  connect(trouble, &QPushButton::clicked, this, [this] { openWaysOut(QStringLiteral("correction")); });
  connect(m_main, &QPushButton::clicked, this, &RunPanel::act);
  return foot;
}

void RunPanel::open(Workspace& workspace, const Id& job, const QString& sign) {
  for (auto& [stage, panel] : m_panels) delete panel;
  m_panels.clear();
  m_panel = nullptr;
  m_shown = nullptr;
  delete m_ways;
  m_session = std::make_unique<BenchSession>(workspace, job, sign);
  m_ways = new WaysOut(*m_session);
  m_pages->addWidget(m_ways);
  connect(m_ways, &WaysOut::left, this, &RunPanel::present);
  connect(m_ways, &WaysOut::changed, this, &RunPanel::refreshMain);
  connect(m_session.get(), &BenchSession::changed, this, &RunPanel::present);
  connect(m_session.get(), &BenchSession::refused, this, &RunPanel::say);
  present();
}

void RunPanel::present() {
  say({});
  const Job* job = m_session->job();
  if (job == nullptr) return;
  presentHead(*job);
  if (job->finished) return emit jobFinished(job->id);
  presentStage({*job, next(*job), m_session->floor()});
  setFocus();
}

void RunPanel::presentHead(const Job& job) {
  m_head->setText(QStringLiteral("<b>%1</b> &nbsp; %2 &nbsp; %3 %4")
                      .arg(toQt(job.start.workOrder).toHtmlEscaped(), toQt(job.start.machine).toHtmlEscaped(),
                           toQt(job.sheet.title).toHtmlEscaped(),
                           job.start.quick ? tr("(no issued sheet)")
                                           : tr("rev %1").arg(toQt(job.sheet.revision).toHtmlEscaped())));
  m_person->setText(toQt(nameOf(fromQt(m_session->sign()), m_session->floor().people)));
  m_pause->setEnabled(!job.paused && !job.finished);
}

void RunPanel::presentStage(const BenchView& view) {
  m_stage = view.next.stage;
  StagePanel*& panel = m_panels[m_stage];
  if (panel == nullptr) {
    panel = makeStagePanel(m_stage, *m_session);
    if (panel == nullptr) return;
    m_pages->addWidget(panel);
    connect(panel, &StagePanel::changed, this, &RunPanel::refreshMain);
    if (QLineEdit* field = panel->digitField()) field->installEventFilter(this);
  }
  m_panel = panel;
  const bool inStep = m_stage != Stage::Resume && m_stage != Stage::Finish;
  if (inStep)
    m_notices->present(view.step());
  else
    m_notices->clear();
  m_title->setText(titleOf(view));
  m_subtitle->setText(subtitleOf(view));
  m_subtitle->setVisible(!m_subtitle->text().isEmpty());
  m_steps->present(view.job, view.next);
  if (inStep)
    m_hand->present(view);
  else
    m_hand->clear();
  panel->present(view);
  bringUp(panel);
  m_ways->present(view);
  refreshMain();
}

QString RunPanel::titleOf(const BenchView& view) const {
  if (m_stage == Stage::Resume) return tr("The job is paused");
  if (m_stage == Stage::Finish) return tr("Everything is closed");
  return toQt(view.step().text);
}

QString RunPanel::subtitleOf(const BenchView& view) const {
  const Next& next = view.next;
  const bool tightens =
      m_stage != Stage::Resume && m_stage != Stage::Finish && view.step().kind == StepKind::Tighten;
  if (!tightens || m_stage == Stage::ReadWarnings) return {};
  if (m_stage == Stage::CheckPass)
    return tr("Check pass, round %1 of at most %2").arg(next.round).arg(checkRoundsOf(view.job, view.step()));
  if (next.pass == 0) return toQt(view.joint()->name);
  const int passes = passesOf(view.job, view.step());
  QString text = tr("Pass %1 of %2").arg(next.pass).arg(passes);
  if (m_stage == Stage::TightenPosition)
    text += tr("; %1 of %2 done")
                .arg(view.job.steps[next.step].tightening.tightened.size())
                .arg(view.joint()->order.size());
  return text;
}

void RunPanel::bringUp(QWidget* page) {
  // Not a stacked widget: that one stays as tall as its tallest page at this width.
  for (int i = 0; i < m_pages->count(); ++i) m_pages->itemAt(i)->widget()->setVisible(false);
  page->setVisible(true);
  m_shown = page;
}

void RunPanel::refreshMain() {
  if (m_panel == nullptr) return;
  if (m_shown == m_ways) {
    m_main->setText(m_ways->action());
    return m_main->setEnabled(true);
  }
  const QString then = m_panel->afterwards();
  m_main->setText(then.isEmpty() ? m_panel->mainAction()
                                 : QStringLiteral("%1    %2").arg(m_panel->mainAction(), then));
  m_main->setAccessibleName(m_main->text());
  m_main->setEnabled(m_panel->isReady());
}

void RunPanel::act() {
  if (m_shown == m_ways) return m_ways->stateIt();
  if (m_panel != nullptr && m_panel->isReady()) m_panel->act();
}

void RunPanel::openWaysOut(const QString& way) {
  say({});
  m_ways->choose(way);
  bringUp(m_ways);
  m_ways->choose(way);
  refreshMain();
}

void RunPanel::pause() {
  if (m_session->state(Paused{fromQt(tr("called away")), false, "", ""})) emit jobLeft();
}

void RunPanel::say(const QString& sentence) {
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

bool RunPanel::takeKey(QKeyEvent* event) {
  const bool confirm = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  const bool space = event->key() == Qt::Key_Space;
  if (m_panel == nullptr || m_shown != m_panel) return false;
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
  if (watched == m_main || (qobject_cast<QLineEdit*>(watched) != nullptr && confirms)) return takeKey(key);
  if (qobject_cast<QPushButton*>(watched) != nullptr && key->isAutoRepeat()) return true;
  return QWidget::eventFilter(watched, event);
}

}  // namespace cw
