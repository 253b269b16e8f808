#include "core/record/pdf_seal.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

#include "core/base/digest.h"

namespace cw {
namespace {

const std::string kPdf = "%PDF-1.4\nsome pages\n%%EOF\n";

std::string fileBytes(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return std::string(std::istreambuf_iterator<char>(in), {});
}

TEST(PdfSeal, IsTheLineThatIsDescribed) {
  const SecretKey key = makeKey();
  const std::string id = keyId(publicOf(key));
  const std::string signature = hex(sign("clampwright.pdf.v1\n" + kPdf, key));
  EXPECT_EQ(sealPdf(kPdf, key), kPdf + "% clampwright.pdf.v1 " + id + " " + signature + "\n");
  const std::string unended = kPdf.substr(0, kPdf.size() - 1);
  EXPECT_EQ(sealPdf(unended, key), sealPdf(kPdf, key));
}

TEST(PdfSeal, HoldsForTheBytesItWasMadeOverAndNoOthers) {
  const SecretKey key = makeKey();
  const PublicKey reader = publicOf(key);
  const std::string sealed = sealPdf(kPdf, key);
  const PdfSeal good = readPdfSeal(sealed, reader);
  EXPECT_EQ(good.state, PdfState::AsGivenOut);
  EXPECT_EQ(good.keyId, keyId(reader));
  for (std::size_t i = 0; i < sealed.size(); ++i)
    for (const char flip : {'\x01', '\x20', '\x80'}) {
      std::string altered = sealed;
      altered[i] = static_cast<char>(altered[i] ^ flip);
      EXPECT_NE(readPdfSeal(altered, reader).state, PdfState::AsGivenOut)
          << "byte " << i << " xor " << int{flip};
    }
  for (std::size_t length = 0; length < sealed.size(); ++length)
    EXPECT_NE(readPdfSeal(sealed.substr(0, length), reader).state, PdfState::AsGivenOut) << length;
}

TEST(PdfSeal, HoldsForAFileThatAnotherProgramSigned) {
  // Made once by another Ed25519, from the description in DEVELOPERS.md.
  const std::string folder = std::string(CW_TEST_DATA) + "/record/";
  const PublicKey key = *readPublicKey(fileBytes(folder + "key.json"));
  EXPECT_EQ(readPdfSeal(fileBytes(folder + "signed.pdf"), key).state, PdfState::AsGivenOut);
}

TEST(PdfSeal, TellsWhatIsWrong) {
  const SecretKey key = makeKey();
  const PublicKey reader = publicOf(key);
  const std::string sealed = sealPdf(kPdf, key);
  std::string altered = sealed;
  altered[12] = 'X';
  EXPECT_EQ(readPdfSeal(altered, reader).state, PdfState::Changed);
  EXPECT_EQ(readPdfSeal(sealed + "\n", reader).state, PdfState::Changed);
  EXPECT_EQ(readPdfSeal(sealed + "1 0 obj\n%%EOF\n", reader).state, PdfState::Changed);
  EXPECT_EQ(readPdfSeal(sealed, publicOf(makeKey())).state, PdfState::OtherKey);
  EXPECT_EQ(readPdfSeal(kPdf, reader).state, PdfState::Unsigned);
  EXPECT_EQ(readPdfSeal("", reader).state, PdfState::Unsigned);
  // The line of another PDF, moved here.
  const std::string line = sealed.substr(kPdf.size());
  EXPECT_EQ(readPdfSeal("%PDF-1.4\nother pages\n%%EOF\n" + line, reader).state, PdfState::Changed);
}

}  // namespace
}  // namespace cw
