#include "app/look/style.h"

#include <QComboBox>
#include <QPushButton>
#include <QStyleFactory>
#include <QStyleOption>
#include <QWidget>
#include <algorithm>

#include "app/look/colours.h"
#include "app/look/style_painting.h"

namespace cw {
namespace {

constexpr int kFieldInset = 8;

int chevronRoom(const QStyleOption* option) {
  return option->fontMetrics.height() + kFieldInset;
}

bool isMain(const QWidget* widget) {
  return widget != nullptr && widget->property(kMainProperty).toBool();
}

}  // namespace

WorkshopStyle::WorkshopStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

/// Enter presses the button that has the keyboard, as Space does.
void WorkshopStyle::polish(QWidget* widget) {
  QProxyStyle::polish(widget);
  if (auto* button = qobject_cast<QPushButton*>(widget)) button->setAutoDefault(true);
}

void WorkshopStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const {
  switch (element) {
    case PE_PanelButtonCommand:
      return drawButton(option, painter, isMain(widget));
    case PE_PanelLineEdit:
      // The field inside a choice has no frame of its own.
      if (const auto* frame = qstyleoption_cast<const QStyleOptionFrame*>(option);
          frame != nullptr && frame->lineWidth == 0)
        return;
      return drawField(option, painter);
    case PE_IndicatorCheckBox:
      return drawCheck(option, painter);
    case PE_FrameLineEdit:
    case PE_FrameFocusRect:
    case PE_FrameDefaultButton:
      return;
    default:
      QProxyStyle::drawPrimitive(element, option, painter, widget);
  }
}

void WorkshopStyle::drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                                const QWidget* widget) const {
  if (element == CE_HeaderSection || element == CE_HeaderEmptyArea) return drawHeading(option, painter);
  if (element == CE_Splitter) return drawHandle(option, painter);
  if (element == CE_ComboBoxLabel && drawsWrapped(option, painter, widget)) return;
  const auto* button = qstyleoption_cast<const QStyleOptionButton*>(option);
  if (element != CE_PushButtonLabel || button == nullptr || !isMain(widget))
    return QProxyStyle::drawControl(element, option, painter, widget);
  QStyleOptionButton main(*button);
  if (main.state.testFlag(State_Enabled))
    main.palette.setColor(QPalette::ButtonText, onAccentOf(button->palette));
  const QRect room = subElementRect(SE_PushButtonContents, option, widget);
  if (main.fontMetrics.horizontalAdvance(main.text) <= room.width())
    return QProxyStyle::drawControl(element, &main, painter, widget);
  // What the main action states is never cut: in a small window it stands in two lines.
  drawItemText(painter, room, Qt::AlignCenter | Qt::TextWordWrap, main.palette,
               main.state.testFlag(State_Enabled), main.text, QPalette::ButtonText);
}

/// What is chosen is not cut: where it is longer than the choice is wide it stands in two lines.
bool WorkshopStyle::drawsWrapped(const QStyleOption* option, QPainter* painter, const QWidget* widget) const {
  const auto* choice = qstyleoption_cast<const QStyleOptionComboBox*>(option);
  if (choice == nullptr || choice->editable) return false;
  const QRect room = subControlRect(CC_ComboBox, choice, SC_ComboBoxEditField, widget);
  if (choice->fontMetrics.horizontalAdvance(choice->currentText) <= room.width()) return false;
  drawItemText(painter, room, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap, choice->palette,
               choice->state.testFlag(State_Enabled), choice->currentText, QPalette::Text);
  return true;
}

void WorkshopStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                       QPainter* painter, const QWidget* widget) const {
  const auto* bar = qstyleoption_cast<const QStyleOptionSlider*>(option);
  if (control == CC_ScrollBar && bar != nullptr)
    return drawScrollBar(bar, painter, subControlRect(control, option, SC_ScrollBarSlider, widget));
  if (control == CC_ComboBox) return drawChoice(option, painter);
  QProxyStyle::drawComplexControl(control, option, painter, widget);
}

QRect WorkshopStyle::subControlRect(ComplexControl control, const QStyleOptionComplex* option,
                                    SubControl part, const QWidget* widget) const {
  if (control == CC_ScrollBar && (part == SC_ScrollBarAddLine || part == SC_ScrollBarSubLine)) return {};
  if (control == CC_ScrollBar && part == SC_ScrollBarGroove) return option->rect;
  if (control == CC_ScrollBar && part == SC_ScrollBarSlider)
    return sliderOf(*qstyleoption_cast<const QStyleOptionSlider*>(option));
  if (control == CC_ComboBox && part == SC_ComboBoxEditField)
    return option->rect.adjusted(kFieldInset, 3, -chevronRoom(option), -3);
  if (control == CC_ComboBox && part == SC_ComboBoxArrow)
    return QRect(option->rect.right() - chevronRoom(option) + 1, option->rect.top(), chevronRoom(option),
                 option->rect.height());
  return QProxyStyle::subControlRect(control, option, part, widget);
}

QRect WorkshopStyle::subElementRect(SubElement element, const QStyleOption* option,
                                    const QWidget* widget) const {
  const QRect rect = QProxyStyle::subElementRect(element, option, widget);
  // Inside a choice the choice's own frame has kept the room already.
  const bool framed =
      qobject_cast<const QComboBox*>(widget != nullptr ? widget->parentWidget() : nullptr) == nullptr;
  return element == SE_LineEditContents && framed ? rect.adjusted(kFieldInset - 2, 0, 2 - kFieldInset, 0)
                                                  : rect;
}

int WorkshopStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  switch (metric) {
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
      return 0;
    case PM_ScrollBarExtent:
      return 16;
    case PM_ScrollBarSliderMin:
      return 32;
    case PM_SplitterWidth:
      return 9;
    case PM_HeaderMargin:
      return 6;
    case PM_IndicatorWidth:
    case PM_IndicatorHeight:
      return widget != nullptr ? widget->fontMetrics().height() : 16;
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
      return 8;
    default:
      return QProxyStyle::pixelMetric(metric, option, widget);
  }
}

QSize WorkshopStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                      const QWidget* widget) const {
  QSize out = QProxyStyle::sizeFromContents(type, option, size, widget);
  if (type == CT_PushButton) out += QSize(std::max(16, option->fontMetrics.height() * 5 / 8), 8);
  if (type == CT_ComboBox)
    out.rwidth() = std::max(out.width(), size.width() + kFieldInset + chevronRoom(option));
  if (type == CT_PushButton || type == CT_LineEdit || type == CT_ComboBox)
    out.setHeight(qMax(out.height(), 36));
  return out;
}

int WorkshopStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                             QStyleHintReturn* data) const {
  if (hint == SH_ItemView_ActivateItemOnSingleClick) return 0;
  if (hint == SH_EtchDisabledText || hint == SH_DitherDisabledText) return 0;
  return QProxyStyle::styleHint(hint, option, widget, data);
}

}  // namespace cw
