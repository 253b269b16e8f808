#pragma once
#include <string>
#include <vector>

#include "app/print/document_pdf.h"
#include "core/base/result.h"
#include "core/report/content.h"

namespace cw {

/// The sealed bytes that travel inside a record's PDF. Empty for a job that is not sealed.
struct SealedFiles {
  std::string record;
  std::vector<std::string> addenda;
};

/// A record's PDF: the summary on its first page, then everything else; the sealed files attached as
/// "torque-record.json" and "addendum-1.json" …. Needs a QGuiApplication.
QByteArray recordPdf(const RecordContent& content, const SealedFiles& files, PageSize size);

/// The same into a file, whole or not at all. Needs a QGuiApplication. DiskFull, ReadOnly or Storage
/// with the path as place.
Result<void> writeRecordPdf(const RecordContent& content, const SealedFiles& files, const std::string& path,
                            PageSize size);

}  // namespace cw
