#pragma once
#include <cstddef>
#include <vector>

#include "core/report/content.h"
#include "core/report/document.h"

namespace cw {

/// The first page: what job it is and how it ended, exceptions, joints, people. Each group of exceptions is
/// cut after `mostPerException` lines; the entries of the others are named by number.
std::vector<Section> recordSummary(const RecordContent& content, const Wording& wording,
                                   std::size_t mostPerException);

}  // namespace cw
