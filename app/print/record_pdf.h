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

/// A record's PDF, its bytes not signed: the summary on its first page, then everything else; the sealed
/// files attached as "torque-record.json" and "addendum-1.json" …; the stamp, if there is one, across every
/// page. Needs a QGuiApplication.
QByteArray recordPdf(const RecordContent& content, const SealedFiles& files, PageSize size,
                     const Stamp& stamp = {});

}  // namespace cw
