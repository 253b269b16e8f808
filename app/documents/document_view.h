#pragma once
#include <QTextBrowser>

#include "app/documents/document_text.h"

namespace cw {

/// A document of core/report in the window: to read, to select from, to scroll by key. It follows a change of
/// palette, font and width.
class DocumentView final : public QTextBrowser {
  Q_OBJECT

 public:
  explicit DocumentView(QWidget* parent = nullptr);

  void present(Document document);
  const Document& presented() const { return m_document; }
  /// As it reads, without what only helps its lines to break.
  QString toPlainText() const;

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  QMimeData* createMimeDataFromSelection() const override;

 private:
  void rebuild();
  qreal room() const;

  Document m_document;
  WrittenDocument m_written;
};

}  // namespace cw
