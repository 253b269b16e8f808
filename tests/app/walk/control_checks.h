#pragma once
#include <QImage>

#include "tests/app/walk/complaint.h"
#include "tests/app/walk/worst.h"

namespace cw {

/// Everything within that can be touched now: buttons, fields, choices, rows of lists.
struct Target {
  const QWidget* widget;
  QRectF rect;  ///< in the window
};
std::vector<Target> targetsIn(const QWidget& within);

/// Sizes and gaps in millimetres against the bench's bounds.
Complaints checkTargets(const QWidget& within, double dots, Worst& measured);

/// Outline or fill of each control against the ground around it.
double edgeContrast(const QImage& picture, const QRect& control);
Complaints checkControls(const QWidget& within, const QImage& picture, Worst& measured);

/// Nothing has to be scrolled sideways to be read.
Complaints checkAcross(const QWidget& within);

/// Widgets that a key reaches and a screen reader cannot name.
Complaints checkNames(const QWidget& within);

/// Presses Tab all the way round: everything that takes Tab is reached, nothing holds it, and within a column
/// it goes down, within a row to the right.
Complaints checkFocusOrder(QWidget& window);

}  // namespace cw
