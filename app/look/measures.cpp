#include "app/look/measures.h"

#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QScreen>
#include <QWidget>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/look/look_settings.h"

namespace cw {
namespace {

/// The family of running text and what must be known of it, measured once at a size where rounding is small.
struct Face {
  QString family;
  double capHeight;  ///< of the size in pixels
};

constexpr int kMeasured = 100;  // pixels

QFont measuredFont(const QString& family) {
  QFont font(family);
  font.setPixelSize(kMeasured);
  return font;
}

bool isProportional(const QFontMetricsF& metrics) {
  return metrics.horizontalAdvance(QLatin1Char('m')) > metrics.horizontalAdvance(QLatin1Char('i')) * 1.2;
}

Face findFace() {
  const QString wanted = QStringLiteral("B612");
  const QFont font = measuredFont(wanted);
  const QFontMetricsF metrics(font);
  if (QFontInfo(font).family() == wanted && isProportional(metrics))
    return {wanted, metrics.capHeight() / kMeasured};
  const QString family = QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  return {family, QFontMetricsF(measuredFont(family)).capHeight() / kMeasured};
}

const Face& face() {
  static const Face kFace = findFace();
  return kFace;
}

double dotsPerMillimetre(const QWidget* widget) {
  if (const double own = LookSettings().dotsPerMillimetre(); own > 0) return own;
  const QScreen* screen = widget != nullptr ? widget->screen() : QApplication::primaryScreen();
  const double dots = screen != nullptr ? screen->physicalDotsPerInch() : 96;
  // Screens that do not know their size answer nonsense; then the usual desktop density is the better guess.
  return (dots >= 60 && dots <= 400 ? dots : 96) / 25.4;
}

/// What the bench needs at scale 1, of the whole window: its three columns and foot.
constexpr double kBenchWidth = 300, kBenchHeight = 200;  // mm

double& benchScaleNow() {
  static double scale = 1;
  return scale;
}

/// A font of its own is kept as it was at scale 1, so that many changes do not add up their roundings.
void rescaleOne(QWidget& widget, double before, double now) {
  static constexpr char kAtOne[] = "fontAtScaleOne";
  if (!widget.testAttribute(Qt::WA_SetFont)) return;
  QFont font = widget.font();
  const bool byPixels = font.pixelSize() > 0;
  const double size = byPixels ? font.pixelSize() : font.pointSizeF();
  if (!widget.property(kAtOne).isValid()) widget.setProperty(kAtOne, size / before);
  const double wanted = widget.property(kAtOne).toDouble() * now;
  if (byPixels)
    font.setPixelSize(static_cast<int>(std::lround(wanted)));
  else
    font.setPointSizeF(wanted);
  widget.setFont(font);
}

}  // namespace

double benchScale() {
  return benchScaleNow();
}

double benchScaleIn(const QWidget& window) {
  const double room = std::min(window.width() / pixels(kBenchWidth, &window),
                               window.height() / pixels(kBenchHeight, &window));
  return std::clamp(LookSettings().textScale(), 1.0, std::max(1.0, room));
}

void rescaleText(QWidget& root, double before, double now) {
  for (QWidget* widget : root.findChildren<QWidget*>()) rescaleOne(*widget, before, now);
}

void setBenchScale(QWidget& root, double now) {
  const double before = std::exchange(benchScaleNow(), now);
  if (before != now) rescaleText(root, before, now);
}

double pixels(double millimetres, const QWidget* widget) {
  return millimetres * dotsPerMillimetre(widget);
}

QString textFamily() {
  return face().family;
}

QFont fontOfHeight(double millimetres, const QWidget* widget, QFont::Weight weight) {
  QFont font(textFamily());
  font.setWeight(weight);
  const double wanted = pixels(millimetres, widget) * benchScale() / face().capHeight;
  font.setPixelSize(static_cast<int>(std::ceil(wanted)));
  return font;
}

QFont deskFont(int steps, QFont::Weight weight) {
  QFont font(textFamily());
  font.setWeight(weight);
  font.setPointSizeF(10.5 * LookSettings().textScale() * std::pow(1.25, steps));
  return font;
}

}  // namespace cw
