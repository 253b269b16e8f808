#include "app/common/settings.h"

#include <QLocale>
#include <QSettings>
#include <algorithm>

namespace cw {
namespace {

QVariant value(const char* key, const QVariant& otherwise = {}) {
  return QSettings().value(QLatin1String(key), otherwise);
}
void setValue(const char* key, const QVariant& value) {
  QSettings().setValue(QLatin1String(key), value);
}

constexpr char kScheme[] = "look/scheme";
constexpr char kTextScale[] = "look/textScale";
constexpr char kDots[] = "look/dotsPerMillimetre";
constexpr char kShopFile[] = "shop/file";
constexpr char kKeyFile[] = "shop/key";
constexpr char kPlace[] = "window/place";
constexpr char kFigure[] = "window/figure";

QString inputKey(const QString& input) {
  return QLatin1String("figures/input/") + input;
}
QString unitKey(const QString& input) {
  return QLatin1String("figures/unit/") + input;
}

}  // namespace

Scheme Settings::scheme() const {
  return value(kScheme).toString() == QLatin1String("dark") ? Scheme::Dark : Scheme::Light;
}
void Settings::setScheme(Scheme scheme) {
  setValue(kScheme, QLatin1String(scheme == Scheme::Dark ? "dark" : "light"));
}

double Settings::textScale() const {
  return std::clamp(value(kTextScale, 1.0).toDouble(), 1.0, 2.0);
}
void Settings::setTextScale(double scale) {
  setValue(kTextScale, std::clamp(scale, 1.0, 2.0));
}

double Settings::dotsPerMillimetre() const {
  const double dots = value(kDots, 0.0).toDouble();
  return dots >= 2 && dots <= 20 ? dots : 0;
}
void Settings::setDotsPerMillimetre(double dots) {
  setValue(kDots, dots);
}

QString Settings::shopFile() const {
  return value(kShopFile).toString();
}
void Settings::setShopFile(const QString& path) {
  setValue(kShopFile, path);
}

QString Settings::keyFile() const {
  return value(kKeyFile).toString();
}
void Settings::setKeyFile(const QString& path) {
  setValue(kKeyFile, path);
}

QString Settings::place() const {
  return value(kPlace).toString();
}
void Settings::setPlace(const QString& name) {
  setValue(kPlace, name);
}

QString Settings::figureInput(const QString& input) const {
  return QSettings().value(inputKey(input)).toString();
}
void Settings::setFigureInput(const QString& input, const QString& text) {
  QSettings().setValue(inputKey(input), text);
}

QString Settings::figureUnit(const QString& input) const {
  return QSettings().value(unitKey(input)).toString();
}
void Settings::setFigureUnit(const QString& input, const QString& code) {
  QSettings().setValue(unitKey(input), code);
}

QString Settings::figure() const {
  return value(kFigure).toString();
}
void Settings::setFigure(const QString& key) {
  setValue(kFigure, key);
}

DecimalMark Settings::decimalMark() const {
  return QLocale().decimalPoint() == QLatin1String(",") ? DecimalMark::Comma : DecimalMark::Point;
}

}  // namespace cw
