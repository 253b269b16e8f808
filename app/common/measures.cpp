#include "app/common/measures.h"

#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QScreen>
#include <QWidget>
#include <cmath>

#include "app/common/settings.h"

namespace cw {
namespace {

bool isProportional(const QString& family) {
  const QFontMetricsF metrics{QFont(family, 20)};
  return metrics.horizontalAdvance(QLatin1Char('m')) > metrics.horizontalAdvance(QLatin1Char('i')) * 1.2;
}

double dotsPerMillimetre(const QWidget* widget) {
  if (const double own = Settings().dotsPerMillimetre(); own > 0) return own;
  const QScreen* screen = widget != nullptr ? widget->screen() : QApplication::primaryScreen();
  const double dots = screen != nullptr ? screen->physicalDotsPerInch() : 96;
  // Screens that do not know their size answer nonsense; then the usual desktop density is the better guess.
  return (dots >= 60 && dots <= 400 ? dots : 96) / 25.4;
}

}  // namespace

double pixels(double millimetres, const QWidget* widget) {
  return millimetres * dotsPerMillimetre(widget);
}

QString textFamily() {
  static const QString kFamily = [] {
    const QString wanted = QStringLiteral("B612");
    const bool there = QFontDatabase::hasFamily(wanted) && QFontInfo(QFont(wanted)).family() == wanted;
    return there && isProportional(wanted) ? wanted
                                           : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  }();
  return kFamily;
}

QFont fontOfHeight(double millimetres, const QWidget* widget, QFont::Weight weight) {
  QFont font(textFamily());
  font.setWeight(weight);
  font.setPixelSize(100);
  const double capitals = QFontMetricsF(font).capHeight() / 100;
  font.setPixelSize(static_cast<int>(std::ceil(pixels(millimetres, widget) / capitals)));
  return font;
}

QFont deskFont(int steps, QFont::Weight weight) {
  QFont font(textFamily());
  font.setWeight(weight);
  font.setPointSizeF(10.5 * Settings().textScale() * std::pow(1.25, steps));
  return font;
}

}  // namespace cw
