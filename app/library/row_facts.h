#pragma once
#include <vector>

#include "core/fastener/library.h"
#include "core/report/document.h"

namespace cw {

class Catalogue;

// What a row of each kind says, as sections to read; at least one. Lengths, areas and stresses stand in the
// source's system of units first and in the other behind it.

std::vector<Section> sectionsOf(const Catalogue& catalogue, const Thread& thread);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const Grade& grade);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const Condition& condition);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const TappedMaterial& material);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const Head& head);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const ClearanceHole& hole);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const SizeLimits& limits);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const PrevailingTorque& torque);
std::vector<Section> sectionsOf(const Catalogue& catalogue, const ToolClass& toolClass);

}  // namespace cw
