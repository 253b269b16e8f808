#include "app/layout/layout_editor.h"
#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

TEST_F(FiguresDesk, OrderIsEditedInItsPlace) {
  show("order");
  auto* editor = place->findChild<LayoutEditor*>();
  ASSERT_NE(editor, nullptr);
  EXPECT_EQ(orderLabels(editor->pattern()).value(),
            (std::vector<std::string>{"1", "5", "3", "7", "2", "6", "4", "8"}));
  savePictures(QStringLiteral("figures_order"));
}

}  // namespace
}  // namespace cw
