#pragma once
#include <QColor>
#include <QPalette>

namespace cw {

enum class Scheme { Light, Dark };

/// The program's colours as a palette, so that a widget takes them by role and a change of scheme reaches
/// all: Window ground, Base raised sheet, WindowText ink, PlaceholderText second ink, Mid line, Highlight
/// accent, HighlightedText text on it, ToolTipBase caution, ToolTipText text on it, BrightText warning.
QPalette paletteOf(Scheme scheme);

// What the roles mean here, for widgets that paint themselves.
QColor groundOf(const QPalette& palette);
QColor sheetOf(const QPalette& palette);
QColor inkOf(const QPalette& palette);
QColor secondInkOf(const QPalette& palette);
QColor lineOf(const QPalette& palette);
QColor accentOf(const QPalette& palette);
QColor onAccentOf(const QPalette& palette);
QColor cautionOf(const QPalette& palette);
QColor onCautionOf(const QPalette& palette);
QColor warningOf(const QPalette& palette);

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.2, relative luminance).
double contrast(const QColor& a, const QColor& b);

}  // namespace cw
