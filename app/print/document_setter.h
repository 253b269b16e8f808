#pragma once
#include <functional>

#include "app/print/pages.h"
#include "app/print/paper.h"
#include "core/report/document.h"

namespace cw {

/// Sets a document's blocks onto pages.
class DocumentSetter {
 public:
  explicit DocumentSetter(const Paper& paper) : m_paper(paper), m_pages(paper.body()) {}

  /// The title, then the sections.
  Pages set(const Document& document);
  /// Pages that the first sections take with the title, to fit a summary.
  static std::size_t pagesOf(const Document& document, std::size_t sections, const Paper& paper);

  void operator()(const Paragraph& paragraph);
  void operator()(const Facts& facts);
  void operator()(const Table& table);
  void operator()(const JointDrawing& drawing);

 private:
  void setTitle(const Document& document);
  void setSection(const Section& section);
  void setBlocks(const Section& section);
  void setFact(const Fact& fact);
  void setCaution(const QString& text);
  void setWarning(const QString& text);
  void setMarked(const QString& text, const QColor& ink, double indent, double above,
                 const std::function<void(QPainter&, double)>& ground);
  void setText(const QString& text, double size, QFont::Weight weight, const QColor& colour,
               double indent = 0);

  const Paper& m_paper;
  Pages m_pages;
};

}  // namespace cw
