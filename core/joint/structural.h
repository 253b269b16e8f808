#pragma once
#include "core/base/result.h"
#include "core/fastener/grade.h"
#include "core/fastener/thread.h"

namespace cw {

/// Least pretension of a structural bolt: 0.70·Rm·As, all sizes. Rm is the stated tensile strength (800 MPa
/// for 8.8, 1000 MPa for 10.9 in EN 1090-2; 120 and 150 ksi in RCSC), not a grade's minimum in ISO 898-1.
/// Above zero, else OutOfRange.
/// Source: AISC 360-05 table J3.1 (RCSC table 8.1); EN 1993-1-8, 3.6.1. Checked by: Rcsc*, En1090* tests.
Result<Force> structuralPretension(Stress tensile, const Thread& thread);

/// Slope of the outer faces of the joint against the bolt's axis, up to 1 : 20.
enum class SlopedFaces { None, One, Both };

/// Turn from snug for a bolt of this length: 1/3, 1/2 or 2/3 turn up to 4, 8 or 12 diameters, and 1/6 turn
/// more for each sloped face. OutOfRange beyond 12 diameters (to be found by test).
/// Source: RCSC Specification, turn-of-nut table (1985/1986 text and a summary, seen).
Result<Angle> turnFromSnug(Length boltLength, const Thread& thread, SlopedFaces sloped);

/// Turn after the first step (0.75·Mr) of the combined method: 60, 90 or 120° for a thickness below 2, below
/// 6, or up to 10 diameters. OutOfRange beyond. Source: EN 1090-2, table 21 (seen; its "t > 2d" in one
/// reprint is a misprint of t < 2d).
Result<Angle> combinedMethodTurn(Length thickness, const Thread& thread);

}  // namespace cw
