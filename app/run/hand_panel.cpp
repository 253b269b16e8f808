#include "app/run/hand_panel.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/wording.h"
#include "app/look/measures.h"
#include "core/report/describe.h"
#include "core/units/format.h"

namespace cw {
namespace {

QLabel* line(QVBoxLayout* column, const QString& name, double height, QFont::Weight weight, bool second,
             QWidget* parent) {
  auto* label = new QLabel;
  label->setObjectName(name);
  label->setFont(fontOfHeight(height, parent, weight));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  if (second) label->setForegroundRole(QPalette::PlaceholderText);
  column->addWidget(label);
  return label;
}

bool isLeftHand(const BenchView& view) {
  const Fastener* fastener = view.job.sheet.fastener(view.joint()->fastener);
  return fastener != nullptr && fastener->thread.ends_with("-LH");
}

}  // namespace

HandPanel::HandPanel(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  m_positionName =
      line(column, QStringLiteral("positionLabel"), bench::kLabelHeight, QFont::Normal, true, this);
  m_position = line(column, QStringLiteral("positionNumber"), bench::kNumberHeight, QFont::Bold, false, this);
  column->addSpacing(8);
  m_settingName =
      line(column, QStringLiteral("settingLabel"), bench::kLabelHeight, QFont::Normal, true, this);
  m_setting =
      line(column, QStringLiteral("settingNumber"), bench::kNumberHeight * 1.5, QFont::Bold, false, this);
  m_unit = line(column, QStringLiteral("settingUnit"), bench::kTextHeight, QFont::Bold, false, this);
  m_words = line(column, QStringLiteral("settingWords"), bench::kLabelHeight, QFont::Normal, false, this);
  m_stated = line(column, QStringLiteral("sheetSays"), bench::kLabelHeight, QFont::Normal, true, this);
  m_direction = line(column, QStringLiteral("direction"), bench::kLabelHeight, QFont::Bold, false, this);
  column->addStretch(1);
  m_tool = line(column, QStringLiteral("toolText"), bench::kLabelHeight, QFont::Normal, false, this);
  m_others = line(column, QStringLiteral("othersText"), bench::kLabelHeight, QFont::Normal, true, this);
}

void HandPanel::clear() {
  for (QLabel* label : findChildren<QLabel*>()) label->clear();
}

bool HandPanel::isEmpty() const {
  const auto labels = findChildren<QLabel*>();
  return std::all_of(labels.begin(), labels.end(),
                     [](const QLabel* label) { return label->text().isEmpty(); });
}

void HandPanel::present(const BenchView& view) {
  clear();
  fill(view);
  for (QLabel* label : findChildren<QLabel*>()) label->setVisible(!label->text().isEmpty());
}

void HandPanel::fill(const BenchView& view) {
  if (view.next.step >= view.job.steps.size() || view.joint() == nullptr) return;
  const ToolSet* set = view.inHand();
  if (isLeftHand(view)) m_direction->setText(tr("Left-hand thread: tighten anticlockwise"));
  if (!view.next.position.empty()) {
    m_positionName->setText(tr("Position"));
    m_position->setText(toQt(view.next.position));
  }
  // The second person must not see what the first has set.
  if (!set || view.next.stage == Stage::WitnessBeforeFinal) return;
  m_settingName->setText(tr("Wrench set to"));
  m_setting->setText(toQt(set->setting.digits));
  m_unit->setText(toQt(set->setting.unit->symbol));
  m_words->setText(toQt(set->setting.unit->words));
  const JobTorque torque = torqueAt(view.job, view.next.step, setFor(view.job, view.next));
  const bool finalPass = view.next.pass == passesOf(view.job, view.step());
  if (!finalPass)
    m_stated->setText(tr("early pass; final %1").arg(toQt(text(torque.aim))));
  else if (torque.aim.unit != set->setting.unit)
    m_stated->setText(tr("sheet says %1").arg(toQt(text(torque.aim))));
  if (const TorqueTool* tool = view.floor.tool(set->tool))
    showTool(*tool, set->setting, view.job.last()->time);
  showOthers(view, *set);
}

/// Who else holds a wrench that is set for this pass.
void HandPanel::showOthers(const BenchView& view, const ToolSet& own) {
  QStringList told;
  for (const InHand& each : view.job.steps[view.next.step].tightening.inHand)
    if (each.set.tool != own.tool)
      told << tr("%1 holds %2 at %3")
                  .arg(toQt(nameOf(each.holder, view.floor.people)), toQt(each.set.tool),
                       toQt(text(each.set.setting)));
  m_others->setText(told.join(QLatin1Char('\n')));
}

void HandPanel::showTool(const TorqueTool& tool, const StatedTorque& setting, const Moment& today) {
  const Scale* scale = tool.scaleIn(*setting.unit);
  QString text = QStringLiteral("%1  %2").arg(toQt(tool.id), toQt(tool.kind));
  if (scale != nullptr)
    text += QLatin1Char('\n') + tr("%1 to %2").arg(toQt(scale->low.digits), toQt(cw::text(scale->high)));
  const auto service = checkInService(tool, localDate(today));
  text += QLatin1Char('\n') + (service ? tr("in date to %1").arg(toQt(isoDate(tool.lastCalibration()->due)))
                                       : worded(service.error()));
  m_tool->setText(text);
}

}  // namespace cw
