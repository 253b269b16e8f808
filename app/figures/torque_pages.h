#pragma once

class QWidget;

namespace cw {

class FigureDesk;

/// A torque in every unit.
QWidget* makeConvertPage(FigureDesk& desk, QWidget* parent);
/// The guard's word on a torque.
QWidget* makeGuardPage(FigureDesk& desk, QWidget* parent);
/// Clamp load behind a torque, and the torque for a clamp load.
QWidget* makeClampPage(FigureDesk& desk, QWidget* parent);
QWidget* makeTorquePage(FigureDesk& desk, QWidget* parent);
/// The same clamp load in another condition.
QWidget* makeConditionPage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
