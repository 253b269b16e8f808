#pragma once
#include <QFont>
#include <QPalette>

class QLabel;
class QString;

namespace cw {

/// A label of plain text that wraps, in a role's colour so that it follows a change of scheme.
QLabel* textLabel(const QString& text, const QFont& font, QPalette::ColorRole ink = QPalette::WindowText);

/// The word CAUTION and its text on the caution's ground.
QLabel* cautionLabel(const QString& text, const QFont& font);

}  // namespace cw
