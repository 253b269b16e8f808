#pragma once
#include <QString>
#include <optional>

#include "app/print/paper.h"

class QWidget;

namespace cw {

/// Where a PDF goes, and on what paper it will be printed.
struct PdfTarget {
  std::string path;
  PageSize size = PageSize::A4;
};

/// Asks for both in one dialog: the kind of file names the paper, the locale's first. Nothing if the
/// user thinks better of it.
std::optional<PdfTarget> askPdf(QWidget* parent, const QString& what, const QString& proposedName);

}  // namespace cw
