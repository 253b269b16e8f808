#include "tests/app/print/read_pdf.h"

#define POINTERHOLDER_TRANSITION 4  // qpdf 11 with std::shared_ptr

#include <QFile>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <sstream>

namespace cw::test {
namespace {

void openIn(QPDF& pdf, const QByteArray& bytes) {
  pdf.processMemoryFile("test", bytes.constData(), static_cast<std::size_t>(bytes.size()));
}

std::string bytesOf(QPDFObjectHandle stream) {
  const auto data = stream.getStreamData();
  return std::string(reinterpret_cast<const char*>(data->getBuffer()), data->getSize());
}

}  // namespace

ReadPdf::ReadPdf(const QByteArray& bytes) {
  QTemporaryDir folder;
  QFile file(folder.filePath(QStringLiteral("a.pdf")));
  if (file.open(QIODevice::WriteOnly)) file.write(bytes);
  file.close();
  QProcess reader;
  reader.start(QStringLiteral("pdftotext"),
               {QStringLiteral("-layout"), file.fileName(), QStringLiteral("-")});
  reader.waitForFinished();
  std::istringstream text(reader.readAllStandardOutput().toStdString());
  for (std::string page; std::getline(text, page, '\f');)
    if (!page.empty()) m_pages.push_back(page);
}

std::string ReadPdf::all() const {
  std::string out;
  for (const std::string& page : m_pages) out += page;
  return out;
}

std::vector<std::pair<std::string, std::string>> attachmentsIn(const QByteArray& bytes) {
  QPDF pdf;
  openIn(pdf, bytes);
  std::vector<std::pair<std::string, std::string>> out;
  for (const auto& [name, file] : QPDFEmbeddedFileDocumentHelper(pdf).getEmbeddedFiles())
    out.emplace_back(file->getFilename(), bytesOf(file->getEmbeddedFileStream()));
  return out;
}

PdfFonts fontsIn(const QByteArray& bytes) {
  QPDF pdf;
  openIn(pdf, bytes);
  PdfFonts out;
  for (QPDFObjectHandle object : pdf.getAllObjects()) {
    if (!object.isDictionaryOfType("/FontDescriptor")) continue;
    const bool embedded =
        object.hasKey("/FontFile") || object.hasKey("/FontFile2") || object.hasKey("/FontFile3");
    (embedded ? out.embedded : out.named).push_back(object.getKey("/FontName").getName());
  }
  return out;
}

}  // namespace cw::test
