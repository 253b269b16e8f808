#include "app/bench/lead_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>

#include "app/bench/bench_form.h"
#include "app/bench/shop_choices.h"
#include "app/common/wording.h"
#include "app/run/touch.h"

namespace cw {

LeadFields::LeadFields(BenchForm& form, const QString& label) : QObject(&form), m_form(form) {
  m_lead = form.addChoice(label, "leadChoice");
  m_reason = form.addField(tr("The lead's reason"), "reasonField");
  m_byPhone = touchCheck(tr("Said so by phone"), {});
  form.add(tr("How the lead says so; by phone it prints as not confirmed"), m_byPhone, "byPhoneCheck");
  m_byPhone->setAccessibleName(m_byPhone->text());
  m_pin = form.addPin("leadPinField", tr("PIN of the lead"));
  connect(m_byPhone, &QCheckBox::toggled, this, &LeadFields::showPin);
}

void LeadFields::clear() {
  m_pin->clear();
  m_reason->clear();
  m_byPhone->setChecked(false);
}

Result<void> LeadFields::fill(Shop& shop) {
  return fillLeads(*m_lead, shop);
}

void LeadFields::setShown(bool shown) {
  m_shown = shown;
  for (QWidget* field : std::initializer_list<QWidget*>{m_lead, m_byPhone, m_reason})
    m_form.setShown(field, shown);
  showPin();
}

void LeadFields::showPin() {
  m_form.setShown(m_pin, m_shown && !m_byPhone->isChecked());
}

void LeadFields::addTo(Beginning& beginning, PersonSign& allowedBy, std::string& reason) const {
  if (!m_shown) return;
  allowedBy = fromQt(m_lead->currentData().toString());
  reason = fromQt(m_reason->text().trimmed());
  if (allowedBy.empty()) return;
  beginning.byPhone = m_byPhone->isChecked();
  const bool isAuthor = allowedBy == beginning.by && m_pin->text().isEmpty();
  if (!beginning.byPhone && !isAuthor) beginning.others[allowedBy] = fromQt(m_pin->text());
}

}  // namespace cw
