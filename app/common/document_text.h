#pragma once
#include "core/report/document.h"

class QPalette;
class QTextDocument;

namespace cw {

/// Writes a document as rich text in the palette's roles, in place of what stood there. Sizes follow the text
/// document's default font.
void writeDocument(const Document& document, QTextDocument& into, const QPalette& palette);

}  // namespace cw
