#pragma once
#include <string>
#include <string_view>

#include "core/record/key.h"

namespace cw {

/// The PDF with a last line behind its %%EOF that signs every byte before it; readers pass over it as a
/// comment. The line is described in DEVELOPERS.md.
std::string sealPdf(std::string pdf, const SecretKey& key);

enum class PdfState {
  AsGivenOut,  ///< the signature holds over all bytes
  Changed,     ///< there is such a line, but not the bytes it was made over, or more behind it
  OtherKey,    ///< the line names another key: cannot be told with this one
  Unsigned,    ///< no such line: given out without a key, or saved again by another program
};

struct PdfSeal {
  PdfState state = PdfState::Unsigned;
  std::string keyId;  ///< that the line names; empty without a line
};

/// What the last line says of the bytes.
PdfSeal readPdfSeal(std::string_view pdf, const PublicKey& key);

}  // namespace cw
