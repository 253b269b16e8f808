#include "app/run/tighten_panels.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/drawing/joint_view.h"
#include "app/look/measures.h"
#include "app/run/course.h"
#include "app/run/leads_word.h"
#include "app/run/touch.h"
#include "core/report/describe.h"
#include "core/report/drawing.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {
namespace {

constexpr double kLeastJoint = 62;  ///< mm; in less its labels could not be read

JointView* addJoint(QVBoxLayout* column, bool choosable) {
  auto* joint = new JointView;
  joint->setObjectName(QStringLiteral("jointView"));
  joint->setChoosable(choosable);
  joint->setFont(fontOfHeight(bench::kTextHeight, joint));
  joint->setMinimumHeight(static_cast<int>(pixels(kLeastJoint, joint)));
  column->addWidget(joint, 1);
  return joint;
}

int countOf(const BenchView& view) {
  return static_cast<int>(view.joint()->order.size());
}

std::vector<std::string> chosenOf(const JointView* joint) {
  return {joint->chosen().begin(), joint->chosen().end()};
}

QString listOf(const std::vector<std::string>& labels) {
  QStringList out;
  for (const std::string& label : labels) out << toQt(label);
  return out.join(QStringLiteral(", "));
}

/// What became of a wrench that was in hand when this was last worked on; empty if none was stopped since.
QString stoppedIn(const BenchView& view) {
  for (auto kept = view.job.entries.rbegin(); kept != view.job.entries.rend(); ++kept) {
    if (const auto* set = std::get_if<ToolSet>(&kept->entry.body);
        set != nullptr && set->step == view.step().id)
      return {};
    if (!std::holds_alternative<ToolStopped>(kept->entry.body)) continue;
    QStringList told;
    for (const Message& sentence : describe(kept->entry, view.job, view.floor.people))
      told << worded(sentence);
    return StagePanel::tr("%1 Take another.").arg(told.join(QLatin1Char(' ')));
  }
  return {};
}

}  // namespace

HandStartPanel::HandStartPanel(Course& course) : StagePanel(course) {
  auto* text = addText(QStringLiteral("handStartText"));
  text->setText(tr("Run all to the face by finger. Touch the ones that will not go."));
  m_joint = addJoint(column(), true);
  connect(m_joint, &JointView::chosenChanged, this, &StagePanel::changed);
}

void HandStartPanel::present(const BenchView& view) {
  m_joint->clearChosen();
  m_joint->setDrawing(drawingOf(view.job, view.next.step));
  m_count = countOf(view);
}

QString HandStartPanel::mainAction() const {
  const auto stuck = chosenOf(m_joint);
  return stuck.empty() ? tr("All %1 at the face by finger").arg(m_count)
                       : tr("Position %1 will not go").arg(listOf(stuck));
}

void HandStartPanel::act() {
  HandStarted started;
  started.stuck = chosenOf(m_joint);
  started.count = m_count - static_cast<int>(started.stuck.size());
  course().state(started);
}

ConditionPanel::ConditionPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("conditionText"));
  column()->addStretch(1);
}

void ConditionPanel::present(const BenchView& view) {
  m_condition = toQt(view.next.condition);
  m_text->setText(isWholeJoint(view.job, view.next)
                      ? tr("The torque holds for threads and faces that are: %1. If they are not, bring them "
                           "to it, or leave this for later.")
                            .arg(m_condition)
                      : tr("The torque of positions %1 holds for threads and faces that are: %2. If they are "
                           "not, bring them to it, or leave this for later.")
                            .arg(listOf(view.next.positions), m_condition));
}

QString ConditionPanel::mainAction() const {
  return tr("They are %1").arg(m_condition);
}

void ConditionPanel::act() {
  ConditionConfirmed confirmed;
  confirmed.condition = fromQt(m_condition);
  course().state(confirmed);
}

ToolPanel::ToolPanel(Course& course) : StagePanel(course) {
  m_stopped = addText(QStringLiteral("stoppedText"));
  m_stopped->setForegroundRole(QPalette::BrightText);
  m_text = addText(QStringLiteral("toolText"));
  m_list = new TallList;
  m_list->setObjectName(QStringLiteral("toolList"));
  m_list->setAccessibleName(tr("Wrenches"));
  m_list->setFont(fontOfHeight(bench::kTextHeight, this));
  fitRowsForTouch(*m_list);
  column()->addWidget(m_list, 1);
  m_word = addLeadsWord(tr("Allowed by (sign of a shop lead)"), tr("The lead's reason"));
  connect(m_list, &QListWidget::currentRowChanged, this, &ToolPanel::showLeadsWord);
}

void ToolPanel::present(const BenchView& view) {
  m_offers = toolOffers(view.job, view.next, view.floor, course().worker(), course().now());
  m_list->clear();
  m_given = wordFor(view.job, ToolSet{}).value_or(Given::Here);
  m_word->present(m_given);
  m_stopped->setText(stoppedIn(view));
  m_stopped->setVisible(!m_stopped->text().isEmpty());
  m_text->setText(isWholeJoint(view.job, view.next)
                      ? tr("Take a wrench and set it:")
                      : tr("Take a wrench and set it for positions %1:").arg(listOf(view.next.positions)));
  for (const ToolOffer& offer : m_offers) addItem(offer);
  m_list->setCurrentRow(!m_offers.empty() && m_offers.front().fits() ? 0 : -1);
  showLeadsWord();
}

void ToolPanel::addItem(const ToolOffer& offer) {
  const QString name = toQt(offer.tool) + QLatin1String("  ");
  auto* item =
      new QListWidgetItem(offer.fits() ? name + toQt(text(offer.set->setting))
                                       : name + tr("not this one: %1").arg(worded(offer.set.error())));
  if (!offer.fits() && !offer.allowed) item->setFlags(Qt::ItemIsEnabled);
  m_list->addItem(item);
}

bool ToolPanel::asksALead() const {
  const int row = m_list->currentRow();
  return row >= 0 && row < static_cast<int>(m_offers.size()) &&
         m_offers[static_cast<std::size_t>(row)].allowed.has_value();
}

void ToolPanel::showLeadsWord() {
  m_word->setVisible(asksALead());
  keepInView(asksALead() ? m_word->lastField() : *this);
  emit changed();
}

std::optional<ToolSet> ToolPanel::chosen() const {
  const int row = m_list->currentRow();
  if (row < 0 || row >= static_cast<int>(m_offers.size())) return std::nullopt;
  const ToolOffer& offer = m_offers[static_cast<std::size_t>(row)];
  if (offer.fits()) return *offer.set;
  auto out = offer.allowed;
  if (out) {
    out->allowedBy = fromQt(m_word->sign());
    out->reason = m_word->reason();
  }
  return out;
}

QString ToolPanel::mainAction() const {
  const auto set = chosen();
  return set ? tr("%1 is set to %2").arg(toQt(set->tool), toQt(text(set->setting))) : tr("Choose a wrench");
}

void ToolPanel::act() {
  const auto set = chosen();
  if (!set) return;
  asksALead() ? course().stateAllowed(m_word->given(), *set) : course().state(*set);
}

CountPanel::CountPanel(Course& course) : StagePanel(course) {
  m_text = addText(QStringLiteral("countText"));
  m_joint = addJoint(column(), false);
}

void CountPanel::present(const BenchView& view) {
  JointDrawing drawing = drawingOf(view.job, view.next.step);
  m_isWhole = isWholeJoint(view.job, view.next);
  const auto isMeant = [&](const std::string& label) {
    const auto& meant = view.next.positions;
    return !m_isWhole && std::find(meant.begin(), meant.end(), label) != meant.end();
  };
  const auto& counted = view.job.steps[view.next.step].tightening.counted;
  for (DrawnPosition& position : drawing.positions)
    position.state = isMeant(position.label)            ? PositionState::Now
                     : counted.contains(position.label) ? PositionState::Done
                                                        : PositionState::ToDo;
  JointDrawingOptions options;
  options.showOrder = true;
  options.standHere = tr("you stand here");
  m_joint->setOptions(options);
  m_joint->setDrawing(std::move(drawing));
  m_count = static_cast<int>(view.next.positions.size());
  m_text->setVisible(!m_isWhole);
  m_text->setText(
      tr("%1 of %2: positions %3").arg(m_count).arg(countOf(view)).arg(listOf(view.next.positions)));
  const ToolSet* set = view.inHand();
  m_setting = set != nullptr ? toQt(text(set->setting)) : QString();
}

QString CountPanel::mainAction() const {
  return m_isWhole ? tr("All %1 clicked at %2").arg(m_count).arg(m_setting)
                   : tr("These %1 clicked at %2").arg(m_count).arg(m_setting);
}

void CountPanel::act() {
  PassCounted counted;
  counted.count = m_count;
  course().state(counted);
}

PositionPanel::PositionPanel(Course& course) : StagePanel(course) {
  m_joint = addJoint(column(), false);
  m_reading = addField(tr("Reading on the scale in use"), QStringLiteral("readingField"));
  connect(m_reading, &QLineEdit::textChanged, this, &PositionPanel::showReading);
}

void PositionPanel::present(const BenchView& view) {
  JointDrawingOptions options;
  options.standHere = tr("you stand here");
  m_joint->setOptions(options);
  m_joint->setDrawing(drawingOf(view.job, view.next.step));
  m_reading->clear();
  m_position = view.next.position;
  const Tightening& now = view.job.steps[view.next.step].tightening;
  const ToolSet& set = *view.inHand();
  m_setting = set.setting;
  const TorqueTool* tool = view.floor.tool(set.tool.text);
  m_indicates = tool != nullptr && tool->type == ToolType::Indicating;
  showReading();
  m_then.clear();
  for (const std::string& label : view.joint()->order)
    if (label != m_position && !now.tightened.contains(label)) {
      m_then = tr("then %1").arg(toQt(label));
      break;
    }
}

void PositionPanel::showReading() {
  const bool wanted = m_indicates || !m_reading->text().isEmpty();
  setShown(m_reading, wanted);
}

QString PositionPanel::mainAction() const {
  const QString typed = m_reading->text().trimmed();
  if (!typed.isEmpty())
    return tr("Position %1 reads %2 %3").arg(toQt(m_position), typed, toQt(m_setting.unit->symbol));
  return m_indicates ? tr("Type the reading")
                     : tr("%1 clicked at %2").arg(toQt(m_position), toQt(text(m_setting)));
}

void PositionPanel::act() {
  Tightened pulled;
  pulled.position = m_position;
  const QString typed = m_reading->text().trimmed();
  if (!typed.isEmpty() || m_indicates) {
    const auto number = parseNumber(fromQt(typed), Settings().decimalMark());
    pulled.known = Known::Read;
    if (!number) return emit course().refused(worded(number.error()));
    pulled.reading = StatedTorque{*number, m_setting.unit};
  }
  course().state(pulled);
}

CheckPassPanel::CheckPassPanel(Course& course) : StagePanel(course) {
  auto* text = addText(QStringLiteral("checkPassText"));
  text->setText(tr("Go round in turn at full torque. Touch the ones that move."));
  m_joint = addJoint(column(), true);
  connect(m_joint, &JointView::chosenChanged, this, &StagePanel::changed);
}

void CheckPassPanel::present(const BenchView& view) {
  m_joint->clearChosen();
  m_joint->setDrawing(drawingOf(view.job, view.next.step));
}

QString CheckPassPanel::mainAction() const {
  const auto moved = chosenOf(m_joint);
  return moved.empty() ? tr("Nothing moved") : tr("Position %1 moved").arg(listOf(moved));
}

void CheckPassPanel::act() {
  CheckPassMade made;
  made.moved = chosenOf(m_joint);
  course().state(made);
}

}  // namespace cw
