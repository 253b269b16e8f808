#include "app/look/colours.h"

#include <algorithm>
#include <cmath>

namespace cw {
namespace {

struct ColourTable {
  QRgb ground, sheet, ink, secondInk, line, accent, onAccent, caution, onCaution, warning;
};

constexpr ColourTable kLight{0xFFF4F1E8, 0xFFFFFDF7, 0xFF17191C, 0xFF43464B, 0xFF8A8577,
                             0xFF0B4F55, 0xFFFFFDF7, 0xFFF3C649, 0xFF17191C, 0xFF8E1616};
constexpr ColourTable kDark{0xFF14171A, 0xFF1D2125, 0xFFEFEBDF, 0xFFC4BFB1, 0xFF7D8288,
                            0xFF86D6CB, 0xFF14171A, 0xFFE0AF2E, 0xFF17191C, 0xFFF2A3A3};

double luminance(const QColor& colour) {
  const auto linear = [](double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * linear(static_cast<double>(colour.redF())) +
         0.7152 * linear(static_cast<double>(colour.greenF())) +
         0.0722 * linear(static_cast<double>(colour.blueF()));
}

}  // namespace

QPalette paletteOf(Scheme scheme) {
  const ColourTable& table = scheme == Scheme::Light ? kLight : kDark;
  QPalette palette;
  const auto set = [&](QPalette::ColorRole role, QRgb colour) {
    palette.setColor(role, QColor::fromRgb(colour));
  };
  set(QPalette::Window, table.ground);
  set(QPalette::Base, table.sheet);
  set(QPalette::AlternateBase, table.ground);
  set(QPalette::Button, table.ground);
  set(QPalette::WindowText, table.ink);
  set(QPalette::Text, table.ink);
  set(QPalette::ButtonText, table.ink);
  set(QPalette::PlaceholderText, table.secondInk);
  set(QPalette::Mid, table.line);
  set(QPalette::Dark, table.line);
  set(QPalette::Light, table.sheet);
  set(QPalette::Midlight, table.sheet);
  set(QPalette::Shadow, table.line);
  set(QPalette::Highlight, table.accent);
  set(QPalette::HighlightedText, table.onAccent);
  set(QPalette::Link, table.accent);
  set(QPalette::LinkVisited, table.accent);
  set(QPalette::ToolTipBase, table.caution);
  set(QPalette::ToolTipText, table.onCaution);
  set(QPalette::BrightText, table.warning);
  // A control that is off keeps readable words; its outline fades instead.
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, QColor::fromRgb(table.secondInk));
  return palette;
}

QColor groundOf(const QPalette& palette) {
  return palette.color(QPalette::Window);
}
QColor sheetOf(const QPalette& palette) {
  return palette.color(QPalette::Base);
}
QColor inkOf(const QPalette& palette) {
  return palette.color(QPalette::WindowText);
}
QColor secondInkOf(const QPalette& palette) {
  return palette.color(QPalette::PlaceholderText);
}
QColor lineOf(const QPalette& palette) {
  return palette.color(QPalette::Mid);
}
QColor accentOf(const QPalette& palette) {
  return palette.color(QPalette::Highlight);
}
QColor onAccentOf(const QPalette& palette) {
  return palette.color(QPalette::HighlightedText);
}
QColor cautionOf(const QPalette& palette) {
  return palette.color(QPalette::ToolTipBase);
}
QColor onCautionOf(const QPalette& palette) {
  return palette.color(QPalette::ToolTipText);
}
QColor warningOf(const QPalette& palette) {
  return palette.color(QPalette::BrightText);
}

double contrast(const QColor& a, const QColor& b) {
  const double lighter = std::max(luminance(a), luminance(b)), darker = std::min(luminance(a), luminance(b));
  return (lighter + 0.05) / (darker + 0.05);
}

}  // namespace cw
