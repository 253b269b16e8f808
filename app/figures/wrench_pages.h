#pragma once

class QWidget;

namespace cw {

class FigureDesk;

/// The wrench's setting through an adapter, and back.
QWidget* makeSettingPage(FigureDesk& desk, QWidget* parent);
QWidget* makeAppliedPage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
