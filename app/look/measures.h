#pragma once
#include <QFont>
#include <QString>

class QWidget;

namespace cw {

/// Sizes on the glass. At the bench they are millimetres, taken from the screen's physical size or from the
/// user's own measurement of it; at the desk they follow the system's font and the text scale.
/// Heights are those of capitals and figures. Source: 20 arc-minutes at 1 m, NUREG-0700 rev. 3, 11.4.1.5-1.
namespace bench {
inline constexpr double kNumberHeight = 11;  ///< mm, the torque
inline constexpr double kTextHeight = 5.8;   ///< mm, what is read at a metre
inline constexpr double kLabelHeight = 4.4;  ///< mm, side labels
inline constexpr double kTarget = 15;        ///< mm, least height and width of a control
inline constexpr double kMainTargetHeight = 22, kMainTargetWidth = 44;  ///< mm, to sign and go on
inline constexpr double kGap = 4;                                       ///< mm between targets
}  // namespace bench

/// Pixels for so many millimetres on the screen that shows `widget`.
double pixels(double millimetres, const QWidget* widget);

/// Family for running text: B612, unless the system's B612 is its fixed-pitch sister; then the system's sans.
QString textFamily();

/// How much larger than its measures bench text stands now: the user's text scale as far as the window has
/// room for it. Bench text at 1 is already twice the desk's.
double benchScale();
double benchScaleIn(const QWidget& window);

/// Brings every font that `root` and what is in it were given of their own from one scale to another, and
/// keeps `now` for what is made later.
void setBenchScale(QWidget& root, double now);
void rescaleText(QWidget& root, double before, double now);

/// A font whose capitals are so many millimetres high on that screen, times the bench's scale.
QFont fontOfHeight(double millimetres, const QWidget* widget, QFont::Weight weight = QFont::Normal);

/// The desk's font at the current text scale, `steps` sizes larger (each a quarter).
QFont deskFont(int steps = 0, QFont::Weight weight = QFont::Normal);

}  // namespace cw
