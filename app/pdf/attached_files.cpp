#include "app/pdf/attached_files.h"

#define POINTERHOLDER_TRANSITION 4  // qpdf 11 with std::shared_ptr

#include <qpdf/Pipeline.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <stdexcept>

namespace cw {
namespace {

/// Takes in so much and no more: a few bytes of a hostile file may unpack to a disk full.
class Limited final : public Pipeline {
 public:
  explicit Limited(std::size_t most) : Pipeline("attachment", nullptr), m_most(most) {}
  void write(unsigned char const* data, std::size_t length) override {
    if (length > m_most - m_bytes.size()) throw std::runtime_error("too large");
    m_bytes.append(reinterpret_cast<const char*>(data), length);
  }
  void finish() override {}
  std::string take() { return std::move(m_bytes); }

 private:
  std::size_t m_most;
  std::string m_bytes;
};

std::string unpacked(QPDFObjectHandle stream, std::size_t most) {
  Limited out(most);
  if (!stream.pipeStreamData(&out, 0, qpdf_dl_all, true)) throw std::runtime_error("damaged");
  return out.take();
}

}  // namespace

std::optional<std::vector<AttachedFile>> attachedFiles(std::string_view pdf, std::size_t most) {
  try {
    QPDF document;
    document.setSuppressWarnings(true);
    document.processMemoryFile("pdf", pdf.data(), pdf.size());
    QPDFEmbeddedFileDocumentHelper helper(document);
    std::vector<AttachedFile> out;
    for (const auto& named : helper.getEmbeddedFiles())
      out.push_back({named.second->getFilename(), unpacked(named.second->getEmbeddedFileStream(), most)});
    return out;
  } catch (const std::exception&) {
    return std::nullopt;
  }
}

}  // namespace cw
