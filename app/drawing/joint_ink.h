#pragma once
#include <QColor>
#include <QFont>
#include <QPalette>

namespace cw {

/// What a joint is drawn with: the window's palette, or ink on white paper.
struct JointInk {
  QColor face, ink, line, accent, onAccent, warning;
  QFont font;  ///< of the words; labels are at least as large where there is room

  static JointInk ofPalette(const QPalette& palette, const QFont& font);
  static JointInk ofPaper(const QFont& font);
};

}  // namespace cw
