#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

/// Serial numbers are compared by their last group of digits, leading zeros apart. What stands before it must
/// agree but for case, blanks and hyphens, unless the range has nothing there: "100 to 480" holds PS40-0117.

/// The ranges that words name, or nothing where they cannot be read with certainty. Read are "all", "117",
/// "100 to 480", "100-480", "from 100", "100 and up", "up to 480", "after 480", "before 100", "PS40-0100 to
/// PS40-0480", and lists of these. A range that is open at both ends holds every machine.
std::optional<std::vector<SerialRange>> serialRangesIn(std::string_view words);

/// Does every end that is given end in digits, does the same stand before them, and do they rise?
/// InvalidInput or OutOfRange with the field as place.
Result<void> checkSerialRange(const SerialRange& range);

/// True if both name the same machines in the same ranges, whatever their order.
bool sameSerials(const std::vector<SerialRange>& a, const std::vector<SerialRange>& b);

/// What to show of a sheet's serial numbers: its words, else its ranges.
std::string serialsText(const Sheet& sheet);

enum class SerialFit { Fits, Outside, NotJudged };

struct SerialVerdict {
  SerialFit fit = SerialFit::NotJudged;
  Message reason;  ///< a whole sentence
};

/// Is a sheet for the machine of this serial number (empty: not known)? By its ranges, else by its words; a
/// sheet that says nothing of serial numbers is for all of its model's.
SerialVerdict serialFit(const Sheet& sheet, const std::string& serial);

}  // namespace cw
