#pragma once
#include <QTextCharFormat>

#include "core/report/document.h"

class QAbstractTextDocumentLayout;
class QFontMetricsF;
class QWidget;

namespace cw {

// What stands in a text without being text: joints, and gauges of a value between its limits. Both are drawn
// when they are painted, in the widget's palette of that moment.

QTextCharFormat jointFormat(const JointDrawing& drawing);
QTextCharFormat gaugeFormat(const Gauge& gauge);
QSizeF gaugeSize(const QFontMetricsF& metrics);

/// Teaches a layout to draw them as `widget` looks, which must outlive it.
void registerDocumentObjects(QAbstractTextDocumentLayout& layout, QWidget& widget);

}  // namespace cw

Q_DECLARE_METATYPE(cw::JointDrawing)
Q_DECLARE_METATYPE(cw::Gauge)
