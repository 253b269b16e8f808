#include "app/run/run_frame.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/look/measures.h"
#include "app/run/bench_column.h"
#include "app/run/bench_foot.h"
#include "app/run/hand_panel.h"
#include "app/run/notices.h"
#include "app/run/step_list.h"
#include "app/run/touch.h"

namespace cw {
namespace {

constexpr double kRoomForAll = 275;  ///< mm; narrower, an empty hand would take its room from what is done

QFrame* dividingLine(QFrame::Shape shape) {
  auto* frame = new QFrame;
  frame->setFrameShape(shape);
  frame->setFrameShadow(QFrame::Plain);
  frame->setForegroundRole(QPalette::Mid);
  return frame;
}

}  // namespace

RunFrame::RunFrame(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(makeHead());
  column->addWidget(dividingLine(QFrame::HLine));
  column->addWidget(makeBody(), 1);
  column->addWidget(dividingLine(QFrame::HLine));
  makeFoot();
  column->addWidget(m_foot);
}

QWidget* RunFrame::makeHead() {
  auto* head = new QWidget;
  auto* across = new QHBoxLayout(head);
  // Whatever scrolls up below it keeps its distance from the button.
  across->setContentsMargins(24, 8, 24, touchGap(*this));
  m_head = new QLabel;
  m_head->setObjectName(QStringLiteral("jobHead"));
  m_head->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_head->setMinimumWidth(0);
  m_person = new QLabel;
  m_person->setFont(fontOfHeight(bench::kLabelHeight, this));
  m_pause = touchButton(tr("Pause"), QStringLiteral("pauseButton"));
  across->addWidget(m_head, 1);
  across->addWidget(m_person);
  across->addSpacing(16);
  across->addWidget(m_pause);
  connect(m_pause, &QPushButton::clicked, this, &RunFrame::pauseWanted);
  return head;
}

QWidget* RunFrame::makeBody() {
  auto* body = new QWidget;
  auto* across = new QHBoxLayout(body);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(0);
  m_steps = new StepList;
  m_steps->setObjectName(QStringLiteral("stepList"));
  m_steps->setContentsMargins(16, 8, 8, 8);
  across->addWidget(m_steps, 24);
  across->addWidget(dividingLine(QFrame::VLine));

  m_middle = new BenchColumn(makeMiddle());
  across->addWidget(m_middle, 50);

  m_hand = new HandPanel;
  m_hand->setContentsMargins(24, 16, 16, 16);
  m_right = new QWidget;
  auto* right = new QHBoxLayout(m_right);
  right->setContentsMargins(0, 0, 0, 0);
  right->setSpacing(0);
  right->addWidget(dividingLine(QFrame::VLine));
  right->addWidget(new BenchColumn(m_hand), 1);
  across->addWidget(m_right, 26);
  return body;
}

QWidget* RunFrame::makeMiddle() {
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
  return middle;
}

void RunFrame::makeFoot() {
  m_foot = new BenchFoot({{tr("Leave for later"), QStringLiteral("asideButton")},
                          {tr("Trouble"), QStringLiteral("troubleButton")},
                          {tr("Wrench"), QStringLiteral("wrenchButton")}},
                         {QString(), QStringLiteral("mainButton")});
  m_wrench = m_foot->way(2);
  m_wrench->setToolTip(tr("Take another wrench, or set this one anew"));
  connect(m_foot->way(0), &QPushButton::clicked, this,
          [this] { emit wayOutWanted(QStringLiteral("aside")); });
  connect(m_foot->way(1), &QPushButton::clicked, this,
          [this] { emit wayOutWanted(QStringLiteral("deviation")); });
  connect(m_wrench, &QPushButton::clicked, this, &RunFrame::wrenchWanted);
  connect(main(), &QPushButton::clicked, this, &RunFrame::mainPressed);
}

QPushButton* RunFrame::main() const {
  return m_foot->main();
}

void RunFrame::setHead(const QString& job, const QString& person, bool mayPause) {
  m_head->setText(job);
  m_person->setText(person);
  m_pause->setEnabled(mayPause);
}

void RunFrame::setWrenchChangeable(bool may) {
  m_wrench->setEnabled(may);
}

void RunFrame::setTitle(const QString& title, const QString& subtitle) {
  m_title->setText(title);
  m_subtitle->setText(subtitle);
  m_subtitle->setVisible(!subtitle.isEmpty());
}

void RunFrame::fitHand() {
  const bool hasRoom = width() >= pixels(kRoomForAll, this);
  m_right->setVisible(hasRoom || !m_hand->isEmpty());
}

void RunFrame::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitHand();
}

void RunFrame::say(const QString& sentence) {
  m_foot->say(sentence);
}

void RunFrame::addPage(QWidget* page) {
  m_pages->addWidget(page);
}

void RunFrame::bringUp(QWidget* page, InLowWindow first) {
  // Not a stacked widget: that one stays as tall as its tallest page at this width.
  for (int i = 0; i < m_pages->count(); ++i) m_pages->itemAt(i)->widget()->setVisible(false);
  page->setVisible(true);
  m_shown = page;
  fitHand();
  m_middle->keepInView(first == InLowWindow::Page ? page : nullptr);
  orderTabs({page, m_foot});  // pages are made after the foot
}

}  // namespace cw
