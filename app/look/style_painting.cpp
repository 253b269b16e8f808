#include "app/look/style_painting.h"

#include <QPainter>
#include <QStyle>
#include <algorithm>

#include "app/look/colours.h"

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

constexpr int kLeastSlider = 32;

void drawChevron(const QStyleOption* option, QPainter* painter) {
  const qreal reach = std::max(4.0, option->fontMetrics.height() * 0.2);
  const QPointF centre(option->rect.right() - reach * 2.5, option->rect.center().y());
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(
      QPen(inkOf(option->palette), std::max(1.5, reach / 3), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter->drawPolyline(QPolygonF{{centre + QPointF(-reach, -reach / 2), centre + QPointF(0, reach / 2),
                                   centre + QPointF(reach, -reach / 2)}});
  painter->restore();
}

}  // namespace

void drawButton(const QStyleOption* option, QPainter* painter, bool main) {
  const QPalette& palette = option->palette;
  const bool enabled = option->state.testFlag(QStyle::State_Enabled);
  const bool down = option->state.testFlag(QStyle::State_Sunken) || option->state.testFlag(QStyle::State_On);
  const bool filled = main && enabled;
  const QColor fill = filled ? accentOf(palette) : down ? sheetOf(palette).darker(108) : groundOf(palette);
  outlined(painter, option->rect, fill, filled ? fill : enabled ? inkOf(palette) : lineOf(palette), 1.5);
  // The chosen one of several: a bar at its left, whatever the colours.
  if (option->state.testFlag(QStyle::State_On))
    painter->fillRect(option->rect.adjusted(0, 4, 7 - option->rect.width(), -4), inkOf(palette));
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

void drawHeading(const QStyleOption* option, QPainter* painter) {
  painter->fillRect(option->rect, sheetOf(option->palette));
  painter->fillRect(QRect(option->rect.left(), option->rect.bottom(), option->rect.width(), 1),
                    inkOf(option->palette));
}

void drawHandle(const QStyleOption* option, QPainter* painter) {
  const QRect& rect = option->rect;
  const bool upright = rect.height() > rect.width();
  const QRect line = upright ? QRect(rect.center().x(), rect.top() + 24, 1, rect.height() - 48)
                             : QRect(rect.left() + 24, rect.center().y(), rect.width() - 48, 1);
  painter->fillRect(line, lineOf(option->palette));
}

void drawScrollBar(const QStyleOptionSlider* option, QPainter* painter, const QRect& slider) {
  painter->fillRect(option->rect, groundOf(option->palette));
  const bool held =
      option->state.testFlag(QStyle::State_Sunken) || option->state.testFlag(QStyle::State_MouseOver);
  const QColor fill = held ? inkOf(option->palette) : lineOf(option->palette);
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setPen(Qt::NoPen);
  painter->setBrush(fill);
  painter->drawRoundedRect(QRectF(slider).adjusted(3, 3, -3, -3), 4, 4);
  painter->restore();
}

void drawField(const QStyleOption* option, QPainter* painter) {
  const bool focus = option->state.testFlag(QStyle::State_HasFocus);
  outlined(painter, option->rect, sheetOf(option->palette),
           focus ? accentOf(option->palette) : lineOf(option->palette), focus ? 2.5 : 1.5);
}

void drawChoice(const QStyleOption* option, QPainter* painter) {
  drawField(option, painter);
  drawChevron(option, painter);
}

QRect sliderOf(const QStyleOptionSlider& bar) {
  const bool across = bar.orientation == Qt::Horizontal;
  const int room = across ? bar.rect.width() : bar.rect.height();
  const qint64 range = qint64(bar.maximum) - bar.minimum;
  const qint64 whole = range + bar.pageStep;
  const int length = whole <= 0 ? room
                                : static_cast<int>(std::clamp<qint64>(room * qint64(bar.pageStep) / whole,
                                                                      std::min(room, kLeastSlider), room));
  const int at = QStyle::sliderPositionFromValue(bar.minimum, bar.maximum, bar.sliderPosition, room - length,
                                                 bar.upsideDown);
  return across ? QRect(bar.rect.left() + at, bar.rect.top(), length, bar.rect.height())
                : QRect(bar.rect.left(), bar.rect.top() + at, bar.rect.width(), length);
}

}  // namespace cw
