#pragma once
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/pattern/shape.h"
#include "core/units/unit.h"

namespace cw {

/// Where one fastener sits, as the part is seen. Positions count from 1 in orders and files; `label` is
/// what stands on the part.
struct Position {
  std::string label;
  Length x;  ///< to the right
  Length y;  ///< up
  bool operator==(const Position&) const = default;
};

/// From where the part is seen. Labels stay on their holes, and so does every order.
struct View {
  bool mirrored = false;  ///< seen from the other side: left and right change places, before turning
  Angle rotation{};       ///< then turned clockwise
  bool operator==(const View&) const = default;
};

enum class LabelStyle {
  Numbers,  ///< 1, 2, 3 …
  Letters,  ///< A … Z, AA, AB …
  Clock,    ///< 12, 1:30, 3 … as seen in the part's own frame, to the minute
  Own,      ///< as written on the part
};

struct Labels {
  LabelStyle style = LabelStyle::Numbers;
  std::vector<std::string> own{};  ///< one for each position, where style is Own
  bool operator==(const Labels&) const = default;
};

struct RoundOutline {
  Length diameter;
  bool operator==(const RoundOutline&) const = default;
};
struct PolygonOutline {
  std::vector<Point> corners;  ///< 3 and more, in the part's own frame
  bool operator==(const PolygonOutline&) const = default;
};
using Outline = std::variant<RoundOutline, PolygonOutline>;

/// The places of a joint's fasteners and how they are named and seen: the description an author edits and a
/// file stores. Everything else is derived from it.
struct Layout {
  Shape shape;
  const LengthUnit* unit = &kMillimetre;  ///< in which the author gives its lengths
  View view{};
  Labels labels{};
  std::vector<std::size_t> leftOut{};  ///< holes of the shape (from 1) that hold no fastener
  std::vector<std::vector<std::size_t>>
      groups{};  ///< neighbours tightened as one; each position in one group
  std::optional<Outline> outline{};
  bool operator==(const Layout&) const = default;
};

/// The positions as seen, in their numbering: the shape's holes without those left out.
/// OutOfRange as `holes` does, for a hole left out that is not there or twice, for none left, for labels
/// that are missing, empty or repeated, for groups that do not hold each position once, for a bad outline.
Result<std::vector<Position>> positions(const Layout& layout);

/// The same places in the part's own frame, before the view: what orders are made from.
Result<std::vector<Point>> places(const Layout& layout);

/// A polygon outline's corners as seen; empty for a round one and where there is none.
Result<std::vector<Point>> outlineCorners(const Layout& layout);

/// The point as seen.
Point seen(const Point& point, const View& view);

}  // namespace cw
