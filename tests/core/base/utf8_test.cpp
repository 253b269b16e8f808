#include "core/base/utf8.h"

#include <gtest/gtest.h>

#include <string>

namespace cw {
namespace {

// The cases follow the sections of Markus Kuhn's "UTF-8 decoder capability and stress test", from memory.
TEST(Utf8, TakesTheFirstAndLastOfEachLength) {
  for (const std::string text : {"κόσμε", "\x7f", "\u0080", "\u07ff", "\u0800", "\xed\x9f\xbf", "\ue000",
                                 "\ufffd", "\uffff", "\U00010000", "\U0010ffff", "in·lbf\u2009°"})
    EXPECT_TRUE(isUtf8(text)) << text;
  EXPECT_TRUE(isUtf8(std::string(1, '\0')));
  EXPECT_TRUE(isUtf8(""));
}

TEST(Utf8, RefusesMalformedSequences) {
  const std::string cases[] = {
      "\x80",                      // 3.1 a continuation byte alone, the first …
      "\xbf",                      // … and the last
      "\x80\xbf\x80\xbf",          //
      "\xc0 ",                     // 3.2 a start byte alone
      "\xe0 ",                     //
      "\xf0 ",                     //
      "\xf8 ",                     //
      "\xfc ",                     //
      "\xc3",                      // 3.3 the last byte missing
      "\xe2\x82",                  //
      "\xf0\x9d\x84",              //
      "\xe2\x82 ",                 //
      "\xfe",                      // 3.5 impossible bytes
      "\xff",                      //
      "\xc0\xaf",                  // 4.1 the slash, overlong
      "\xe0\x80\xaf",              //
      "\xf0\x80\x80\xaf",          //
      "\xf8\x80\x80\x80\xaf",      //
      "\xfc\x80\x80\x80\x80\xaf",  //
      "\xc1\xbf",                  // 4.2 the longest overlong
      "\xe0\x9f\xbf",              //
      "\xf0\x8f\xbf\xbf",          //
      "\xc0\x80",                  // 4.3 NUL, overlong
      "\xe0\x80\x80",              //
      "\xed\xa0\x80",              // 5.1 surrogates
      "\xed\xaf\xbf",              //
      "\xed\xb0\x80",              //
      "\xed\xbf\xbf",              //
      "\xed\xa0\x80\xed\xb0\x80",  // 5.2 a pair of them
      "\xf4\x90\x80\x80",          // 2.2 beyond U+10FFFF
      "\xf7\xbf\xbf\xbf",          //
  };
  for (const std::string& text : cases) {
    EXPECT_FALSE(isUtf8(text)) << testing::PrintToString(text);
    EXPECT_FALSE(isUtf8("good " + text)) << testing::PrintToString(text);
    EXPECT_FALSE(isUtf8(text + "good")) << testing::PrintToString(text);
    EXPECT_EQ(utf8SequenceLength(text), 0U) << testing::PrintToString(text);
  }
}

// Every code point written by the formula of RFC 3629, section 3, is one whole sequence; surrogates are not.
TEST(Utf8, KnowsEveryCodePoint) {
  for (unsigned point = 0; point <= 0x10FFFF; ++point) {
    const auto tail = [&](unsigned shift) { return static_cast<char>(0x80 | ((point >> shift) & 0x3F)); };
    std::string text;
    if (point < 0x80)
      text = {static_cast<char>(point)};
    else if (point < 0x800)
      text = {static_cast<char>(0xC0 | (point >> 6)), tail(0)};
    else if (point < 0x10000)
      text = {static_cast<char>(0xE0 | (point >> 12)), tail(6), tail(0)};
    else
      text = {static_cast<char>(0xF0 | (point >> 18)), tail(12), tail(6), tail(0)};
    const bool surrogate = point >= 0xD800 && point <= 0xDFFF;
    ASSERT_EQ(utf8SequenceLength(text), surrogate ? 0 : text.size()) << point;
  }
}

}  // namespace
}  // namespace cw
