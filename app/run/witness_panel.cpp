#include "app/run/witness_panel.h"

#include <QButtonGroup>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/run/course.h"
#include "app/run/touch.h"
#include "core/units/parse.h"

namespace cw {
namespace {

QPushButton* mannerButton(const QString& text, const QString& objectName) {
  QPushButton* button = touchButton(text, objectName);
  button->setCheckable(true);
  return button;
}

}  // namespace

WitnessPanel::WitnessPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("witnessText"));
  auto* manners = new QVBoxLayout;  // side by side they would not fit into the smallest window
  manners->setSpacing(touchGap(*this));
  m_manner = new QButtonGroup(this);
  for (const auto& [text, name] :
       {std::pair(tr("I watched it done"), QStringLiteral("watchedButton")),
        std::pair(tr("I looked by myself"), QStringLiteral("independentButton"))}) {
    QPushButton* button = mannerButton(text, name);
    m_manner->addButton(button, static_cast<int>(m_manner->buttons().size()));
    manners->addWidget(button);
  }
  column()->addLayout(manners);
  m_sign = addField(tr("Sign of the second person"), QStringLiteral("signField"));
  m_pin = addPin(tr("PIN"), QStringLiteral("pinField"));
  m_tool = addField(tr("Wrench, as marked on it"), QStringLiteral("toolField"));
  m_setting = addField(tr("Setting, as it stands on the wrench"), QStringLiteral("settingField"));
  column()->addStretch(1);
}

void WitnessPanel::present(const BenchView& view) {
  const HoldDemand& demand = *view.step().hold;
  const auto& set = view.job.steps[view.next.step].tightening.set;
  m_what = demand.what;
  m_alone = view.job.start.alone;
  const bool looksAtSetting = set && std::find(m_what.begin(), m_what.end(), "setting") != m_what.end();
  m_unit = looksAtSetting ? set->setting.unit : nullptr;
  QStringList what;
  for (const std::string& item : m_what) what << toQt(item);
  m_text->setText(
      m_alone
          ? tr("Self-check after a break, not independent. Look at: %1.").arg(what.join(QStringLiteral(", ")))
          : tr("A second person looks at: %1.").arg(what.join(QStringLiteral(", "))));
  m_manner->button(demand.witness == Witness::Independent ? 1 : 0)->setChecked(true);
  for (QAbstractButton* button : m_manner->buttons()) button->setVisible(!m_alone);
  for (QLineEdit* field : {m_sign, m_pin, m_tool, m_setting}) field->clear();
  if (m_alone) m_sign->setText(toQt(course().worker().sign));
  for (QLineEdit* field : {m_tool, m_setting}) setShown(field, looksAtSetting);
  if (m_unit != nullptr) m_setting->setPlaceholderText(toQt(m_unit->words));
}

Manner WitnessPanel::manner() const {
  if (m_alone) return Manner::Self;
  return m_manner->checkedId() == 1 ? Manner::Independent : Manner::Watched;
}

QString WitnessPanel::mainAction() const {
  return m_unit == nullptr ? tr("Looked at, and so") : tr("This is what I see");
}

bool WitnessPanel::isReady() const {
  const auto filled = [](const QLineEdit* field) { return !field->text().trimmed().isEmpty(); };
  return filled(m_sign) && filled(m_pin) && (m_unit == nullptr || (filled(m_tool) && filled(m_setting)));
}

void WitnessPanel::act() {
  Witnessed seen;
  seen.manner = manner();
  seen.what = m_what;
  if (m_unit != nullptr) {
    const auto number = parseNumber(fromQt(m_setting->text()), Settings().decimalMark());
    if (!number) return emit course().refused(worded(number.error()));
    seen.tool = fromQt(m_tool->text().trimmed());
    seen.setting = StatedTorque{*number, m_unit};
  }
  course().stateAs(m_sign->text().trimmed(), m_pin->text(), seen);
}

}  // namespace cw
