#pragma once
#include <QByteArray>
#include <QProcess>
#include <QTemporaryDir>
#include <string>
#include <vector>

namespace cw::test {

/// A PDF as other programs read it: its pages' text through pdftotext.
class ReadPdf {
 public:
  explicit ReadPdf(const QByteArray& bytes);

  const std::vector<std::string>& pages() const { return m_pages; }
  std::string all() const;

 private:
  std::vector<std::string> m_pages;
};

/// Attached files of a PDF by name, through libqpdf.
std::vector<std::pair<std::string, std::string>> attachmentsIn(const QByteArray& pdf);

/// Names of the fonts that are embedded as programs in the file, and of those that are only named.
struct PdfFonts {
  std::vector<std::string> embedded, named;
};
PdfFonts fontsIn(const QByteArray& pdf);

}  // namespace cw::test
