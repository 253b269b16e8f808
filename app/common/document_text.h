#pragma once
#include <QChar>

#include "core/report/document.h"

class QPalette;
class QTextDocument;

namespace cw {

/// Stands in words too long for a narrow column, where a line may break; never part of what is copied.
inline constexpr QChar kMayBreak(0x200B);

/// Writes a document as rich text in the palette's roles, in place of what stood there. Sizes follow the text
/// document's default font.
void writeDocument(const Document& document, QTextDocument& into, const QPalette& palette);

}  // namespace cw
