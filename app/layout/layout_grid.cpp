#include "app/layout/layout_grid.h"

#include <QPainter>
#include <cmath>

namespace cw {

double niceAbove(double value) {
  const double power = std::pow(10, std::floor(std::log10(value)));
  for (const double factor : {1.0, 2.0, 5.0})
    if (factor * power >= value * 0.999) return factor * power;
  return 10 * power;
}

void paintGrid(QPainter& painter, const QRect& where, const QPointF& zero, qreal pitch, QColor colour) {
  const auto draw = [&](qreal middle, int end, const auto& lineAt) {
    for (long n = std::lround(std::ceil(-middle / pitch)); middle + static_cast<qreal>(n) * pitch < end;
         ++n) {
      colour.setAlphaF(n == 0 ? 0.7F : n % 5 == 0 ? 0.3F : 0.14F);
      painter.setPen(QPen(colour, 1));
      painter.drawLine(lineAt(std::round(middle + static_cast<qreal>(n) * pitch) + 0.5));
    }
  };
  draw(zero.x(), where.width(), [&](qreal x) { return QLineF(x, 0, x, where.height()); });
  draw(zero.y(), where.height(), [&](qreal y) { return QLineF(0, y, where.width(), y); });
}

}  // namespace cw
