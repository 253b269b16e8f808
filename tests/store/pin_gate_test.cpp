#include "core/store/pin_gate.h"

#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::SampleShop;
using testing::HasSubstr;

class PinGateTest : public testing::Test {
 protected:
  PinGateTest() : m_gate(m_shop->database(), m_shop->people()), m_job(m_shop.newId()) {}

  Result<void> enter(const std::string& sign, std::string_view pin) {
    return m_gate.check(sign, pin, m_job, m_shop.clock().now());
  }
  void enterWrong(int times) {
    for (int i = 0; i < times; ++i) EXPECT_THAT(enter("mira", "0000"), FailsWith(ErrorCode::WrongPin));
  }
  std::string logged(const std::string& outcome) {
    return test::RawSqlite(m_shop.file())
        .ask("SELECT count(*) FROM sign_in WHERE outcome = '" + outcome + "'");
  }

  SampleShop m_shop;
  PinGate m_gate;
  Id m_job;
};

TEST_F(PinGateTest, LogsEveryAttempt) {
  EXPECT_THAT(enter("mira", test::kPin), IsOk());
  EXPECT_THAT(enter("mira", "9999"), FailsWith(ErrorCode::WrongPin, HasSubstr("not the PIN of Mira Sol")));
  EXPECT_EQ(logged("accepted"), "1");
  EXPECT_EQ(logged("wrong-pin"), "1");
}

TEST_F(PinGateTest, LocksOutAfterFiveWrongOnesInARow) {
  enterWrong(kWrongPins);
  EXPECT_THAT(enter("mira", test::kPin),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("wait until 2026-03-04T08:1")));
  EXPECT_EQ(logged("locked-out"), "1");
  EXPECT_THAT(enter("otto", test::kPin), IsOk()) << "others are not locked out";
}

TEST_F(PinGateTest, ARightPinStartsTheCountAnew) {
  enterWrong(kWrongPins - 1);
  EXPECT_THAT(enter("mira", test::kPin), IsOk());
  enterWrong(kWrongPins - 1);
  EXPECT_THAT(enter("mira", test::kPin), IsOk());
}

TEST_F(PinGateTest, OpensAgainAfterAWhile) {
  enterWrong(kWrongPins);
  m_shop.clock().set({m_shop.clock().now().utc + kLockOut, std::chrono::minutes(60)});
  EXPECT_THAT(enter("mira", test::kPin), IsOk());
}

TEST_F(PinGateTest, ALockOutOutlivesTheProgram) {
  enterWrong(kWrongPins);
  m_shop.reopen();
  EXPECT_THAT(m_shop->ledger().start(m_shop.beginning()),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("wrong PINs")));
}

TEST_F(PinGateTest, KnowsNobodyElse) {
  EXPECT_THAT(enter("nobody", test::kPin), FailsWith(ErrorCode::NotFound));
}

}  // namespace
}  // namespace cw
