#include "core/record/pdf_seal.h"

#include "core/base/digest.h"

namespace cw {
namespace {

constexpr std::string_view kPdfTag = "clampwright.pdf.v1\n";
constexpr std::string_view kLineStart = "\n% clampwright.pdf.v1 ";
constexpr std::size_t kKeyDigits = 16, kSignatureDigits = 128;

std::string toSign(std::string_view pdf) {
  return std::string(kPdfTag).append(pdf);
}

}  // namespace

std::string sealPdf(std::string pdf, const SecretKey& key) {
  if (!pdf.ends_with('\n')) pdf += '\n';
  const std::string signature = hex(sign(toSign(pdf), key));
  return pdf.append(kLineStart.substr(1))
      .append(keyId(publicOf(key)))
      .append(" ")
      .append(signature)
      .append("\n");
}

PdfSeal readPdfSeal(std::string_view pdf, const PublicKey& key) {
  const std::size_t at = pdf.rfind(kLineStart);
  if (at == std::string_view::npos) return {};
  const std::string_view covered = pdf.substr(0, at + 1), rest = pdf.substr(at + kLineStart.size());
  PdfSeal out{PdfState::Changed, std::string(rest.substr(0, kKeyDigits))};
  if (rest.size() != kKeyDigits + 1 + kSignatureDigits + 1 || rest[kKeyDigits] != ' ' ||
      !rest.ends_with('\n'))
    return out;
  if (out.keyId != keyId(key)) {
    out.state = PdfState::OtherKey;
    return out;
  }
  const auto signature = signatureFromHex(rest.substr(kKeyDigits + 1, kSignatureDigits));
  if (signature && verifies(toSign(covered), *signature, key)) out.state = PdfState::AsGivenOut;
  return out;
}

}  // namespace cw
