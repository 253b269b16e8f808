#pragma once
#include <QByteArray>
#include <QString>
#include <functional>
#include <string>
#include <vector>

#include "app/print/paper.h"
#include "core/base/result.h"
#include "core/report/document.h"
#include "core/store/output_place.h"

namespace cw {

/// A file that travels inside the PDF.
struct Attachment {
  QString name, mimeType;
  QByteArray bytes;
};

/// Makes the document for a paper, so that it can be made to fit.
using DocumentFor = std::function<Document(const Paper&)>;

/// The document as a PDF: fonts embedded, drawings as vectors, the footer and "page x of y" on every page.
/// Needs a QGuiApplication.
QByteArray documentPdf(const DocumentFor& document, PageSize size,
                       const std::vector<Attachment>& attachments = {});

/// A document that needs no fitting, into a file, whole or not at all. Needs a QGuiApplication.
/// The errors of writeFile.
Result<void> writeDocumentPdf(const Document& document, const std::string& path, PageSize size,
                              Existing existing);

}  // namespace cw
