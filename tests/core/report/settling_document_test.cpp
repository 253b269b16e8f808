#include "core/report/settling_document.h"

#include <gmock/gmock.h>

#include "core/settling/settling_examples.h"

namespace cw {
namespace {

TEST(SettlingDocument, StatesEveryPassAndTheOneMore) {
  const SettlingExample ring = settlingExamples().front();
  const auto model = *settlingModel(ring.joint);
  const auto outcome = *settleBy(model, ring.joint, {OrderRule::Star, {0.5, 1}, 2}, ring.target);
  const Document document = settlingDocument(outcome, plain);
  const auto& table = std::get<Table>(document.sections[0].blocks[0]);
  ASSERT_EQ(table.rows.size(), 5u);  // two passes, two rounds, one more
  EXPECT_EQ(table.rows[1][0].text, "2 at 100 %");
  EXPECT_EQ(table.rows[3][0].text, "4, round");
  for (const auto& row : table.rows) EXPECT_EQ(row.size(), table.columns.size());
  EXPECT_THAT(plain(settlingLimits().front()), testing::HasSubstr("prediction"));
}

}  // namespace
}  // namespace cw
