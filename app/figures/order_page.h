#pragma once

class QWidget;

namespace cw {

class FigureDesk;

/// A layout drawn or typed, its order, the order in words, the passes.
QWidget* makeOrderPage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
