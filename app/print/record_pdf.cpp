#include "app/print/record_pdf.h"

#include "app/common/wording.h"
#include "app/print/document_setter.h"
#include "core/report/record_document.h"

namespace cw {
namespace {

std::string inUsersLanguage(const Message& message) {
  return fromQt(worded(message));
}

/// The record with as much said of each exception as its first page can hold.
Document fittingDocument(const RecordContent& content, const Paper& paper) {
  Document document = recordDocument(content, inUsersLanguage);
  for (const std::size_t most : {8u, 4u, 2u, 1u, 0u}) {
    if (DocumentSetter::pagesOf(document, kSummarySections, paper) == 1) break;
    document = recordDocument(content, inUsersLanguage, most);
  }
  return document;
}

std::vector<Attachment> attachmentsOf(const SealedFiles& files) {
  const QString json = QStringLiteral("application/json");
  std::vector<Attachment> out;
  if (!files.record.empty())
    out.push_back({QStringLiteral("torque-record.json"), json, QByteArray::fromStdString(files.record)});
  for (std::size_t i = 0; i < files.addenda.size(); ++i)
    out.push_back(
        {QStringLiteral("addendum-%1.json").arg(i + 1), json, QByteArray::fromStdString(files.addenda[i])});
  return out;
}

}  // namespace

QByteArray recordPdf(const RecordContent& content, const SealedFiles& files, PageSize size,
                     const Stamp& stamp) {
  const auto stamped = [&](const Paper& paper) {
    Document document = fittingDocument(content, paper);
    document.stamp = stamp;
    return document;
  };
  return documentPdf(stamped, size, attachmentsOf(files));
}

}  // namespace cw
