#pragma once
#include <QString>
#include <vector>

#include "core/report/document.h"

class QFont;

namespace cw {

/// Stands in words too long for a narrow column, where a line may break; never part of what is copied.
inline constexpr QChar kMayBreak(0x200B);

/// A hash or an id has no place where a line may break; in a narrow window it needs one.
QString breakable(const std::string& text);

inline constexpr qreal kCellPadding = 5;

/// The columns of a table in a text: how wide each must be for no word in it to be broken, in pixels, and its
/// share of what there is.
struct DocumentColumns {
  std::vector<qreal> least, shares;

  /// Each column gets its least, and of what is left the more the further it stands below its share. Where
  /// the room is less than all of them need, nothing comes back.
  std::vector<qreal> in(qreal room) const;
};

/// Of a long table the first rows count.
DocumentColumns columnsOf(const Table& table, const QFont& font);
DocumentColumns columnsOf(const Facts& facts, const QFont& font);

}  // namespace cw
