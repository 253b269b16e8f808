#pragma once
#include <string>

#include "core/base/finding.h"
#include "core/fastener/catalogue.h"
#include "core/procedure/sheet.h"

namespace cw {

/// What somebody qualified enters at the bench for a joint that has no sheet.
struct QuickJoint {
  std::string name;   ///< "Pump cover"
  std::string model;  ///< of the machine, as on its plate; may be empty
  Layout layout;
  bool drawnToScale = false;  ///< false: the lengths of the layout only serve to draw it
  Fastener fastener;
  Specification specification;
  Source source;
  PassPlan passes;
  std::string by;  ///< sign of who read the source
};

/// The sheet of one joint and one step that stands for it; ids within it are given here. The errors of
/// `readSheet` where something is missing or cannot be.
Result<Sheet> quickSheet(const QuickJoint& joint, const Id& id);

/// A quick joint is one joint and the step that tightens it, nothing else: more belongs on a sheet that was
/// reviewed. InvalidInput.
Result<void> checkQuickSheet(const Sheet& sheet);

/// What the guard says of all its torques together: the word of the gravest verdict, and its sentences.
struct QuickVerdict {
  Verdict verdict = Verdict::NotJudged;
  Findings findings;  ///< of the guard: what it says, and what would be right

  /// Only with a lead's word may work begin.
  bool blocks() const { return verdict != Verdict::InBand && verdict != Verdict::NotJudged; }
};

/// Judges a quick joint as a review would judge a sheet. NotPermitted with the first finding that nobody may
/// overrule: no source, document or page, an unknown name, a value outside what is printed …
Result<QuickVerdict> judgeQuickSheet(const Sheet& sheet, const Catalogue& catalogue);

/// The draft that the trainer goes on with: the same joint, in revision A, by another author.
Sheet draftFromQuickSheet(Sheet quick, const std::string& author);

/// Stands in the place of a revision.
inline constexpr std::string_view kQuickRevision = "quick";

}  // namespace cw
