#include "app/common/settings.h"

#include <QLocale>
#include <QSettings>

namespace cw {
namespace {

QVariant value(const char* key) {
  return QSettings().value(QLatin1String(key));
}
void setValue(const char* key, const QVariant& value) {
  QSettings().setValue(QLatin1String(key), value);
}

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
