#pragma once
#include <optional>
#include <vector>

#include "core/pattern/layout.h"
#include "core/pattern/plane.h"

namespace cw {

/// The seats of one circle, going round from its first position with the numbering: the index of the
/// position there, or nothing where the hole is left out.
using Ring = std::vector<std::optional<std::size_t>>;

/// The circles that make up a layout, the innermost first. Typed coordinates count as a circle when each
/// lies within 2 % of the radius of its equally spaced place. OutOfRange, saying why, where they do not.
Result<std::vector<Ring>> rings(const Layout& layout);

/// True if the places are equally spaced on one circle; `round` is their order going round.
bool isRing(const std::vector<Place>& places, const std::vector<std::size_t>& round);

}  // namespace cw
