#pragma once
#include <vector>

#include "app/documents/document_columns.h"

class QPalette;
class QTextDocument;
class QTextTable;

namespace cw {

/// A table as it stands in a text.
struct WrittenTable {
  enum class Form {
    Across,
    Stacked,  ///< each row as lines of heading and cell
    Free,     ///< takes what room there is, and may break words
  };
  DocumentColumns columns;
  Form form = Form::Free;
  qreal label = 0;  ///< stacked: width that the headings need
  QTextTable* table = nullptr;

  /// Widths of its columns in so much room; nothing where it needs another form.
  std::vector<qreal> widthsIn(qreal room) const;
};

/// A document as it was written into a text, for so much room. A table that the room cannot hold without
/// breaking words is written as its rows, one below the other, each cell beside its heading.
class WrittenDocument {
 public:
  WrittenDocument() = default;

  /// Writes it as rich text in the palette's roles, in place of what stood there. Sizes follow the text
  /// document's default font.
  WrittenDocument(const Document& document, QTextDocument& into, const QPalette& palette, qreal room);

  /// Fits its tables into other room; false where one of them must be written otherwise, which leaves all as
  /// it was.
  bool fit(qreal room);

 private:
  std::vector<WrittenTable> m_tables;
};

}  // namespace cw
