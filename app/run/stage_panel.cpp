#include "app/run/stage_panel.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/wording.h"
#include "app/run/bench_column.h"
#include "app/run/gaps_panel.h"
#include "app/run/leads_word.h"
#include "app/run/step_panels.h"
#include "app/run/tighten_panels.h"
#include "app/run/touch.h"
#include "app/run/witness_panel.h"

namespace cw {

StagePanel::StagePanel(Course& course) : m_course(course), m_column(new QVBoxLayout(this)) {
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->setSpacing(8);
}

QLabel* StagePanel::addText(const QString& objectName) {
  auto* label = new QLabel;
  label->setObjectName(objectName);
  label->setFont(fontOfHeight(bench::kTextHeight, this));
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  m_column->addWidget(label);
  return label;
}

QLineEdit* StagePanel::addField(const QString& label, const QString& objectName, const QString& unit) {
  auto* field = new QLineEdit;
  field->setObjectName(objectName);
  fitForTouch(*field, bench::kTextHeight);
  m_column->addWidget(labelFor(*field, unit.isEmpty() ? label : tr("%1, in %2").arg(label, unit)));
  m_column->addWidget(field);
  connect(field, &QLineEdit::textChanged, this, &StagePanel::changed);
  return field;
}

QLineEdit* StagePanel::addPin(const QString& label, const QString& objectName) {
  QLineEdit* field = addField(label, objectName);
  field->setEchoMode(QLineEdit::Password);
  return field;
}

LeadsWord* StagePanel::addLeadsWord(const QString& lead, const QString& reason) {
  auto* word = new LeadsWord({lead, reason}, bench::kTextHeight);
  m_column->addWidget(word);
  connect(word, &LeadsWord::changed, this, &StagePanel::changed);
  return word;
}

QPushButton* StagePanel::addButton(const QString& text, const QString& objectName) {
  QPushButton* button = touchButton(text, objectName);
  addGap();
  m_column->addWidget(button, 0, Qt::AlignLeft);
  return button;
}

bool StagePanel::isFilled(const QLineEdit* field) {
  return !field->text().trimmed().isEmpty();
}

void StagePanel::addGap() {
  m_column->addSpacing(std::max(0, touchGap(*this) - m_column->spacing()));
}

void StagePanel::keepInView(QWidget& part) {
  for (QWidget* parent = parentWidget(); parent != nullptr; parent = parent->parentWidget())
    if (auto* column = qobject_cast<BenchColumn*>(parent)) return column->keepInView(&part);
}

void StagePanel::setShown(QLineEdit* field, bool shown) {
  field->setVisible(shown);
  for (QLabel* label : findChildren<QLabel*>(Qt::FindDirectChildrenOnly))
    if (label->buddy() == field) label->setVisible(shown);
}

StagePanel* makeStagePanel(Stage stage, Course& course) {
  switch (stage) {
    case Stage::Resume:
      return new ResumePanel(course);
    case Stage::ReadWarnings:
      return new WarningsPanel(course);
    case Stage::Act:
      return new ActPanel(course);
    case Stage::Check:
      return new CheckPanel(course);
    case Stage::Measure:
      return new MeasurePanel(course);
    case Stage::Apply:
      return new ApplyPanel(course);
    case Stage::Hold:
    case Stage::WitnessBeforeFinal:
      return new WitnessPanel(course);
    case Stage::HandStart:
      return new HandStartPanel(course);
    case Stage::ConfirmCondition:
      return new ConditionPanel(course);
    case Stage::SetTool:
      return new ToolPanel(course);
    case Stage::CountPass:
      return new CountPanel(course);
    case Stage::ReadGaps:
      return new GapsPanel(course);
    case Stage::TightenPosition:
      return new PositionPanel(course);
    case Stage::CheckPass:
      return new CheckPassPanel(course);
    case Stage::Finish:
      return new FinishPanel(course);
    case Stage::Start:
    case Stage::Nothing:
      return nullptr;
  }
  return nullptr;
}

}  // namespace cw
