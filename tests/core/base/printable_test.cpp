#include "core/base/printable.h"

#include <gmock/gmock.h>

#include "core/base/json.h"

namespace cw {
namespace {

/// UTF-8 of a code point, by the table of RFC 3629.
std::string utf8(unsigned code) {
  std::string out;
  if (code < 0x80) return std::string(1, static_cast<char>(code));
  if (code < 0x800) {
    out += static_cast<char>(0xc0 | code >> 6);
  } else {
    out += static_cast<char>(0xe0 | code >> 12);
    out += static_cast<char>(0x80 | (code >> 6 & 0x3f));
  }
  return out + static_cast<char>(0x80 | (code & 0x3f));
}

bool isPrintable(const std::string& text) {
  return firstUnprintable(text).empty();
}

TEST(Printable, FindsEveryControlAndDirectionCharacter) {
  for (unsigned code = 0; code < 0x20; ++code) EXPECT_FALSE(isPrintable("a" + utf8(code))) << code;
  for (unsigned code = 0x7f; code < 0xa0; ++code) EXPECT_FALSE(isPrintable(utf8(code) + "a")) << code;
  for (const unsigned code : {0x61cu, 0x200eu, 0x200fu, 0x202au, 0x202bu, 0x202cu, 0x202du, 0x202eu, 0x2066u,
                              0x2067u, 0x2068u, 0x2069u, 0x2028u, 0x2029u, 0xfeffu})
    EXPECT_FALSE(isPrintable("a" + utf8(code) + "b")) << code;
  EXPECT_FALSE(isPrintable("a\xff"));
}

TEST(Printable, LeavesEveryOtherLetterAlone) {
  const std::string words = "Größe 60–70\u202fin·lbf “Ø 12 µm” 漢字 ولي \u0645\u06cc\u200c\u062e 🔧";
  EXPECT_TRUE(isPrintable(words));
  EXPECT_EQ(printable(words), words);
  EXPECT_EQ(printableJson(words), words);
}

TEST(Printable, NamesTheFirst) {
  EXPECT_EQ(firstUnprintable("ab\u202ec\x1b"), "\u202e");
  EXPECT_EQ(firstUnprintable("ab\xc3"), "\xc3");
  EXPECT_EQ(firstUnprintable(""), "");
}

TEST(Printable, WritesOutWhatItFinds) {
  EXPECT_EQ(printable("a\x1b[2Jb\n\xff"), "a\\x1b[2Jb\\x0a\\xff");
  EXPECT_EQ(printable("\u202e"), "\\xe2\\x80\\xae");
}

TEST(Printable, KeepsTheMeaningOfJson) {
  for (unsigned code = 1; code < 0x3000; ++code) {
    const Json value(Json::Object{{"text", "a" + utf8(code) + "b"}});
    const std::string written = printableJson(canonical(value));
    ASSERT_TRUE(isPrintable(written)) << code;
    ASSERT_EQ(*parseJson(written), value) << code;
  }
}

}  // namespace
}  // namespace cw
