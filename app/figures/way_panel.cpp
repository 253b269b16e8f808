#include "app/figures/way_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/wording.h"
#include "app/documents/document_view.h"
#include "app/fields/input_field.h"
#include "app/figures/load_view.h"
#include "app/layout/order_form.h"
#include "app/layout/shares_text.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/report/settling_document.h"

namespace cw {
namespace {

constexpr int kMostRounds = 20, kTableLines = 17;

}  // namespace

WayPanel::WayPanel(const QString& name, const QString& title, const SettlingWay& way, QWidget* parent)
    : QWidget(parent),
      m_rule(new QComboBox),
      m_shares(new InputField(
          {name + QStringLiteral("Shares"), tr("Passes, % of target"), QStringLiteral("30 70 100")})),
      m_rounds(new QSpinBox),
      m_loads(new LoadView),
      m_caption(textLabel({}, deskFont(0, QFont::Bold))),
      m_passes(new DocumentView) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->addWidget(textLabel(title, deskFont(1, QFont::Bold)));
  down->addWidget(makeForm(name, way));
  m_loads->setObjectName(name + QStringLiteral("Loads"));
  down->addWidget(m_loads, 1);
  m_caption->setObjectName(name + QStringLiteral("Caption"));
  m_caption->setAlignment(Qt::AlignHCenter);
  down->addWidget(m_caption);
  m_passes->setObjectName(name + QStringLiteral("Passes"));
  m_passes->setAccessibleName(tr("Passes in numbers"));
  m_passes->setFixedHeight(fontMetrics().lineSpacing() * kTableLines);
  m_passes->setMinimumWidth(fontMetrics().lineSpacing() * kTableLines);  // no heading breaks inside a word
  down->addWidget(m_passes);
}

QWidget* WayPanel::makeForm(const QString& name, const SettlingWay& way) {
  for (const OrderRule rule : kOrderRules) m_rule->addItem(ruleName(rule));
  m_rule->setObjectName(name + QStringLiteral("Rule"));
  m_rule->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  m_rule->setMinimumContentsLength(9);
  m_shares->edit()->setMinimumWidth(
      m_shares->fontMetrics().horizontalAdvance(QStringLiteral("30 70 100 100")));
  m_rounds->setObjectName(name + QStringLiteral("Rounds"));
  m_rounds->setRange(0, kMostRounds);
  setWay(way);
  connect(m_rule, &QComboBox::activated, this, &WayPanel::edited);
  connect(m_shares, &InputField::edited, this, &WayPanel::edited);
  connect(m_rounds, &QSpinBox::valueChanged, this, &WayPanel::edited);
  auto* form = new QWidget;
  auto* across = new QHBoxLayout(form);
  across->setContentsMargins(0, 0, 0, 0);
  const auto add = [&](QWidget* field, const QString& heading, int stretch) {
    auto* column = new QVBoxLayout;
    column->setSpacing(2);
    if (!heading.isEmpty()) {
      auto* label = textLabel(heading, deskFont(), QPalette::PlaceholderText);
      label->setBuddy(field);
      field->setAccessibleName(heading);
      column->addWidget(label);
    }
    column->addWidget(field);
    column->addStretch(1);
    across->addLayout(column, stretch);
  };
  add(m_rule, tr("Order"), 3);
  add(m_shares, {}, 3);
  add(m_rounds, tr("Full rounds"), 2);
  return form;
}

void WayPanel::setWay(const SettlingWay& way) {
  const QSignalBlocker quiet(m_rounds);
  const auto found = std::find(std::begin(kOrderRules), std::end(kOrderRules), way.rule);
  m_rule->setCurrentIndex(static_cast<int>(found - kOrderRules));
  m_shares->setText(sharesText(way.shares));
  m_rounds->setValue(way.rounds);
}

std::optional<SettlingWay> WayPanel::way() {
  const auto shares = sharesIn(m_shares->text(), m_shares->numberMark());
  m_shares->findTrouble(shares ? QString() : worded(shares.error()));
  if (!shares) return std::nullopt;
  return SettlingWay{kOrderRules[m_rule->currentIndex()], *shares, m_rounds->value()};
}

void WayPanel::refuse(const QString& sentence) {
  m_outcome.reset();
  m_loads->clear();
  m_caption->clear();
  Document empty;
  empty.title = fromQt(tr("Passes in numbers"));
  m_passes->present(empty);
  m_shares->findTrouble(sentence);
}

void WayPanel::fitRule(const Layout& bolts) {
  if (tighteningOrder(bolts, kOrderRules[m_rule->currentIndex()])) return;
  const auto usual = std::find(std::begin(kOrderRules), std::end(kOrderRules), usualRule(bolts));
  m_rule->setCurrentIndex(static_cast<int>(usual - kOrderRules));
}

void WayPanel::present(const Layout& bolts, const SettlingOutcome& outcome) {
  m_outcome = outcome;
  m_shares->find({});
  m_loads->setOutcome(bolts, outcome);
  m_passes->present(settlingDocument(outcome, inWindow));
}

std::size_t WayPanel::steps() const {
  return m_outcome ? m_outcome->course.steps.size() : 0;
}

void WayPanel::showAfter(std::size_t steps) {
  if (!m_outcome) return;
  m_loads->showAfter(steps);
  const auto& all = m_outcome->course.steps;
  if (steps == 0 || all.empty()) return m_caption->setText(tr("Before the first pass: snug"));
  const SettlingStep& step = all[std::min(steps, all.size()) - 1];
  const int passes = static_cast<int>(m_outcome->course.passes.size());
  const QString where = tr("Pass %1 of %2, bolt %3").arg(step.pass).arg(passes).arg(step.bolt);
  m_caption->setText(step.moved ? where : tr("%1: does not move").arg(where));
}

}  // namespace cw
