#pragma once
#include <QString>
#include <string>

namespace cw {

/// What a column of a library table is called in the window: "Stress area".
QString columnText(const std::string& column);

/// What may be written into it, where that is not plain: "mm or in". Empty elsewhere.
QString columnHint(const std::string& column);

}  // namespace cw
