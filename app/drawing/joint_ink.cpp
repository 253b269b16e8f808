#include "app/drawing/joint_ink.h"

#include "app/look/colours.h"

namespace cw {

JointInk JointInk::ofPalette(const QPalette& palette, const QFont& font) {
  return {sheetOf(palette),
          inkOf(palette),
          lineOf(palette),
          accentOf(palette),
          onAccentOf(palette),
          warningOf(palette),
          font};
}

JointInk JointInk::ofPaper(const QFont& font) {
  return {Qt::white, Qt::black, QColor(90, 90, 90), Qt::black, Qt::white, Qt::black, font};
}

}  // namespace cw
