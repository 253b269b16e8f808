#include "app/figures/outcome_view.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/common/labels.h"
#include "app/common/measures.h"
#include "app/common/wording.h"
#include "app/figures/working_view.h"

namespace cw {
namespace {

constexpr int kAnswerGap = 8;

QString wordedAll(const std::vector<Message>& sentences) {
  QStringList out;
  for (const Message& each : sentences) out << worded(each);
  return out.join(QLatin1Char(' '));
}

QString joined(const std::vector<std::string>& texts) {
  QStringList out;
  for (const std::string& each : texts) out << QLatin1String("= ") + toQt(each);
  return out.join(QStringLiteral("     "));
}

}  // namespace

OutcomeView::OutcomeView(FigureDesk& desk, QWidget* parent)
    : QWidget(parent), m_desk(desk), m_answers(new QVBoxLayout), m_working(new WorkingView) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kAnswerGap);
  down->addLayout(m_answers);
  down->addWidget(m_working);
  down->addStretch(1);
}

void OutcomeView::clear() {
  delete m_body;
  m_body = new QWidget;
  auto* down = new QVBoxLayout(m_body);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kAnswerGap);
  m_answers->addWidget(m_body);
}

void OutcomeView::present(const Outcome& outcome) {
  clear();
  for (const FigureAnswer& answer : outcome.answers) show(answer, &answer == &outcome.answers.front());
  for (const Message& caution : outcome.working.cautions)
    add(cautionLabel(worded(caution), deskFont()), "caution");
  m_working->present(outcome.working);
}

void OutcomeView::askFor(const QStringList& inputs) {
  clear();
  m_working->hide();
  say(tr("Still wanted: %1.").arg(inputs.join(QStringLiteral(", "))), QPalette::PlaceholderText);
}

void OutcomeView::refuse(const QString& sentence) {
  clear();
  m_working->hide();
  say(sentence, QPalette::BrightText);
}

void OutcomeView::say(const QString& sentence, QPalette::ColorRole ink) {
  add(textLabel(sentence, deskFont(1), ink), "outcomeSaid");
}

void OutcomeView::show(const FigureAnswer& answer, bool first) {
  add(textLabel(worded(answer.lead), deskFont(first ? 1 : 0, QFont::Bold)), "lead");
  add(textLabel(toQt(answer.number), deskFont(first ? 6 : 4, QFont::Bold)), "number");
  if (!answer.derived.empty()) add(textLabel(joined(answer.derived), deskFont(1)), "derived");
  if (!answer.sentences.empty()) add(textLabel(wordedAll(answer.sentences), deskFont()), "sentences");
  for (const Message& caution : answer.cautions) add(cautionLabel(worded(caution), deskFont()), "caution");
}

void OutcomeView::add(QWidget* widget, const char* name) {
  widget->setObjectName(QLatin1String(name));
  m_body->layout()->addWidget(widget);
}

}  // namespace cw
