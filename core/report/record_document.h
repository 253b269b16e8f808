#pragma once
#include <cstddef>
#include <limits>

#include "core/record/verify.h"
#include "core/report/content.h"
#include "core/report/document.h"

namespace cw {

/// The record as a document: a summary of one page with the exceptions on top, then parts, tools, each joint
/// with its diagram and readings, all entries, and what the seal proves and what not.
/// `mostPerException` cuts each group of exceptions on the summary after so many lines; the entries of the
/// others are then named by number, so that none is left out.
Document recordDocument(const RecordContent& content, const Wording& wording,
                        std::size_t mostPerException = std::numeric_limits<std::size_t>::max());

/// The stamp of a record that is printed although it does not verify. `found` is not good.
Stamp unsoundStamp(const Verification& found, const Wording& wording);

/// Number of sections that make up the summary page.
inline constexpr std::size_t kSummarySections = 4;

}  // namespace cw
