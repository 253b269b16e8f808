#include "app/print/document_pdf.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QtMath>
#include <cmath>

#include "app/common/wording.h"
#include "app/print/document_setter.h"
#include "app/print/ink_colours.h"
#include "app/print/set_text.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr int kDotsPerInch = 1200;

/// What stands above and below the body of every page.
class Furniture {
 public:
  Furniture(const Document& document, const Paper& paper) : m_document(document), m_paper(paper) {}

  void paint(QPainter& painter, std::size_t page, std::size_t count) const {
    if (!m_document.stamp.words.empty()) paintStamp(painter);
    if (page > 0) paintHead(painter);
    paintNotice(painter);
    paintFooter(painter, page, count);
  }

 private:
  /// Its words from corner to corner behind the text, and with the reason in a band above it.
  void paintStamp(QPainter& painter) const {
    const QString words = toQt(m_document.stamp.words);
    const QRectF page = m_paper.whole();
    painter.save();
    painter.translate(page.center());
    painter.rotate(-qRadiansToDegrees(std::atan2(page.height(), page.width())));
    QFont large = m_paper.text(40, QFont::Bold);
    large.setPixelSize(qRound(large.pixelSize() * 0.85 * std::hypot(page.width(), page.height()) /
                              QFontMetricsF(large, &m_paper.device()).horizontalAdvance(words)));
    painter.setFont(large);
    painter.setPen(kStampTint);
    painter.drawText(QRectF(-page.height(), -page.width(), 2 * page.height(), 2 * page.width()),
                     Qt::AlignCenter, words);
    painter.restore();
    const QRectF band = m_paper.above();
    painter.fillRect(band, kInk);
    const SetText said(words + QLatin1String(": ") + toQt(m_document.stamp.reason),
                       {m_paper.text(7.5, QFont::Bold), Qt::white, Qt::AlignHCenter},
                       band.width() - m_paper.points(6), m_paper.device());
    said.draw(painter, QPointF(band.left() + m_paper.points(3), band.center().y() - said.height() / 2));
  }

  void line(QPainter& painter, const QString& text, const QFont& font, QPointF at, double width,
            Qt::Alignment alignment) const {
    SetText(text, {font, kSecondInk, alignment}, width, m_paper.device()).draw(painter, at);
  }

  void paintHead(QPainter& painter) const {
    const QRectF head = m_paper.head();
    line(painter, toQt(m_document.title), m_paper.text(8, QFont::Bold), head.topLeft(), head.width() / 2,
         Qt::AlignLeft);
    line(painter, toQt(m_document.subtitle), m_paper.text(8), QPointF(head.center().x(), head.top()),
         head.width() / 2, Qt::AlignRight);
  }

  void paintNotice(QPainter& painter) const {
    const QRectF head = m_paper.head();
    line(painter, toQt(m_document.notice), m_paper.text(8.5, QFont::Bold),
         QPointF(head.left(), head.top() + m_paper.points(12)), head.width(), Qt::AlignHCenter);
  }

  void paintFooter(QPainter& painter, std::size_t page, std::size_t count) const {
    const QRectF footer = m_paper.footer();
    painter.setPen(QPen(kInk, m_paper.points(0.6)));
    const double y = footer.top() + m_paper.points(8);
    painter.drawLine(QPointF(footer.left(), y), QPointF(footer.right(), y));
    QPointF at(footer.left(), y + m_paper.points(4));
    for (const std::string& text : m_document.footer) {
      line(painter, toQt(text), m_paper.text(7), at, footer.width() * 0.88, Qt::AlignLeft);
      at.ry() += m_paper.points(9);
    }
    const QString number = QCoreApplication::translate("print", "Page %1 of %2").arg(page + 1).arg(count);
    line(painter, number, m_paper.text(8), QPointF(footer.left(), y + m_paper.points(3.4)), footer.width(),
         Qt::AlignRight);
  }

  const Document& m_document;
  const Paper& m_paper;
};

}  // namespace

QByteArray documentPdf(const DocumentFor& makeDocument, PageSize size,
                       const std::vector<Attachment>& attachments) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setPageSize(qtPageSize(size));
  writer.setPageMargins(QMarginsF());
  writer.setCreator(QStringLiteral("Clampwright"));
  const Paper paper(writer);
  const Document document = makeDocument(paper);
  writer.setTitle(toQt(document.title));
  for (const Attachment& file : attachments) writer.addFileAttachment(file.name, file.bytes, file.mimeType);
  const Pages pages = DocumentSetter(paper).set(document);
  const Furniture furniture(document, paper);
  QPainter painter(&writer);
  for (std::size_t page = 0; page < pages.count(); ++page) {
    if (page > 0) writer.newPage();
    furniture.paint(painter, page, pages.count());
    pages.paint(painter, page);
  }
  painter.end();
  return bytes;
}

Result<void> writeDocumentPdf(const Document& document, const std::string& path, PageSize size,
                              Existing existing) {
  return writeFile(path, documentPdf([&](const Paper&) { return document; }, size).toStdString(), existing);
}

}  // namespace cw
