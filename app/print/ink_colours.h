#pragma once
#include <QColor>

namespace cw {

// Ink on white paper, in greys alone so that a black-and-white print loses nothing.
inline constexpr QColor kInk(0x17, 0x19, 0x1C);
inline constexpr QColor kSecondInk(0x43, 0x46, 0x4B);
inline constexpr QColor kRule(0xB4, 0xB0, 0xA4);
inline constexpr QColor kStampTint(0xDC, 0xDB, 0xD8);  ///< text printed over it stays legible

}  // namespace cw
