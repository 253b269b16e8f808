// Every computation for people to look at: with a result, refused, and empty; light and dark.
#include "tests/app/figure_looks.h"
#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

TEST_F(FiguresDesk, EveryComputationCanBeLookedAt) {
  for (const FigureLook& look : figureLooks()) {
    SCOPED_TRACE(look.figure);
    show(look.figure);
    const QString name = QStringLiteral("figures_%1").arg(QLatin1String(look.figure));
    clearInputs();
    EXPECT_TRUE(number().empty());
    for (const auto& [input, text] : look.inputs) type(input, text);
    savePictures(name + QLatin1String("_result"));
    EXPECT_FALSE(number().empty()) << said("outcomeSaid");
    type(look.refused.first, look.refused.second);
    EXPECT_TRUE(number().empty()) << "a refusal shows no number";
    EXPECT_FALSE(found(look.refused.first).empty()) << "and says why under the input";
  }
}

TEST_F(FiguresDesk, TheWorkingUnfoldsUnderAResult) {
  show("condition");
  clearInputs();
  for (const auto& [input, text] : figureLooks()[2].inputs) type(input, text);
  child<QPushButton>(QStringLiteral("workingButton")).click();
  place->resize(1280, 2400);
  savePictures(QStringLiteral("figures_working"));
}

TEST_F(FiguresDesk, EverythingFitsAtTwiceTheTextAndInASmallWindow) {
  Settings().setTextScale(2);
  useLook(Scheme::Light);
  place = std::make_unique<FiguresPlace>(workspace, navigator);
  place->resize(1180, 800);
  place->QWidget::show();
  show("setting");
  for (const auto& [input, text] : figureLooks()[3].inputs) type(input, text);
  savePictures(QStringLiteral("figures_setting_large"));
  for (const QLabel* label : page().findChildren<QLabel*>())
    EXPECT_TRUE(!label->isVisible() || label->width() <= page().width()) << label->text().toStdString();
}

}  // namespace
}  // namespace cw
