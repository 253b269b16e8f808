#include "core/settling/plate_patch.h"

#include <cmath>
#include <utility>

#include "core/settling/plate_basis.h"

namespace cw {

int Patches::add(PatchForm form) {
  forms.push_back(std::move(form));
  return static_cast<int>(forms.size()) - 1;
}

PatchForm headForm(Length holeDiameter, Length bearingDiameter) {
  constexpr int kDirections = 24;
  const double inner = holeDiameter.si() / 2;
  const double outer = bearingDiameter.si() / 2;
  const GaussRule radii = gaussRule(3, inner, outer);
  const double area = (outer * outer - inner * inner) / 2;
  PatchForm form;
  for (std::size_t i = 0; i < radii.points.size(); ++i)
    for (int k = 0; k < kDirections; ++k) {
      const double angle = 2 * kPi * (k + 0.5) / kDirections;
      form.push_back({metres(radii.points[i] * std::cos(angle)), metres(radii.points[i] * std::sin(angle)),
                      radii.weights[i] * radii.points[i] / area / kDirections});
    }
  return form;
}

PatchForm sectorForm(Length radius, Length width, Angle halfAngle) {
  const double r0 = radius.si();
  const GaussRule radii = gaussRule(3, r0 - width.si() / 2, r0 + width.si() / 2);
  const GaussRule angles = gaussRule(4, -halfAngle.si(), halfAngle.si());
  const double area = r0 * width.si() * 2 * halfAngle.si();
  PatchForm form;
  for (std::size_t i = 0; i < radii.points.size(); ++i)
    for (std::size_t k = 0; k < angles.points.size(); ++k)
      form.push_back({metres(radii.points[i] * std::cos(angles.points[k]) - r0),
                      metres(radii.points[i] * std::sin(angles.points[k])),
                      radii.weights[i] * radii.points[i] * angles.weights[k] / area});
  return form;
}

PatchForm rectangleForm(Length length, Length width) {
  const GaussRule along = gaussRule(3, -length.si() / 2, length.si() / 2);
  const GaussRule across = gaussRule(3, -width.si() / 2, width.si() / 2);
  PatchForm form;
  for (std::size_t i = 0; i < along.points.size(); ++i)
    for (std::size_t k = 0; k < across.points.size(); ++k)
      form.push_back({metres(along.points[i]), metres(across.points[k]),
                      along.weights[i] * across.weights[k] / (length.si() * width.si())});
  return form;
}

}  // namespace cw
