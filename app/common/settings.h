#pragma once
#include <QString>

#include "app/look/look_settings.h"
#include "core/units/parse.h"

namespace cw {

/// What this user set on this computer; nothing of the shop's. Each key stands once, here.
class Settings : public LookSettings {
 public:
  QString shopFile() const;
  void setShopFile(const QString& path);

  QString keyFile() const;  ///< the shop's secret sealing key
  void setKeyFile(const QString& path);

  QString place() const;  ///< shown last
  void setPlace(const QString& name);

  QString figureInput(const QString& input) const;  ///< what stands in an input of Figures
  void setFigureInput(const QString& input, const QString& text);
  QString figureUnit(const QString& input) const;  ///< code of the unit that was typed there last
  void setFigureUnit(const QString& input, const QString& code);
  QString figure() const;  ///< computation shown last
  void setFigure(const QString& key);

  DecimalMark decimalMark() const;  ///< the locale's
};

}  // namespace cw
