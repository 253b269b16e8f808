#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cw {

/// A file that travels inside a PDF.
struct AttachedFile {
  std::string name, bytes;
};

/// All of them, in no order, from a PDF by whatever program it was saved last. Nothing if the bytes cannot be
/// read as a PDF, or an attachment is larger than `most` once it is unpacked. Plain C++17, as the library
/// behind it needs.
std::optional<std::vector<AttachedFile>> attachedFiles(std::string_view pdf, std::size_t most = 64u << 20);

}  // namespace cw
