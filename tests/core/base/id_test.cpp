#include "core/base/id.h"

#include <gtest/gtest.h>

namespace cw {
namespace {

TEST(Id, VersionSevenCarriesTheTimeFirst) {
  Moment moment{std::chrono::sys_time<std::chrono::milliseconds>{std::chrono::milliseconds{0x017F22E279B0}},
                {}};
  const Id id = Id::make(moment);  // time of RFC 9562, appendix A.6
  EXPECT_EQ(id.text().substr(0, 13), "017f22e2-79b0");
  EXPECT_EQ(id.text()[14], '7');
  EXPECT_NE(std::string("89ab").find(id.text()[19]), std::string::npos);
  EXPECT_EQ(*Id::parse(id.text()), id);
}

TEST(Id, RefusesOtherText) {
  for (const char* text :
       {"", "x", "017f22e2-79b0-7cc3-98c4-dc0c0c07398", "017f22e2-79b0-7cc3-98c4-dc0c0c07398g"})
    EXPECT_EQ(Id::parse(text).error().code, ErrorCode::InvalidInput) << text;
}

}  // namespace
}  // namespace cw
