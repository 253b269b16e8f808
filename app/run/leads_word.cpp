#include "app/run/leads_word.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/wording.h"
#include "app/look/labels.h"
#include "app/run/touch.h"

namespace cw {

LeadsWord::LeadsWord(const Labels& labels, double textHeight, QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(8);
  m_lead = addField(*column, labels.lead, QStringLiteral("leadField"), textHeight);
  m_byPhone = touchCheck(tr("Said so by phone"), QStringLiteral("byPhoneCheck"));
  column->addSpacing(std::max(0, touchGap(*this) - column->spacing()));
  column->addWidget(m_byPhone);
  column->addSpacing(std::max(0, touchGap(*this) - column->spacing()));
  m_unconfirmed = textLabel({}, fontOfHeight(bench::kLabelHeight, this), QPalette::PlaceholderText);
  m_unconfirmed->setObjectName(QStringLiteral("unconfirmedText"));
  column->addWidget(m_unconfirmed);
  m_pin = addField(*column, tr("PIN of the lead"), QStringLiteral("leadPinField"), textHeight);
  m_pin->setEchoMode(QLineEdit::Password);
  m_pinLabel = qobject_cast<QLabel*>(column->itemAt(column->count() - 2)->widget());
  if (!labels.reason.isEmpty())
    m_reason = addField(*column, labels.reason, QStringLiteral("reasonField"), textHeight);
  connect(m_byPhone, &QCheckBox::toggled, this, &LeadsWord::showWay);
  connect(m_lead, &QLineEdit::textChanged, this, &LeadsWord::showWay);
}

QLineEdit* LeadsWord::addField(QVBoxLayout& column, const QString& label, const QString& objectName,
                               double textHeight) {
  auto* field = new QLineEdit;
  field->setObjectName(objectName);
  fitForTouch(*field, textHeight);
  column.addWidget(labelFor(*field, label));
  column.addWidget(field);
  connect(field, &QLineEdit::textChanged, this, &LeadsWord::changed);
  return field;
}

void LeadsWord::present(Given given) {
  for (QLineEdit* field : {m_lead, m_pin, m_reason})
    if (field != nullptr) field->clear();
  m_byPhone->setChecked(false);
  m_byPhone->setVisible(given == Given::HereOrByPhone);
  showWay();
}

void LeadsWord::showWay() {
  const bool byPhone = m_byPhone->isChecked();
  m_pin->setVisible(!byPhone);
  m_pinLabel->setVisible(!byPhone);
  m_unconfirmed->setVisible(byPhone);
  m_unconfirmed->setText(tr("Until %1 confirms it at this bench it prints as not confirmed.")
                             .arg(sign().isEmpty() ? tr("the lead") : sign()));
  emit changed();
}

QString LeadsWord::sign() const {
  return m_lead->text().trimmed();
}

std::string LeadsWord::reason() const {
  return m_reason == nullptr ? std::string() : fromQt(m_reason->text().trimmed());
}

GivenWord LeadsWord::given() const {
  return {sign(), m_pin->text(), m_byPhone->isChecked()};
}

QWidget& LeadsWord::lastField() const {
  return m_reason == nullptr ? *m_pin : *m_reason;
}

}  // namespace cw
