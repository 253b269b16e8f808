#include "app/look/look_settings.h"

#include <QSettings>
#include <algorithm>

namespace cw {
namespace {

constexpr char kScheme[] = "look/scheme";
constexpr char kTextScale[] = "look/textScale";
constexpr char kDots[] = "look/dotsPerMillimetre";

QVariant kept(const char* key, const QVariant& otherwise = {}) {
  return QSettings().value(QLatin1String(key), otherwise);
}
void keep(const char* key, const QVariant& value) {
  QSettings().setValue(QLatin1String(key), value);
}

}  // namespace

Scheme LookSettings::scheme() const {
  return kept(kScheme).toString() == QLatin1String("dark") ? Scheme::Dark : Scheme::Light;
}
void LookSettings::setScheme(Scheme scheme) {
  keep(kScheme, QLatin1String(scheme == Scheme::Dark ? "dark" : "light"));
}

double LookSettings::textScale() const {
  return std::clamp(kept(kTextScale, 1.0).toDouble(), 1.0, 2.0);
}
void LookSettings::setTextScale(double scale) {
  keep(kTextScale, std::clamp(scale, 1.0, 2.0));
}

double LookSettings::dotsPerMillimetre() const {
  const double dots = kept(kDots, 0.0).toDouble();
  return dots >= 2 && dots <= 20 ? dots : 0;
}
void LookSettings::setDotsPerMillimetre(double dots) {
  keep(kDots, dots);
}

}  // namespace cw
