#include "core/settling/settling_cells.h"

#include <algorithm>
#include <cmath>

#include "core/settling/plate_flexibility.h"
#include "core/settling/plate_outline.h"
#include "core/settling/plate_polygon.h"

namespace cw {
namespace {

std::vector<CellPatch> ringCells(const Annulus& ring, int bolts, Patches& patches) {
  const int around = bolts * std::max(4, (32 + bolts - 1) / bolts);
  const Length cell = kPi * (ring.outer + ring.inner) / around;
  const int rows = std::clamp(static_cast<int>((ring.outer - ring.inner) / cell + 0.5), 1, 4);
  const Length width = (ring.outer - ring.inner) / rows;
  std::vector<CellPatch> cells;
  for (int row = 0; row < rows; ++row) {
    const Length radius = ring.inner + width * (row + 0.5);
    const int form = patches.add(sectorForm(radius, width, radians(kPi / around)));
    const double share = 2 * (radius / (ring.outer + ring.inner)) / (rows * around);
    for (int i = 0; i < around; ++i) {
      const double angle = 2 * kPi * i / around;
      cells.push_back({{{radius * std::cos(angle), radius * std::sin(angle)}, radians(angle), form}, share});
    }
  }
  return cells;
}

/// Sorted edges of all bands along one axis, with the gaps between them cut to at most `pitch`.
std::vector<double> gridLines(std::vector<double> edges, double pitch) {
  std::sort(edges.begin(), edges.end());
  std::vector<double> lines{edges.front()};
  for (const double edge : edges) {
    const double gap = edge - lines.back();
    if (gap < 1e-9) continue;
    const int parts = static_cast<int>(std::ceil(gap / pitch - 1e-9));
    const double from = lines.back();
    for (int i = 1; i <= parts; ++i) lines.push_back(from + gap * i / parts);
  }
  return lines;
}

std::vector<CellPatch> pathCells(const GasketPath& path, int bolts, Patches& patches) {
  const Length around = polygonLength(path.corners);
  std::vector<CellPatch> cells;
  for (const PathPiece& piece : pathPieces(path, std::max(32, 4 * bolts), patches))
    cells.push_back({piece.patch, piece.length / around});
  return cells;
}

std::vector<CellPatch> bandCells(const std::vector<Band>& bands, Patches& patches) {
  constexpr int kAbout = 400;
  const double area = gasketArea(bands).si();
  const double pitch = std::sqrt(area / kAbout);
  std::vector<double> edgesX;
  std::vector<double> edgesY;
  for (const Band& band : bands) {
    edgesX.insert(edgesX.end(), {band.fromX.si(), band.toX.si()});
    edgesY.insert(edgesY.end(), {band.fromY.si(), band.toY.si()});
  }
  const std::vector<double> x = gridLines(std::move(edgesX), pitch);
  const std::vector<double> y = gridLines(std::move(edgesY), pitch);
  std::vector<CellPatch> cells;
  for (std::size_t i = 0; i + 1 < x.size(); ++i)
    for (std::size_t j = 0; j + 1 < y.size(); ++j) {
      const double midX = (x[i] + x[i + 1]) / 2;
      const double midY = (y[j] + y[j + 1]) / 2;
      if (coverage(bands, metres(midX), metres(midY)) <= 0) continue;
      const double width = x[i + 1] - x[i];
      const double height = y[j + 1] - y[j];
      const int form = patches.add(rectangleForm(metres(width), metres(height)));
      cells.push_back({{{metres(midX), metres(midY)}, {}, form}, width * height / area});
    }
  return cells;
}

}  // namespace

std::vector<CellPatch> gasketCells(const GasketShape& gasket, int bolts, Patches& patches) {
  if (const auto* ring = std::get_if<Annulus>(&gasket)) return ringCells(*ring, bolts, patches);
  if (const auto* path = std::get_if<GasketPath>(&gasket)) return pathCells(*path, bolts, patches);
  return bandCells(std::get<std::vector<Band>>(gasket), patches);
}

}  // namespace cw
