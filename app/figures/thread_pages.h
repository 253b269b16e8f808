#pragma once

class QWidget;

namespace cw {

class FigureDesk;

/// What gives way first in a tapped hole.
QWidget* makeStrippingPage(FigureDesk& desk, QWidget* parent);
/// Turn from snug to a clamp load.
QWidget* makeAnglePage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
