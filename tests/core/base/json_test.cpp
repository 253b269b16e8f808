#include "core/base/json.h"

#include <gtest/gtest.h>

namespace cw {
namespace {

std::string refusal(std::string_view text) {
  const auto parsed = parseJson(text);
  return parsed ? "accepted" : sentence(parsed.error());
}

TEST(Json, KeepsNumbersAsWritten) {
  const auto parsed = parseJson(R"({"b":60.50,"a":[1,-2,true,null,"x"]})");
  ASSERT_TRUE(parsed.has_value());
  EXPECT_EQ(canonical(*parsed), R"({"a":[1,-2,true,null,"x"],"b":60.50})");
}

TEST(Json, EscapesAsRfc8785Says) {
  // RFC 8785, section 3.2.2.2: the sample string and its canonical form.
  const auto parsed = parseJson("\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\"");
  ASSERT_TRUE(parsed.has_value());
  EXPECT_EQ(canonical(*parsed), "\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"");
}

TEST(Json, PrettyReadsBackTheSame) {
  const auto parsed = parseJson(R"({"a":[],"b":{},"c":[{"d":1}],"e":"ü"})");
  ASSERT_TRUE(parsed.has_value());
  EXPECT_EQ(*parseJson(pretty(*parsed)), *parsed);
}

TEST(Json, NamesWhatIsWrongAndWhere) {
  EXPECT_NE(refusal("{\"a\":1,\n\"a\":2}").find("a: the key “a” stands twice"), std::string::npos);
  EXPECT_EQ(refusal("{\"a\":\n  nope}").substr(0, 17), "line 2, column 4:");
  EXPECT_NE(refusal("\"\xff\"").find("not UTF-8"), std::string::npos);
  EXPECT_NE(refusal(std::string(100'000, '[')).find("deeper than 32"), std::string::npos);
  EXPECT_NE(refusal("").find("not valid JSON"), std::string::npos);
  EXPECT_NE(refusal("{} {}").find("not valid JSON"), std::string::npos);
}

TEST(JsonReader, GivesBackWhatNobodyAskedFor) {
  const auto parsed = parseJson(R"({"known":"x","later":{"y":1}})");
  auto reader = JsonReader::of(*parsed, "sheet");
  ASSERT_TRUE(reader.has_value());
  EXPECT_EQ(*reader->text("known"), "x");
  EXPECT_EQ(canonical(Json(reader->rest())), R"({"later":{"y":1}})");
  EXPECT_EQ(sentence(reader->text("absent").error()), "sheet.absent: this field is missing; write a text.");
}

}  // namespace
}  // namespace cw
