#pragma once

namespace cw {

/// Keeps the fixed-pitch sister of B612 from answering to its name: Debian's B612 Mono files also carry the
/// family "B612", and Qt then sets running text in them. Call before the application object exists.
void tellFontsApart();

}  // namespace cw
