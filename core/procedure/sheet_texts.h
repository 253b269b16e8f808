#pragma once
#include "core/base/finding.h"
#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

inline constexpr std::size_t kLongestTitle = 200;  ///< characters; titles and documents
inline constexpr std::size_t kLongestName = 120;   ///< names, ids, labels and every other short field
inline constexpr std::size_t kLongestText = 2000;  ///< instructions, alerts, reasons, printed lines

/// Every text of a sheet that nobody should have to print: with a character that cannot be seen or that turns
/// text round (core/base/printable.h), "text-unprintable"; longer than the above, "text-too-long". Blocking.
/// What stands in fields that are not known is not looked at. The reader takes such texts, because sheets
/// that were issued once stay readable; review, drafts and quick joints do not.
Findings textFindings(const Sheet& sheet);

/// The first of them as InvalidInput.
Result<void> checkTexts(const Sheet& sheet);

}  // namespace cw
