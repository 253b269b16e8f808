#include "app/common/style.h"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>
#include <QWidget>

#include "app/common/colours.h"

namespace cw {
namespace {

constexpr qreal kRadius = 4;

void outlined(QPainter* painter, const QRect& rect, const QColor& fill, const QColor& line, qreal width) {
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(QPen(line, width));
  painter->setBrush(fill);
  const qreal inset = width / 2;
  painter->drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), kRadius, kRadius);
  painter->restore();
}

bool isMain(const QWidget* widget) {
  return widget != nullptr && widget->property(kMainProperty).toBool();
}

void drawButton(const QStyleOption* option, QPainter* painter, const QWidget* widget) {
  const QPalette& palette = option->palette;
  const bool enabled = option->state.testFlag(QStyle::State_Enabled);
  const bool down = option->state.testFlag(QStyle::State_Sunken) || option->state.testFlag(QStyle::State_On);
  const bool filled = isMain(widget) && enabled;
  const QColor fill = filled ? accentOf(palette) : down ? sheetOf(palette).darker(108) : groundOf(palette);
  outlined(painter, option->rect, fill, filled ? fill : enabled ? inkOf(palette) : lineOf(palette), 1.5);
  if (option->state.testFlag(QStyle::State_HasFocus) &&
      option->state.testFlag(QStyle::State_KeyboardFocusChange))
    outlined(painter, option->rect.adjusted(3, 3, -3, -3), Qt::transparent,
             filled ? onAccentOf(palette) : accentOf(palette), 2);
}

void drawCheck(const QStyleOption* option, QPainter* painter) {
  const bool on = option->state.testFlag(QStyle::State_On);
  const bool focus = option->state.testFlag(QStyle::State_HasFocus);
  const QRect box = option->rect.adjusted(2, 2, -2, -2);
  outlined(painter, box, on ? inkOf(option->palette) : sheetOf(option->palette),
           focus ? accentOf(option->palette) : inkOf(option->palette), focus ? 3 : 1.5);
  if (!on) return;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(QPen(sheetOf(option->palette), box.height() / 8.0));
  const QPointF centre = QRectF(box).center();
  const qreal reach = box.width() / 2.0;
  painter->drawPolyline(QPolygonF{{centre + QPointF(-0.5, 0) * reach, centre + QPointF(-0.1, 0.4) * reach,
                                   centre + QPointF(0.55, -0.45) * reach}});
  painter->restore();
}

void drawField(const QStyleOption* option, QPainter* painter) {
  const bool focus = option->state.testFlag(QStyle::State_HasFocus);
  outlined(painter, option->rect, sheetOf(option->palette),
           focus ? accentOf(option->palette) : lineOf(option->palette), focus ? 2.5 : 1.5);
}

}  // namespace

WorkshopStyle::WorkshopStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void WorkshopStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                                  const QWidget* widget) const {
  switch (element) {
    case PE_PanelButtonCommand:
      return drawButton(option, painter, widget);
    case PE_PanelLineEdit:
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

int WorkshopStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  switch (metric) {
    case PM_ButtonShiftHorizontal:
    case PM_ButtonShiftVertical:
      return 0;
    case PM_ScrollBarExtent:
      return 16;
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
  if (type == CT_PushButton) out += QSize(16, 8);
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
