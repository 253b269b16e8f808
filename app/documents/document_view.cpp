#include "app/documents/document_view.h"

#include <QAbstractTextDocumentLayout>
#include <QEvent>
#include <QMimeData>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTextDocumentFragment>
#include <algorithm>

#include "app/common/wording.h"
#include "app/documents/document_objects.h"

namespace cw {
namespace {

constexpr qreal kLeastRoom = 40;  ///< pixels; a view squeezed to less cuts its text and keeps its columns

}  // namespace

DocumentView::DocumentView(QWidget* parent) : QTextBrowser(parent) {
  setFrameShape(QFrame::NoFrame);
  setOpenLinks(false);
  setTabChangesFocus(true);
  setAccessibleName(tr("Document"));
  document()->setDocumentMargin(24);
  registerDocumentObjects(*document()->documentLayout(), *this);
}

void DocumentView::present(Document document) {
  m_document = std::move(document);
  setAccessibleName(toQt(m_document.title));
  rebuild();
  verticalScrollBar()->setValue(0);
}

QString DocumentView::toPlainText() const {
  return QTextBrowser::toPlainText().remove(kMayBreak);
}

/// Plain text: a hash that is compared elsewhere must be the hash.
QMimeData* DocumentView::createMimeDataFromSelection() const {
  auto* out = new QMimeData;
  out->setText(textCursor().selection().toPlainText().remove(kMayBreak));
  return out;
}

void DocumentView::changeEvent(QEvent* event) {
  QTextBrowser::changeEvent(event);
  const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
  if (looks && !m_document.title.empty()) rebuild();
}

void DocumentView::resizeEvent(QResizeEvent* event) {
  const bool isPresented = !m_document.title.empty();
  if (isPresented && event->oldSize().width() != event->size().width() && !m_written.fit(room())) rebuild();
  QTextBrowser::resizeEvent(event);
}

/// With a scroll bar or without, so that it does not come and go with what is written for it.
qreal DocumentView::room() const {
  const bool scrolls = verticalScrollBarPolicy() != Qt::ScrollBarAlwaysOff;
  const int bar = scrolls ? verticalScrollBar()->sizeHint().width() : 0;
  return std::max(kLeastRoom, width() - bar - 2 * document()->documentMargin());
}

void DocumentView::rebuild() {
  const int place = verticalScrollBar()->value();
  document()->setDefaultFont(font());
  m_written = {};  // a scroll bar that goes with the old text resizes what is left of it
  m_written = WrittenDocument(m_document, *document(), palette(), room());
  moveCursor(QTextCursor::Start);
  verticalScrollBar()->setValue(place);
}

}  // namespace cw
