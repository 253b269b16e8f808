#pragma once
#include <QRect>

class QColor;
class QPainter;

namespace cw {

/// 1, 2 or 5 times a power of ten, not below `value`, which is above 0.
double niceAbove(double value);

/// Lines `pitch` pixels apart through `zero`, every fifth stronger, the two through zero strongest.
void paintGrid(QPainter& painter, const QRect& where, const QPointF& zero, qreal pitch, QColor colour);

}  // namespace cw
