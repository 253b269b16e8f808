#include "core/base/digest.h"

#include "tests/support/matchers.h"

namespace cw {
namespace {

// The examples of FIPS 180-4 and of NIST's CAVP byte vectors, from memory; sha256sum gives the same digests.
TEST(Sha256, MatchesThePublishedVectors) {
  EXPECT_EQ(hex(sha256("")), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(hex(sha256("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(hex(sha256("abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmno"
                       "ijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu")),
            "cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1");
  EXPECT_EQ(hex(sha256(std::string(1'000'000, 'a'))),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
  EXPECT_EQ(hex(sha256("\xd3")), "28969cdfa74a12c82f3bad960b0b000aca2ac329deea5c2328ebc6f2ba9802c1");
}

TEST(Hex, WritesEveryByteAndReadsItBack) {
  std::string bytes;
  for (int i = 0; i < 256; ++i) bytes += static_cast<char>(i);
  EXPECT_EQ(hex(bytes).substr(0, 8), "00010203");
  EXPECT_EQ(hex(bytes).substr(504), "fcfdfeff");
  EXPECT_THAT(bytesFromHex(hex(bytes)), IsOkAnd(bytes));
  EXPECT_THAT(digestFromHex(hex(sha256("abc"))), IsOkAnd(sha256("abc")));
}

TEST(Hex, RefusesWhatIsNotLowerCasePairs) {
  for (const char* text : {"0", "0g", "AB", " 00", "0x00"})
    EXPECT_THAT(bytesFromHex(text), FailsWith(ErrorCode::InvalidInput)) << text;
  EXPECT_THAT(digestFromHex("00"), FailsWith(ErrorCode::InvalidInput,
                                             "“00” is not a SHA-256 digest; write 64 hexadecimal digits."));
}

}  // namespace
}  // namespace cw
