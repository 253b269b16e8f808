#pragma once
#include "core/fastener/csv_record.h"
#include "core/fastener/library.h"

namespace cw {

// One function per kind of row: reads it and appends it to the library, or refuses it in one sentence that
// names line and column, leaving the library as it was. Columns are those of the files in
// resources/library; all values of a row are in the units its unit columns name.

/// designation, diameter, pitch (mm) or threads_per_inch (in), stress_area (may be empty), unit (mm or in).
Result<void> addThread(Library& library, const CsvRecord& record);

/// name, aliases, threads (metric, unified, both), size_from (may be empty), size_up_to, size_unit, proof
/// (may be empty), yield, tensile, stress_unit (MPa with mm; ksi or psi with in).
Result<void> addGrade(Library& library, const CsvRecord& record);

/// name, aliases, label, quantity (nut factor, thread friction, bearing friction), low, typical, high.
/// Rows of one name make one condition.
Result<void> addCondition(Library& library, const CsvRecord& record);

}  // namespace cw
