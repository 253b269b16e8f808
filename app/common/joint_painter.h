#pragma once
#include <QColor>
#include <QFont>
#include <QPalette>
#include <QRectF>

#include "core/report/drawing.h"

class QPainter;

namespace cw {

/// What a joint is drawn with: the window's palette, or ink on white paper.
struct JointInk {
  QColor face, ink, line, accent, onAccent, warning;
  QFont font;  ///< of the words at the near edge; labels follow the marks' size

  static JointInk ofPalette(const QPalette& palette, const QFont& font);
  static JointInk ofPaper(const QFont& font);
};

struct JointDrawingOptions {
  bool showPath = true;
  bool showOrder = false;  ///< small order numbers beside the positions
  QString standHere;       ///< words at the near edge; empty for none
};

/// Draws the joint into the rectangle, at any size, as vectors where the device takes them. State is shape
/// first: done filled with a tick, now larger and ringed by dashes, to do outlined, redone with a double
/// ring, trouble a diamond.
void paintJoint(QPainter& painter, const QRectF& where, const JointDrawing& drawing, const JointInk& ink,
                const JointDrawingOptions& options = {});

/// Where a position's mark lies, for touch and for accessibility.
QRectF markOf(const QRectF& where, const JointDrawing& drawing, const QFont& font,
              const JointDrawingOptions& options, std::size_t position);

}  // namespace cw
