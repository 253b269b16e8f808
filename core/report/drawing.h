#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/record/job.h"

namespace cw {

/// A point of a drawing: x to the right, y down, in shares of half the drawing's width. Everything lies
/// within -1 … 1 both ways, the joint as its layout's view shows it.
struct DrawingPoint {
  double x = 0, y = 0;
  bool operator==(const DrawingPoint&) const = default;
};

struct DrawingCircle {
  DrawingPoint centre;
  double radius = 0;
};

/// How a position stands; drawn by shape before colour.
enum class PositionState { ToDo, Now, Done, Redone, Trouble };

struct DrawnPosition {
  DrawingPoint at;
  std::string label;
  int order = 0;  ///< place in the tightening order, from 1
  PositionState state = PositionState::ToDo;
};

/// A joint's face in plain numbers, for the window and for paper alike.
struct JointDrawing {
  Point middle;                        ///< what is drawn in the middle
  Length unit;                         ///< what is drawn 1 long
  std::optional<DrawingCircle> edge;   ///< a round outline
  std::vector<DrawingPoint> outline;   ///< corners of an outline that is not round
  std::vector<DrawingCircle> circles;  ///< that the fasteners sit on
  std::vector<DrawnPosition> positions;
  double pitch = 0;   ///< between the two nearest positions
  double radius = 0;  ///< of a position's mark, so that neighbours stay apart
};

/// A layout with nothing done; `order` holds labels and may have gaps and repeats. Empty if the layout
/// cannot be laid out.
JointDrawing drawingOf(const Layout& layout, const std::vector<std::string>& order);

/// The joint with nothing done (the layout of a sheet that was read can always be laid out).
JointDrawing drawingOf(const Joint& joint);

/// The joint of a tighten step as the job stands: which position is now, which are done, done again (after
/// trouble, or after the joint was taken apart) or in trouble (would not run by finger, outside the
/// tolerance).
JointDrawing drawingOf(const Job& job, std::size_t step);

}  // namespace cw
