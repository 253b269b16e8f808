#include "app/layout/order_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

#include "app/fields/number_field.h"
#include "app/layout/shares_text.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/pattern/several_tools.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr double kSecondsPerHour = 3600;

void showText(InputField* field, const QString& text) {
  if (!field->edit()->hasFocus()) field->setText(text);
}

}  // namespace

QString ruleName(OrderRule rule) {
  const auto tr = [](const char* text) { return QCoreApplication::translate("order", text); };
  switch (rule) {
    case OrderRule::Star:
      return tr("Star");
    case OrderRule::StarLater:
      return tr("Star, later convention");
    case OrderRule::StarGrouped:
      return tr("Star in groups");
    case OrderRule::Quadrant:
      return tr("Quadrant");
    case OrderRule::Circular:
      return tr("Going round");
    case OrderRule::CircularAfterFour:
      return tr("Four crosswise, then round");
    case OrderRule::CentreOut:
      return tr("From the middle outward");
    case OrderRule::Wheel:
      return tr("Wheel");
    case OrderRule::WheelPairs:
      return tr("Wheel, opposite pairs");
    case OrderRule::ArmyCircle:
      return tr("Army circle of 12");
    case OrderRule::Balanced:
      return tr("Balanced");
  }
  return {};
}

OrderForm::OrderForm(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
  m_column->setContentsMargins(0, 0, 8, 0);
  addOrder();
  addPasses();
  m_column->addStretch(1);
}

template <class Widget>
Widget* OrderForm::add(Widget* widget, const char* name, const QString& heading) {
  widget->setObjectName(QLatin1String(name));
  if (!heading.isEmpty()) {
    auto* label = textLabel(heading, deskFont(), QPalette::PlaceholderText);
    label->setBuddy(widget);
    widget->setAccessibleName(heading);
    m_column->addWidget(label);
  }
  m_column->addWidget(widget);
  if constexpr (std::is_same_v<Widget, QCheckBox>)
    connect(widget, &QCheckBox::clicked, this, &OrderForm::read);
  return widget;
}

void OrderForm::addOrder() {
  m_rule = add(new QComboBox, "ruleChoice", tr("Rule"));
  for (const OrderRule rule : kOrderRules) m_rule->addItem(ruleName(rule));
  connect(m_rule, &QComboBox::activated, this, [this](int row) {
    Pattern pattern = m_pattern;
    pattern.rule = kOrderRules[row];
    pattern.byHand.clear();
    emit edited(pattern);
  });
  m_byHand = new InputField(
      {QStringLiteral("handOrder"), tr("Order by hand, labels"), QStringLiteral("1 5 3 7"), true});
  m_column->addWidget(m_byHand);
  connect(m_byHand, &InputField::edited, this, &OrderForm::read);
  auto* click = add(new QPushButton(tr("Click it on the drawing")), "clickOrderButton");
  connect(click, &QPushButton::clicked, this, &OrderForm::clickingWanted);
  m_loosens = add(new QCheckBox(tr("Loosening: the reverse")), "loosenBox");
  m_tools = add(new QSpinBox, "toolsSpin", tr("Tools at the same time"));
  m_tools->setRange(1, static_cast<int>(kMostTools));
  connect(m_tools, &QSpinBox::valueChanged, this, &OrderForm::read);
}

void OrderForm::addPasses() {
  const auto field = [this](auto* made) {
    m_column->addWidget(made);
    connect(made, &InputField::edited, this, &OrderForm::read);
    return made;
  };
  m_fingers = add(new QCheckBox(tr("By finger first, counted")), "fingersBox");
  m_snug = field(new NumberField({QStringLiteral("snug"), tr("Snug, % of the torque"), {}, true}));
  m_shares = field(
      new InputField({QStringLiteral("shares"), tr("Passes, % of the torque"), QStringLiteral("30 70 100")}));
  m_checks = add(new QCheckBox(tr("Check pass until nothing moves")), "checkBox");
  m_rounds = field(new NumberField({QStringLiteral("limit"), tr("Rounds after which work stops"), {}}));
  m_retorques = add(new QCheckBox(tr("Once more after a wait")), "retorqueBox");
  m_wait = field(new NumberField({QStringLiteral("wait"), tr("Wait, hours"), {}}));
}

void OrderForm::present(const Pattern& pattern) {
  m_pattern = pattern;
  const auto rule = std::find(std::begin(kOrderRules), std::end(kOrderRules), pattern.rule);
  m_rule->setCurrentIndex(static_cast<int>(rule - kOrderRules));
  QStringList labels;
  for (const std::string& label : pattern.byHand) labels << toQt(label);
  showText(m_byHand, labels.join(QLatin1Char(' ')));
  m_loosens->setChecked(pattern.loosens);
  const QSignalBlocker quiet(m_tools);
  m_tools->setValue(static_cast<int>(pattern.tools));
  const PassPlan& passes = pattern.passes;
  m_fingers->setChecked(passes.byHand);
  showText(m_snug, passes.snug ? toQt(significant(*passes.snug * 100, 4)) : QString());
  showText(m_shares, sharesText(passes.shares));
  m_checks->setChecked(passes.check.has_value());
  m_rounds->setVisible(passes.check.has_value());
  showText(m_rounds, QString::number(passes.check.value_or(CheckPass{}).limit));
  m_retorques->setChecked(passes.retorque.has_value());
  m_wait->setVisible(passes.retorque.has_value());
  showText(m_wait, toQt(significant(passes.retorque.value_or(Retorque{}).wait.si() / kSecondsPerHour, 4)));
  sayFindings();
}

/// Gaps and repeats of an order by hand, what speaks against the rule, the tools or the passes.
void OrderForm::sayFindings() {
  const auto all = positions(m_pattern.layout);
  if (!all) return;
  QStringList said;
  std::vector<std::string> labels;
  for (const Position& position : *all) labels.push_back(position.label);
  if (!m_pattern.byHand.empty()) {
    for (const Finding& finding : reviewOrder(m_pattern.byHand, labels)) said << worded(finding);
  } else if (const auto order = tighteningOrder(m_pattern.layout, m_pattern.rule); !order) {
    said << worded(order.error());
  }
  if (const auto order = orderOf(m_pattern))
    if (const auto shared = shareAmongTools(m_pattern.layout, *order, m_pattern.tools); !shared)
      said << worded(shared.error());
  m_byHand->findTrouble(said.join(QLatin1Char(' ')));
  for (InputField* field : std::initializer_list<InputField*>{m_shares, m_snug, m_rounds, m_wait})
    field->find({});
  for (const Finding& finding : reviewPasses(m_pattern.passes)) {
    const QString place = toQt(finding.place);
    InputField* field = m_shares;
    if (place.contains(QLatin1String("snug"))) field = m_snug;
    if (place.contains(QLatin1String("limit")) || place.contains(QLatin1String("check"))) field = m_rounds;
    if (place.contains(QLatin1String("retorque"))) field = m_wait;
    field->findTrouble(worded(finding));
  }
}

void OrderForm::read() {
  Pattern pattern = m_pattern;
  pattern.byHand = wordsIn(m_byHand->text());
  pattern.loosens = m_loosens->isChecked();
  pattern.tools = static_cast<std::size_t>(m_tools->value());
  if (readPasses(pattern.passes)) emit edited(pattern);
}

bool OrderForm::readPasses(PassPlan& into) {
  bool good = true;
  const auto take = [&](InputField* field, const auto& read, const auto& put) {
    if (read)
      put(*read);
    else
      field->findTrouble(worded(read.error()));
    good = good && read;
  };
  into.byHand = m_fingers->isChecked();
  take(m_shares, sharesIn(m_shares->text(), m_shares->numberMark()),
       [&](const auto& shares) { into.shares = shares; });
  into.snug.reset();
  if (!m_snug->empty()) take(m_snug, m_snug->number(), [&](double share) { into.snug = share / 100; });
  if (!m_checks->isChecked())
    into.check.reset();
  else
    take(m_rounds, m_rounds->count(), [&](std::size_t limit) { into.check = CheckPass{limit}; });
  if (!m_retorques->isChecked())
    into.retorque.reset();
  else
    take(m_wait, m_wait->number(),
         [&](double hours) { into.retorque = Retorque{seconds(hours * kSecondsPerHour)}; });
  return good;
}

}  // namespace cw
