#include "core/base/base64.h"

#include "tests/support/matchers.h"

namespace cw {
namespace {

// RFC 4648, section 10.
TEST(Base64, IsThatOfTheStandard) {
  const std::pair<std::string, std::string> kVectors[] = {{"", ""},
                                                          {"f", "Zg=="},
                                                          {"fo", "Zm8="},
                                                          {"foo", "Zm9v"},
                                                          {"foob", "Zm9vYg=="},
                                                          {"fooba", "Zm9vYmE="},
                                                          {"foobar", "Zm9vYmFy"}};
  for (const auto& [bytes, text] : kVectors) {
    EXPECT_EQ(toBase64(bytes), text);
    EXPECT_THAT(fromBase64(text), IsOkAnd(testing::Eq(bytes)));
  }
}

TEST(Base64, RefusesWhatItDoesNotWrite) {
  for (const auto text : {"Zg", "Zg=", "Zg==\n", "Z-==", "Zm9v ", "====", "Zh=="})
    EXPECT_THAT(fromBase64(text), FailsWith(ErrorCode::InvalidInput)) << text;
}

}  // namespace
}  // namespace cw
