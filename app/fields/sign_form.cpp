#include "app/fields/sign_form.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include "app/common/wording.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "app/look/style.h"

namespace cw {
namespace {

constexpr int kFieldWidth = 420, kTextHeight = 88;

}  // namespace

SignForm::SignForm(Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      m_workspace(workspace),
      m_states(textLabel({}, deskFont(0, QFont::Bold))),
      m_textLabel(textLabel({}, deskFont(), QPalette::PlaceholderText)),
      m_said(textLabel({}, deskFont(0, QFont::Bold), QPalette::BrightText)),
      m_text(new QPlainTextEdit),
      m_person(new QComboBox),
      m_pin(new QLineEdit),
      m_do(new QPushButton) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 8, 0, 16);
  down->setSpacing(8);
  down->addWidget(m_states);
  m_text->setTabChangesFocus(true);
  m_text->setFixedHeight(kTextHeight);
  m_pin->setEchoMode(QLineEdit::Password);
  addField(m_textLabel, m_text, "remarkField");
  addField(textLabel(tr("Who says so"), deskFont(), QPalette::PlaceholderText), m_person, "signerChoice");
  addField(textLabel(tr("PIN"), deskFont(), QPalette::PlaceholderText), m_pin, "signerPin");
  m_said->setObjectName(QStringLiteral("signSaid"));
  down->addWidget(m_said);
  auto* foot = new QHBoxLayout;
  auto* leave = new QPushButton(tr("Leave it"));
  leave->setObjectName(QStringLiteral("leaveButton"));
  m_do->setObjectName(QStringLiteral("signButton"));
  m_do->setProperty(kMainProperty, true);
  foot->addWidget(m_do);
  foot->addWidget(leave);
  foot->addStretch(1);
  down->addLayout(foot);
  connect(m_do, &QPushButton::clicked, this, &SignForm::tryIt);
  connect(m_pin, &QLineEdit::returnPressed, this, &SignForm::tryIt);
  connect(leave, &QPushButton::clicked, this, [this] { close(), emit left(); });
  auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), this);
  escape->setContext(Qt::WidgetWithChildrenShortcut);
  connect(escape, &QShortcut::activated, leave, &QPushButton::click);
  close();
}

void SignForm::addField(QLabel* label, QWidget* field, const char* name) {
  label->setBuddy(field);
  field->setObjectName(QLatin1String(name));
  field->setAccessibleName(label->text());
  field->setMaximumWidth(kFieldWidth);
  layout()->addWidget(label);
  layout()->addWidget(field);
}

void SignForm::ask(const SignQuestion& question, Attempt attempt) {
  m_attempt = std::move(attempt);
  m_states->setText(question.states);
  m_do->setText(question.button);
  m_textLabel->setText(question.textLabel);
  m_text->setAccessibleName(question.textLabel);
  m_textLabel->setVisible(!question.textLabel.isEmpty());
  m_text->setVisible(!question.textLabel.isEmpty());
  m_text->clear();
  m_pin->clear();
  const auto filled = fillPeople();
  m_said->setText(filled ? QString() : worded(filled.error()));
  m_said->setVisible(!filled);
  show();
  (question.textLabel.isEmpty() ? static_cast<QWidget*>(m_person) : m_text)->setFocus(Qt::TabFocusReason);
}

void SignForm::close() {
  hide();
  m_pin->clear();
  m_attempt = nullptr;
}

Result<void> SignForm::fillPeople() {
  const QString last = m_person->currentData().toString();
  m_person->clear();
  CW_TRY(people, m_workspace.shop().people().all());
  for (const Person& person : people)
    if (person.active) m_person->addItem(toQt(person.name), toQt(person.sign));
  m_person->setCurrentIndex(qMax(0, m_person->findData(last)));
  return {};
}

void SignForm::tryIt() {
  if (!m_attempt) return;
  // The attempt may make the page close this form before it returns.
  const Attempt attempt = m_attempt;
  const auto tried =
      attempt({m_person->currentData().toString(), m_pin->text(), m_text->toPlainText().trimmed()});
  if (tried) {
    close();
    return emit done();
  }
  m_pin->clear();
  m_said->setText(worded(tried.error()));
  m_said->show();
}

}  // namespace cw
