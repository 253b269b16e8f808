#include "app/figures/outcome_view.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/drawing/band_view.h"
#include "app/figures/figure.h"
#include "app/figures/working_view.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "app/look/style.h"

namespace cw {
namespace {

constexpr int kAnswerGap = 8, kApart = 32, kBigSteps = 5, kSmallSteps = 3;

QString wordedAll(const std::vector<Message>& sentences) {
  QStringList out;
  for (const Message& each : sentences) out << worded(each);
  return out.join(QLatin1Char(' '));
}

/// The engine's cautions are clauses.
QString asSentence(const QString& text) {
  const bool ends = text.endsWith(QLatin1Char('.')) || text.endsWith(QLatin1Char('?'));
  return text.left(1).toUpper() + text.mid(1) + (ends ? QString() : QStringLiteral("."));
}

QString joinedTexts(const std::vector<std::string>& texts) {
  QStringList out;
  for (const std::string& each : texts) out << toQt(each);
  return out.join(QStringLiteral("   "));
}

}  // namespace

OutcomeView::OutcomeView(FigureDesk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_place(new QWidget), m_working(new WorkingView) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(2 * kAnswerGap);
  auto* inside = new QVBoxLayout(m_place);
  inside->setContentsMargins(0, 0, 0, 0);
  down->addWidget(m_place);
  down->addWidget(m_working);
  down->addStretch(1);
  m_working->hide();
}

void OutcomeView::clear() {
  delete m_answers;
  m_answers = new QWidget;
  auto* down = new QVBoxLayout(m_answers);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kAnswerGap);
  m_place->layout()->addWidget(m_answers);
}

void OutcomeView::present(const Outcome& outcome) {
  clear();
  int number = 0;
  for (const FigureAnswer& answer : outcome.answers) show(answer, ++number);
  m_working->setVisible(!outcome.working.formula.empty());
  if (!outcome.working.formula.empty()) m_working->present(outcome.working);
  orderTabs({m_place, m_working});
}

void OutcomeView::askFor(const QStringList& inputs) {
  clear();
  m_working->hide();
  const QString wanted = tr("Still wanted: %1.").arg(inputs.join(QStringLiteral(", ")));
  add(textLabel(wanted, deskFont(1), QPalette::PlaceholderText), "outcomeSaid");
}

void OutcomeView::refuse(const QString& sentence) {
  clear();
  m_working->hide();
  add(textLabel(sentence, deskFont(1), QPalette::BrightText), "outcomeSaid");
}

void OutcomeView::show(const FigureAnswer& answer, int number) {
  const bool first = number == 1;
  if (!first) static_cast<QVBoxLayout*>(m_answers->layout())->addSpacing(kApart);
  add(textLabel(worded(answer.lead), deskFont(0, QFont::Bold)), "lead");
  showNumber(answer, first);
  for (const Message& caution : answer.cautions)
    add(cautionLabel(asSentence(worded(caution)), deskFont()), "caution");
  if (answer.carried) offerToCarry(*answer.carried, number);
  if (answer.band) {
    auto* band = new BandView;
    band->present(*answer.band);
    add(band, "band");
  }
  if (!answer.sentences.empty()) add(textLabel(wordedAll(answer.sentences), deskFont()), "sentences");
}

void OutcomeView::showNumber(const FigureAnswer& answer, bool first) {
  const QString number = answer.word.empty() ? toQt(answer.number) : worded(answer.word);
  add(textLabel(number, deskFont(first ? kBigSteps : kSmallSteps, QFont::Bold)), "number");
  if (!answer.inWords.empty()) add(textLabel(toQt(answer.inWords), deskFont(1)), "inWords");
  if (!answer.derived.empty())
    add(textLabel(tr("= %1").arg(joinedTexts(answer.derived)), deskFont(1)), "derived");
  if (!answer.further.empty())
    add(textLabel(joinedTexts(answer.further), deskFont(), QPalette::PlaceholderText), "further");
}

/// On to the wrench, with the torque and its condition filled in.
void OutcomeView::offerToCarry(const CarriedTorque& carried, int number) {
  const QString torque = toQt(text(carried.torque));
  const bool deviates = !carried.insteadOf.empty();
  auto* button = new QPushButton(deviates ? tr("As a deviation: set a wrench for %1").arg(torque)
                                          : tr("Set a wrench for %1").arg(torque));
  const QKeySequence key(Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + number));
  button->setShortcut(key);
  button->setToolTip(
      tr("Opens the wrench's setting with it filled in (%1)").arg(key.toString(QKeySequence::NativeText)));
  button->setProperty(kMainProperty, number == 1);
  std::map<QString, QString> inputs{{QStringLiteral("aim"), torque},
                                    {QStringLiteral("aimCondition"), toQt(carried.condition)},
                                    {QStringLiteral("insteadOf"), toQt(carried.insteadOf)},
                                    {QStringLiteral("insteadOfAim"), deviates ? torque : QString()}};
  // A tolerance in torques belongs to the torque as specified.
  if (deviates && !m_desk.valueOf(QStringLiteral("tolerance")).contains(QLatin1Char('%')))
    inputs[QStringLiteral("tolerance")] = QString();
  connect(
      button, &QPushButton::clicked, &m_desk,
      [&desk = m_desk, inputs] { desk.carry(QStringLiteral("setting"), inputs); }, Qt::QueuedConnection);
  add(button, "carryButton");
  button->setObjectName(QStringLiteral("carryButton%1").arg(number));
  m_answers->layout()->setAlignment(button, Qt::AlignLeft);
}

void OutcomeView::add(QWidget* widget, const char* name) {
  widget->setObjectName(QLatin1String(name));
  m_answers->layout()->addWidget(widget);
}

}  // namespace cw
