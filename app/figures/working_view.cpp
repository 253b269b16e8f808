#include "app/figures/working_view.h"

#include <QAbstractTextDocumentLayout>
#include <QPushButton>
#include <QTextDocument>
#include <QVBoxLayout>
#include <cmath>

#include "app/common/wording.h"
#include "app/documents/document_view.h"
#include "core/report/outcome.h"

namespace cw {

WorkingView::WorkingView(QWidget* parent)
    : QWidget(parent), m_open(new QPushButton), m_document(new DocumentView) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(8);
  m_open->setObjectName(QStringLiteral("workingButton"));
  m_open->setCheckable(true);
  m_document->setObjectName(QStringLiteral("working"));
  m_document->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  down->addWidget(m_open, 0, Qt::AlignLeft);
  down->addWidget(m_document);
  connect(m_open, &QPushButton::toggled, this, &WorkingView::fold);
  // The page scrolls, not the working inside it.
  connect(
      m_document->document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged, m_document,
      [this](const QSizeF& size) { m_document->setFixedHeight(static_cast<int>(std::ceil(size.height()))); });
  fold();
}

void WorkingView::present(const Working& working) {
  m_document->present(workingDocument(working, [](const Message& text) { return fromQt(worded(text)); }));
  show();
}

void WorkingView::fold() {
  m_open->setText(m_open->isChecked() ? tr("Hide the working") : tr("Show the working"));
  m_document->setVisible(m_open->isChecked());
}

}  // namespace cw
