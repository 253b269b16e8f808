#pragma once

class QWidget;

namespace cw {

class FigureDesk;

/// A torque in every unit.
QWidget* makeConvertPage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
