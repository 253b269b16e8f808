#pragma once
#include "core/base/finding.h"
#include "core/procedure/sheet.h"
#include "core/report/document.h"
#include "core/report/wording.h"

namespace cw {

/// A sheet to read: what it applies to, its sources, parts, joints with what the source prints beside what
/// was made of it, and the steps with what guards them.
Document sheetDocument(const Sheet& sheet, const Wording& wording);

/// What a review found, the gravest first; says so where it found nothing.
Section reviewSection(const Findings& findings, const Wording& wording);

}  // namespace cw
