// Every computation for people to look at: with a result, refused, and empty; light and dark.
#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

using Inputs = std::vector<std::pair<const char*, const char*>>;

struct Look {
  const char* figure;
  Inputs result;
  std::pair<const char*, const char*> refused;  ///< the input that spoils it
};

const Look kLooks[] = {
    {"convert", {{"torque", "60 in-lb"}, {"thread", "1/4-20 UNC"}, {"grade", "SAE 5"}}, {"torque", "60 lb"}},
    {"guard",
     {{"torque", "30 ft-lb"},
      {"second", "41 Nm"},
      {"thread", "M8"},
      {"grade", "8.8"},
      {"condition", "dry"},
      {"material", "grey iron"},
      {"engagement", "12 mm"}},
     {"grade", "SAE 5"}},
    {"condition",
     {{"torque", "30 Nm"}, {"condition", "clean dry"}, {"inUse", "oil"}, {"thread", "M8"}, {"grade", "8.8"}},
     {"inUse", "dry"}},
    {"setting",
     {{"aim", "22.5 Nm"},
      {"graduation", "1 ft-lb"},
      {"length", "10 in"},
      {"offset", "3 in"},
      {"deviation", "4 %"},
      {"thread", "M8"},
      {"grade", "8.8"}},
     {"graduation", "10 ft-lb"}},
    {"applied",
     {{"setting", "17 ft-lb"}, {"length", "10 in"}, {"offset", "3 in"}, {"angle", "45"}},
     {"angle", "200"}},
    {"clamp",
     {{"torque", "25 Nm"},
      {"thread", "M8"},
      {"grade", "8.8"},
      {"condition", "oiled"},
      {"face", "hex"},
      {"deviation", "4 %"}},
     {"torque", "4000 Nm"}},
    {"torque",
     {{"load", "75 % of proof"},
      {"thread", "M8"},
      {"grade", "8.8"},
      {"condition", "µ 0.12 / 0.10"},
      {"deviation", "4 %"}},
     {"load", "75 %"}},
    {"stripping",
     {{"thread", "M6"}, {"grade", "8.8"}, {"material", "cast aluminium 319-F"}, {"engagement", "6 mm"}},
     {"engagement", "0 mm"}},
    {"angle",
     {{"thread", "M12"},
      {"angleLoad", "40 kN"},
      {"snug", "5 kN"},
      {"plain", "30 mm"},
      {"threaded", "15 mm"},
      {"members", "steel"}},
     {"angleLoad", "3 kN"}},
};

TEST_F(FiguresDesk, EveryComputationCanBeLookedAt) {
  for (const Look& look : kLooks) {
    SCOPED_TRACE(look.figure);
    show(look.figure);
    const QString name = QStringLiteral("figures_%1").arg(QLatin1String(look.figure));
    clearInputs();
    EXPECT_TRUE(number().empty());
    for (const auto& [input, text] : look.result) type(input, text);
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
  for (const auto& [input, text] : kLooks[2].result) type(input, text);
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
  for (const auto& [input, text] : kLooks[3].result) type(input, text);
  savePictures(QStringLiteral("figures_setting_large"));
  for (const QLabel* label : page().findChildren<QLabel*>())
    EXPECT_TRUE(!label->isVisible() || label->width() <= page().width()) << label->text().toStdString();
}

}  // namespace
}  // namespace cw
