#include "app/bench/layout_input.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <numbers>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/run/touch.h"

namespace cw {
namespace {

enum class DrawnShape { Circle, Rows, Line };

constexpr Length kDrawnPitch = millimetres(40);  // between neighbours as drawn

Result<std::size_t> countIn(const QLineEdit& field) {
  bool isNumber = false;
  const uint count = field.text().trimmed().toUInt(&isNumber);
  if (isNumber && count > 0) return std::size_t{count};
  return fail(ErrorCode::InvalidInput, "", fromQt(field.text()),
              {"“%1” is no number of fasteners", {shown(fromQt(field.text()))}}, "write a whole number");
}

}  // namespace

LayoutInput::LayoutInput(QWidget* parent) : QWidget(parent) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(touchGap(*this));
  m_shape = touchChoice(QStringLiteral("shapeChoice"));
  m_shape->setAccessibleName(tr("Shape of the joint"));
  m_shape->addItems({tr("circle of"), tr("rows × columns"), tr("straight line of")});
  across->addWidget(m_shape, 2);
  m_count = addCount(tr("How many fasteners, or rows"), "countField");
  m_columns = addCount(tr("How many columns"), "columnsField");
  passFocusOn(*this, *m_shape);
  connect(m_shape, &QComboBox::currentIndexChanged, this, &LayoutInput::showCounts);
  clear();
}

QLineEdit* LayoutInput::addCount(const QString& name, const char* objectName) {
  auto* field = new QLineEdit;
  field->setObjectName(QLatin1String(objectName));
  field->setAccessibleName(name);
  fitForTouch(*field);
  qobject_cast<QHBoxLayout*>(QWidget::layout())->addWidget(field, 1);
  connect(field, &QLineEdit::textChanged, this, &LayoutInput::changed);
  return field;
}

void LayoutInput::clear() {
  m_shape->setCurrentIndex(0);
  m_count->setText(QStringLiteral("6"));
  m_columns->setText(QStringLiteral("2"));
  showCounts();
}

void LayoutInput::showCounts() {
  m_columns->setVisible(m_shape->currentIndex() == static_cast<int>(DrawnShape::Rows));
  emit changed();
}

Result<Layout> LayoutInput::layout() const {
  Layout out;
  CW_TRY(count, countIn(*m_count));
  switch (static_cast<DrawnShape>(m_shape->currentIndex())) {
    case DrawnShape::Circle:
      out.shape = Circle{
          count, static_cast<double>(count) / std::numbers::pi * kDrawnPitch, {}, 1, Direction::Clockwise};
      break;
    case DrawnShape::Rows: {
      CW_TRY(columns, countIn(*m_columns));
      out.shape = Rows{count, columns, kDrawnPitch, kDrawnPitch};
      break;
    }
    case DrawnShape::Line:
      out.shape = Line{count, kDrawnPitch};
      break;
  }
  CW_CHECK(positions(out));
  return out;
}

}  // namespace cw
