#pragma once
#include <QApplication>
#include <QDir>
#include <QSet>
#include <QWidget>

#include "app/common/settings.h"
#include "app/look/colours.h"
#include "app/look/measures.h"
#include "app/look/style.h"

namespace cw {

/// The program's look in that scheme, for all windows.
inline void useLook(Scheme scheme) {
  Settings().setScheme(scheme);
  QApplication::setStyle(new WorkshopStyle);
  QApplication::setPalette(paletteOf(scheme));
  QApplication::setFont(deskFont());
}

/// Puts a picture of the widget into the build's folder of pictures, for people to look at.
inline bool savePicture(QWidget& widget, const QString& name) {
  static QSet<QString> taken;  // many tests come by the same moments
  if (taken.contains(name)) return true;
  taken.insert(name);
  const QString folder = QStringLiteral(CW_PICTURES);
  QDir().mkpath(folder);
  constexpr int kQuickly = 80;  // hardly packed: the packing took longer than the drawing
  const QImage opaque = widget.grab().toImage().convertToFormat(QImage::Format_RGB888);
  return opaque.save(folder + QLatin1Char('/') + name + QStringLiteral(".png"), "PNG", kQuickly);
}

/// Widgets that a key can reach and a screen reader cannot name.
inline QStringList namelessFocusTargets(const QWidget& within) {
  QStringList out;
  for (const QWidget* widget : within.findChildren<QWidget*>()) {
    const QString text = widget->property("text").toString();
    const bool reachable = widget->focusPolicy() != Qt::NoFocus && widget->isVisible();
    if (reachable && widget->accessibleName().isEmpty() && text.isEmpty())
      out << QLatin1String(widget->metaObject()->className()) + QLatin1Char(' ') + widget->objectName();
  }
  return out;
}

}  // namespace cw
