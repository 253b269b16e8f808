#pragma once
#include <string>
#include <vector>

#include "core/fastener/csv_record.h"
#include "core/fastener/library.h"

namespace cw {

// Three functions per kind of row. `add…` reads one and appends it to the library, or refuses it in one
// sentence that names line and column, leaving the library as it was. `cellsOf` writes it out again, in the
// order of `columnsOf…` and then `known`, `source`, `author`, `note`. All values of a row are in the units
// that its unit columns name.

using Columns = std::vector<std::string_view>;
using Cells = std::vector<std::string>;

/// designation, diameter, pitch (mm) or threads_per_inch (in), stress_area (may be empty), unit (mm or in).
Columns columnsOfThreads();
Result<void> addThread(Library& library, const CsvRecord& record);
Cells cellsOf(const Thread& thread);

/// name, aliases, threads (metric, unified, both), size_from (may be empty), size_up_to, size_unit, proof
/// (may be empty), yield, tensile, stress_unit (MPa with mm; ksi or psi with in). Rows of one name stand
/// together and their sizes do not overlap.
Columns columnsOfGrades();
Result<void> addGrade(Library& library, const CsvRecord& record);
Cells cellsOf(const Grade& grade);

/// name, aliases, label, then _low, _typical and _high of nut_factor, thread_friction and bearing_friction:
/// all three of one or none; at least nut factor or both frictions.
Columns columnsOfConditions();
Result<void> addCondition(Library& library, const CsvRecord& record);
Cells cellsOf(const Condition& condition);

/// name, aliases, family, shear_strength, modulus, caution, unit (a stress).
Columns columnsOfMaterials();
Result<void> addMaterial(Library& library, const CsvRecord& record);
Cells cellsOf(const TappedMaterial& material);

/// kind, diameter, across_flats, bearing_diameter (one of the two may be empty), unit (mm or in).
Columns columnsOfHeads();
Result<void> addHead(Library& library, const CsvRecord& record);
Cells cellsOf(const Head& head);

/// diameter, close, normal, loose (only normal must be there), unit (mm or in).
Columns columnsOfHoles();
Result<void> addHole(Library& library, const CsvRecord& record);
Cells cellsOf(const ClearanceHole& hole);

/// thread, tolerance_class, major_min, major_max, pitch_min, pitch_max, minor_min, minor_max, unit.
Columns columnsOfLimits();
Result<void> addLimits(Library& library, const CsvRecord& record);
Cells cellsOf(const SizeLimits& limits);

/// thread, fastener, minimum, unit (a torque).
Columns columnsOfPrevailingTorques();
Result<void> addPrevailingTorque(Library& library, const CsvRecord& record);
Cells cellsOf(const PrevailingTorque& torque);

/// type, class, description, deviation_to_10_Nm, deviation_above_10_Nm, unit (%).
Columns columnsOfToolClasses();
Result<void> addToolClass(Library& library, const CsvRecord& record);
Cells cellsOf(const ToolClass& toolClass);

}  // namespace cw
