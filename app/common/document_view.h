#pragma once
#include <QTextBrowser>

#include "core/report/document.h"

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
  QMimeData* createMimeDataFromSelection() const override;

 private:
  void rebuild();

  Document m_document;
};

}  // namespace cw
