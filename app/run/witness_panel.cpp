#include "app/run/witness_panel.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/look/labels.h"
#include "app/run/course.h"
#include "app/run/touch.h"
#include "core/units/parse.h"

namespace cw {
namespace {

constexpr int kWatched = 0, kIndependent = 1;
constexpr int kSo = 0, kNotSo = 1;

/// The author's own words stand as they are.
QString nameOf(const std::string& item) {
  return item == "marks" ? WitnessPanel::tr("The marks") : toQt(item);
}

QPushButton* answerButton(QButtonGroup& group, int id, const QString& text, const QString& objectName) {
  QPushButton* button = touchButton(text, objectName);
  button->setCheckable(true);
  group.addButton(button, id);
  return button;
}

}  // namespace

WitnessPanel::WitnessPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("witnessText"));
  addManners();
  m_asked = new QVBoxLayout;
  m_asked->setSpacing(8);
  column()->addLayout(m_asked);
  m_tool = addField(tr("Wrench, as marked on it"), QStringLiteral("toolField"));
  m_setting =
      addField(tr("Setting as it stands on the wrench, with its unit"), QStringLiteral("settingField"));
  m_count = addField(tr("How many, as you count them"), QStringLiteral("countField"));
  m_sign = addField(tr("Initials of the second person"), QStringLiteral("signField"));
  m_pin = addPin(tr("PIN"), QStringLiteral("pinField"));
  column()->addStretch(1);
}

void WitnessPanel::addManners() {
  auto* manners = new QVBoxLayout;  // side by side they would not fit into the smallest window
  manners->setSpacing(touchGap(*this));
  m_manner = new QButtonGroup(this);
  manners->addWidget(
      answerButton(*m_manner, kWatched, tr("I watched it done"), QStringLiteral("watchedButton")));
  manners->addWidget(
      answerButton(*m_manner, kIndependent, tr("I looked by myself"), QStringLiteral("independentButton")));
  column()->addLayout(manners);
  connect(m_manner, &QButtonGroup::idToggled, this, &StagePanel::changed);
}

/// Two answers of one size; none is given beforehand.
void WitnessPanel::ask(const std::string& item) {
  const QString number = QString::number(m_questions.size() + 1);
  auto* row = new QWidget;
  auto* across = new QHBoxLayout(row);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(touchGap(*this));
  auto* answers = new QButtonGroup(row);
  for (const auto& [id, text, name] : {std::tuple(kSo, tr("So"), QStringLiteral("soButton")),
                                       std::tuple(kNotSo, tr("Not so"), QStringLiteral("notSoButton"))}) {
    QPushButton* button = answerButton(*answers, id, text, name + number);
    button->setAccessibleName(tr("%1: %2").arg(nameOf(item), text));
    across->addWidget(button, 1);
  }
  for (QWidget* part :
       {static_cast<QWidget*>(textLabel(nameOf(item), fontOfHeight(bench::kTextHeight, this))), row}) {
    m_asked->addWidget(part);
    part->show();  // a layout would do so only with the next events
  }
  connect(answers, &QButtonGroup::idToggled, this, &StagePanel::changed);
  m_questions.push_back({item, answers});
}

void WitnessPanel::present(const BenchView& view) {
  m_what = view.step().hold->what;
  m_alone = view.job.start.alone;
  m_text->setText(m_alone ? tr("Self-check after a break, not independent. Say what you see.")
                          : tr("A second person looks, and says what they see."));
  m_manner->setExclusive(false);
  for (QAbstractButton* button : m_manner->buttons()) {
    button->setChecked(false);
    button->setVisible(!m_alone);
  }
  m_manner->setExclusive(true);
  m_questions.clear();
  while (QLayoutItem* item = m_asked->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  const auto wants = [&](std::string_view item) {
    return std::find(m_what.begin(), m_what.end(), item) != m_what.end();
  };
  m_asksSetting = wants("setting");
  m_asksCount = wants("count");
  for (const std::string& item : m_what)
    if (item != "setting" && item != "count") ask(item);
  // Answers are made anew each time, after the fields that stand below them.
  QWidget* before = m_manner->button(kIndependent);
  for (const auto& question : m_questions)
    for (QAbstractButton* answer : question.answer->buttons()) {
      QWidget::setTabOrder(before, answer);
      before = answer;
    }
  for (QLineEdit* field : {m_sign, m_pin, m_tool, m_setting, m_count}) field->clear();
  if (m_alone) m_sign->setText(toQt(view.worker));
  for (QLineEdit* field : {m_tool, m_setting}) setShown(field, m_asksSetting);
  setShown(m_count, m_asksCount);
}

Manner WitnessPanel::manner() const {
  if (m_alone) return Manner::Self;
  return m_manner->checkedId() == kIndependent ? Manner::Independent : Manner::Watched;
}

QString WitnessPanel::missing() const {
  if (!m_alone && m_manner->checkedId() < 0) return tr("Say how you looked");
  for (const Question& question : m_questions)
    if (question.answer->checkedId() < 0) return tr("%1: so, or not so?").arg(nameOf(question.item));
  if (m_asksSetting && !isFilled(m_tool)) return tr("Type the mark on the wrench");
  if (m_asksSetting && !isFilled(m_setting)) return tr("Type the setting, with its unit");
  if (m_asksCount && !isFilled(m_count)) return tr("Type how many you count");
  if (!isFilled(m_sign) || !isFilled(m_pin)) return tr("Give initials and PIN");
  return {};
}

QString WitnessPanel::mainAction() const {
  const QString wanted = missing();
  return wanted.isEmpty() ? tr("This is what I see") : wanted;
}

void WitnessPanel::act() {
  Witnessed seen;
  seen.manner = manner();
  if (m_asksSetting) {
    const auto setting = parse<TorqueTag>(fromQt(m_setting->text().trimmed()), Settings().decimalMark());
    if (!setting) return emit course().refused(worded(setting.error()));
    seen.tool = fromQt(m_tool->text().trimmed());
    seen.setting = *setting;
  }
  if (m_asksCount) {
    bool isNumber = false;
    seen.count = m_count->text().trimmed().toInt(&isNumber);
    if (!isNumber || *seen.count < 0)
      return emit course().refused(
          tr("“%1” is no count; type a whole number.").arg(m_count->text().trimmed()));
  }
  for (const std::string& item : m_what) {
    const auto asked = std::find_if(m_questions.begin(), m_questions.end(),
                                    [&](const Question& each) { return each.item == item; });
    const bool isSo = asked == m_questions.end() || asked->answer->checkedId() == kSo;
    (isSo ? seen.what : seen.notSo).push_back(item);
  }
  course().stateAs(m_sign->text().trimmed(), m_pin->text(), seen);
}

}  // namespace cw
