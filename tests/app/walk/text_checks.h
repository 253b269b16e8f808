#pragma once
#include <QImage>

#include "tests/app/walk/complaint.h"
#include "tests/app/walk/painted_text.h"
#include "tests/app/walk/worst.h"

namespace cw {

TextRole roleOf(const QWidget& widget);

/// Each text against the height that its role asks for; `dots` a millimetre, `scale` of the desk's text.
Complaints checkHeights(const std::vector<PaintedText>& texts, double dots, double scale, Worst& measured);

/// Contrast of a text's ink with what is behind it in the picture: the commonest colour there that is not the
/// ink itself.
double contrastIn(const QImage& picture, const PaintedText& text);
Complaints checkContrast(const std::vector<PaintedText>& texts, const QImage& picture, Worst& measured);

/// Texts that stick out of their widget, of a parent that cannot scroll to them, or of the window, that the
/// painter cuts, or that were shortened with an ellipsis.
Complaints checkCut(const std::vector<PaintedText>& texts);
Complaints checkOverlap(const std::vector<PaintedText>& texts);

/// Running text in a face where every letter is equally wide.
Complaints checkProportional(const std::vector<PaintedText>& texts);

}  // namespace cw
