#include "app/bench/sign_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/measures.h"
#include "app/common/style.h"
#include "app/common/wording.h"

namespace cw {

SignPanel::SignPanel(Workspace& workspace, QWidget* parent) : QWidget(parent), m_workspace(workspace) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 24, 24, 16);
  column->setSpacing(8);
  const auto label = [&](double height, QFont::Weight weight) {
    auto* text = new QLabel;
    text->setFont(fontOfHeight(height, this, weight));
    text->setWordWrap(true);
    column->addWidget(text);
    return text;
  };
  m_title = label(bench::kTextHeight * 1.2, QFont::Bold);
  label(bench::kLabelHeight, QFont::Normal)->setText(tr("Who goes on with it?"));
  m_person = new QComboBox;
  m_person->setObjectName(QStringLiteral("personChoice"));
  m_person->setAccessibleName(tr("Who goes on with it?"));
  m_pinName = new QLabel(tr("PIN"));
  m_pin = new QLineEdit;
  m_pin->setObjectName(QStringLiteral("pinField"));
  m_pin->setAccessibleName(tr("PIN"));
  m_pin->setEchoMode(QLineEdit::Password);
  m_pinName->setBuddy(m_pin);
  for (QWidget* widget : std::initializer_list<QWidget*>{m_person, m_pinName, m_pin}) {
    widget->setFont(fontOfHeight(bench::kTextHeight, this));
    if (widget != m_pinName) widget->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
    widget->setMaximumWidth(static_cast<int>(pixels(180, this)));
    column->addWidget(widget);
  }
  column->addStretch(1);
  m_said = label(bench::kTextHeight, QFont::Bold);
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setForegroundRole(QPalette::BrightText);
  auto* foot = new QHBoxLayout;
  auto* back = new QPushButton(tr("Back"));
  auto* on = new QPushButton(tr("Go on"));
  back->setObjectName(QStringLiteral("backButton"));
  on->setObjectName(QStringLiteral("goOnButton"));
  on->setProperty(kMainProperty, true);
  back->setFont(fontOfHeight(bench::kLabelHeight, this));
  back->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  on->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  on->setMinimumSize(static_cast<int>(pixels(bench::kMainTargetWidth, this)),
                     static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  foot->addWidget(back);
  foot->addStretch(1);
  foot->addWidget(on);
  column->addLayout(foot);
  connect(back, &QPushButton::clicked, this, &SignPanel::left);
  connect(on, &QPushButton::clicked, this, &SignPanel::goOn);
  connect(m_pin, &QLineEdit::returnPressed, this, &SignPanel::goOn);
}

void SignPanel::present(const Id& jobId) {
  m_job = jobId;
  m_pin->clear();
  m_said->clear();
  m_person->clear();
  const auto job = m_workspace.shop().ledger().refresh(jobId);
  if (!job) return m_said->setText(worded(job.error()));
  m_paused = (*job)->paused;
  m_title->setText(
      QStringLiteral("%1, %2, %3")
          .arg(toQt((*job)->start.workOrder), toQt((*job)->start.machine), toQt((*job)->sheet.title)));
  const std::string lastSign = (*job)->last()->enteredBy;
  if (const auto people = m_workspace.shop().people().all())
    for (const Person& person : *people)
      if (person.active && (person.may(Role::Technician) || person.may(Role::ShopLead)))
        m_person->addItem(toQt(person.name), toQt(person.sign));
  m_person->setCurrentIndex(std::max(0, m_person->findData(toQt(lastSign))));
  // A paused job asks for the PIN where it shows what was done last.
  m_pinName->setVisible(!m_paused);
  m_pin->setVisible(!m_paused);
  (m_paused ? static_cast<QWidget*>(m_person) : m_pin)->setFocus();
}

void SignPanel::goOn() {
  const QString sign = m_person->currentData().toString();
  if (!m_paused)
    if (const auto receipt = m_workspace.signIn(m_job, sign, m_pin->text()); !receipt) {
      m_pin->clear();
      return m_said->setText(worded(receipt.error()));
    }
  emit signedIn(m_job, sign);
}

}  // namespace cw
