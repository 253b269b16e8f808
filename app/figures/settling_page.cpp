#include "app/figures/settling_page.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

#include "app/common/wording.h"
#include "app/common/workspace.h"
#include "app/figures/figure.h"
#include "app/figures/step_player.h"
#include "app/figures/trials_panel.h"
#include "app/figures/way_panel.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/report/settling_document.h"
#include "core/settling/settling_file.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr int kSettlingMargin = 24, kSettlingGap = 12;

}  // namespace

SettlingPage::SettlingPage(FigureDesk& desk, QWidget* parent)
    : QScrollArea(parent),
      m_desk(desk),
      m_choice(new QComboBox),
      m_left(new WayPanel(QStringLiteral("left"), tr("One way"), {OrderRule::Star, {0.3, 0.7, 1}, 0})),
      m_right(new WayPanel(QStringLiteral("right"), tr("Another"), {OrderRule::Circular, {0.3, 0.7, 1}, 0})),
      m_player(new StepPlayer),
      m_trials(new TrialsPanel),
      m_said(textLabel({}, deskFont())) {
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  auto* inside = new QWidget;
  auto* down = new QVBoxLayout(inside);
  down->setContentsMargins(kSettlingMargin, kSettlingMargin, kSettlingMargin, kSettlingMargin);
  down->setSpacing(kSettlingGap);
  down->addWidget(textLabel(tr("Orders compared"), deskFont(2, QFont::Bold)));
  const std::vector<Message> limits = settlingLimits();
  down->addWidget(cautionLabel(worded(limits.front()), deskFont()));
  down->addWidget(makeJointRow());
  m_said->setObjectName(QStringLiteral("settlingSaid"));
  down->addWidget(m_said);
  m_across = new QHBoxLayout;
  m_across->setSpacing(kSettlingMargin);
  m_across->addWidget(m_left, 1);
  m_across->addWidget(m_right, 1);
  down->addLayout(m_across, 1);
  down->addWidget(m_player);
  down->addWidget(m_trials);
  for (std::size_t i = 1; i < limits.size(); ++i)
    down->addWidget(textLabel(worded(limits[i]), deskFont(), QPalette::PlaceholderText));
  setWidget(inside);
  for (WayPanel* way : {m_left, m_right}) connect(way, &WayPanel::edited, this, &SettlingPage::compute);
  connect(m_player, &StepPlayer::stepChanged, this, [this](std::size_t step) {
    m_left->showAfter(step);
    m_right->showAfter(step);
  });
  connect(&desk.workspace(), &Workspace::sheetsChanged, this, &SettlingPage::fillChoices);
  fillChoices();
  choose(0);
}

/// The sheets' joints stand between the examples and what was opened from a file.
void SettlingPage::fillChoices() {
  const QString chosen = m_choice->currentText();
  m_joints.clear();
  for (SettlingExample& example : settlingExamples())
    m_joints.push_back({worded(example.name), tr("Illustrative values."), std::move(example), {}});
  for (SheetJoint& joint : sheetJoints(m_desk.workspace())) m_joints.push_back(std::move(joint));
  m_joints.insert(m_joints.end(), m_opened.begin(), m_opened.end());
  m_choice->clear();
  for (const SheetJoint& joint : m_joints) m_choice->addItem(joint.name);
  m_choice->setCurrentIndex(qMax(0, m_choice->findText(chosen)));
}

void SettlingPage::choose(int row) {
  const SheetJoint& chosen = m_joints[static_cast<std::size_t>(row)];
  if (!chosen.joint) return say(wordedWithPlace(chosen.joint.error()), true);
  m_left->setWay(chosen.way);
  setJoint(*chosen.joint);
}

QWidget* SettlingPage::makeJointRow() {
  auto* row = new QWidget;
  auto* below = new QVBoxLayout(row);
  below->setContentsMargins(0, 0, 0, 0);
  m_choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_choice->setObjectName(QStringLiteral("jointChoice"));
  m_choice->setAccessibleName(tr("Joint"));
  auto* open = new QPushButton(tr("Open a settle file …"));
  open->setObjectName(QStringLiteral("openSettleButton"));
  below->addWidget(m_choice);
  below->addWidget(open, 0, Qt::AlignLeft);
  connect(m_choice, &QComboBox::activated, this, &SettlingPage::choose);
  connect(open, &QPushButton::clicked, this, &SettlingPage::chooseFile);
  return row;
}

void SettlingPage::chooseFile() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Open a settle file"), {}, tr("Joints (*.json)"));
  if (path.isEmpty()) return;
  if (const auto opened = openFile(path); !opened) say(wordedWithPlace(opened.error()), true);
}

Result<void> SettlingPage::openFile(const QString& path) {
  CW_TRY(bytes, readFile(fromQt(path)));
  CW_TRY(read, readSettlingFile(bytes));
  CW_CHECK(boltLayout(read.joint));
  const Force target = *std::max_element(read.tightening.targets.begin(), read.tightening.targets.end());
  const QString name = QFileInfo(path).fileName();
  m_opened.push_back(
      {name, QString(), SettlingExample{{"%1", {fromQt(name)}}, std::move(read.joint), target}, {}});
  fillChoices();
  m_choice->setCurrentIndex(m_choice->count() - 1);
  choose(m_choice->count() - 1);
  return {};
}

void SettlingPage::setJoint(SettlingExample joint) {
  m_joint = std::move(joint);
  m_model.reset();
  if (const auto bolts = boltLayout(m_joint.joint))
    for (WayPanel* way : {m_left, m_right}) way->fitRule(*bolts);
  compute();
}

/// The plate, once for a joint, then both ways; all off this thread.
void SettlingPage::compute() {
  m_trials->stop();
  const auto left = m_left->way(), right = m_right->way();
  if (!left || !right) return m_work.stop();
  say(tr("Computing …"));
  m_work.start([this, joint = m_joint, model = m_model, left = *left, right = *right](
                   const std::stop_token& stop, const BackgroundWork::Progress&) -> BackgroundWork::Answer {
    std::shared_ptr<const SettlingModel> made = model;
    if (!made) {
      auto fresh = settlingModel(joint.joint);
      if (!fresh) return [this, error = fresh.error()] { say(wordedWithPlace(error), true); };
      made = std::make_shared<const SettlingModel>(*std::move(fresh));
    }
    if (stop.stop_requested()) return [] {};
    auto one = settleBy(*made, joint.joint, left, joint.target);
    if (stop.stop_requested()) return [] {};
    auto other = settleBy(*made, joint.joint, right, joint.target);
    return [this, made, one = std::move(one), other = std::move(other)] {
      m_model = made;
      present(one, other);
    };
  });
}

void SettlingPage::present(const Result<SettlingOutcome>& left, const Result<SettlingOutcome>& right) {
  const auto layout = boltLayout(m_joint.joint);
  if (!layout) return say(wordedWithPlace(layout.error()), true);
  const QString made = m_joints[static_cast<std::size_t>(m_choice->currentIndex())].made;
  const QString shares = tr("Target %1 in every bolt. Bars and figures are shares of it.")
                             .arg(toQt(text(m_joint.target, kKilonewton)));
  say(made.isEmpty() ? shares : QStringLiteral("%1 %2").arg(made, shares));
  const auto show = [&](WayPanel* way, const Result<SettlingOutcome>& outcome) {
    if (outcome)
      way->present(*layout, *outcome);
    else
      way->refuse(worded(outcome.error()));
  };
  show(m_left, left);
  show(m_right, right);
  m_player->setSteps(std::max(m_left->steps(), m_right->steps()));
  if (left && right) m_trials->setTask({m_model, m_joint, {left->way, right->way}});
}

void SettlingPage::say(const QString& sentence, bool trouble) {
  m_said->setForegroundRole(trouble ? QPalette::BrightText : QPalette::PlaceholderText);
  m_said->setText(sentence);
}

void SettlingPage::resizeEvent(QResizeEvent* event) {
  QScrollArea::resizeEvent(event);
  const int needed = m_left->minimumSizeHint().width() + m_right->minimumSizeHint().width() +
                     m_across->spacing() + 2 * kSettlingMargin;
  const bool isNarrow = viewport()->width() < needed;
  m_across->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

QWidget* makeSettlingPage(FigureDesk& desk, QWidget* parent) {
  return new SettlingPage(desk, parent);
}

}  // namespace cw
