#pragma once
#include <string>
#include <vector>

#include "core/pattern/order.h"
#include "core/pattern/passes.h"

namespace cw {

/// A layout and how it is tightened: what an author edits before a sheet holds it.
struct Pattern {
  Layout layout{Circle{8, millimetres(150)}};
  OrderRule rule = OrderRule::Star;
  std::vector<std::string> byHand{};  ///< labels in an order of the author's own; empty: the rule's
  bool loosens = false;               ///< the other way round: the order in reverse
  std::size_t tools = 1;              ///< that work at the same time
  PassPlan passes{};
  bool operator==(const Pattern&) const = default;
};

/// The labels one after the other; an order written by hand as it stands, with its gaps and repeats. Errors
/// of `positions` and `tighteningOrder`.
Result<std::vector<std::string>> orderLabels(const Pattern& pattern);

/// The order as positions. Beside those errors, InvalidInput with the first of `reviewOrder` where an order
/// written by hand is no order.
Result<Order> orderOf(const Pattern& pattern);

/// The point of the part that is seen there: undoes `seen`.
Point onPart(const Point& seen, const View& view);

/// The holes of the layout's shape that hold a fastener, from 1, in the numbering of `positions`.
std::vector<std::size_t> keptHoles(const Layout& layout);

/// The same holes as free positions, which can be moved one by one; the labels stay. Errors of `positions`.
Result<Layout> freed(const Layout& layout);

/// The layout without that position (an index): a free one is gone, any other leaves its hole open. Labels
/// of the author's own stay on their holes; groups are dissolved.
Layout withoutPosition(const Layout& layout, std::size_t index);

/// Labels of the author's own for so many positions: those there are, then numbers that none bears yet.
std::vector<std::string> ownLabelsFor(const Layout& layout, std::size_t count);

/// A round outline that holds the positions with a rim around them.
RoundOutline usualOutline(const Layout& layout);

}  // namespace cw
