// "The manual says 30 N·m for clean dry threads, somebody oiled them; my wrench is in ft·lbf with 1 ft·lbf
// marks and a 3 in crowfoot": by keyboard alone, and no number twice.
#include <cmath>

#include "app/shell/main_window.h"
#include "core/base/clock.h"
#include "tests/app/figures/figures_desk.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

/// Sends keys to whatever has the focus, and counts them.
class Keyboard {
 public:
  explicit Keyboard(QWidget& window) : m_window(window) {}

  void type(const char* text) {
    for (const QChar letter : QString::fromUtf8(text)) {
      QTest::keyClicks(target(), QString(letter));
      ++m_pressed;
    }
  }
  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(target(), key, with);
    ++m_pressed;
    settleLayout();
  }
  /// A value and on to the next input.
  void enter(const char* text) {
    type(text);
    press(Qt::Key_Tab);
  }
  int pressed() const { return m_pressed; }

 private:
  QWidget* target() {
    return QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : &m_window;
  }

  QWidget& m_window;
  int m_pressed = 0;
};

class FiguresFlow : public FiguresDesk {
 protected:
  FiguresFlow() { QApplication::setActiveWindow(place.get()); }  // keys go to the active window
  /// Offscreen a list of choices neither grabs keys nor closes, so these keys do without it.
  void dropChoices() {
    for (QLineEdit* edit : page().findChildren<QLineEdit*>()) edit->setCompleter(nullptr);
  }
};

TEST_F(FiguresFlow, FromTheManualsLineToTheWrenchsMark) {
  show("condition");
  dropChoices();
  page().setFocus();
  Keyboard keys(*place);
  keys.enter("30 Nm");
  keys.enter("dry");
  keys.enter("oil");
  keys.enter("M8");
  EXPECT_EQ(said("outcomeSaid"), "");
  EXPECT_THAT(said("lead"), HasSubstr("dry")) << "the first answer is to clean and dry";
  EXPECT_EQ(number(), "30 N·m");
  const auto numbers = page().findChildren<QLabel*>(QStringLiteral("number"));
  ASSERT_EQ(numbers.size(), 2);
  EXPECT_EQ(plainBlanks(numbers.last()->text()), "22.5 N·m")
      << "30·0.15/0.20 by nut factor, equal clamp load";
  EXPECT_THAT(said("caution"), AllOf(HasSubstr("CAUTION"), HasSubstr("deviation")));
  EXPECT_NE(page().findChild<QWidget*>(QStringLiteral("band")), nullptr);

  keys.press(Qt::Key_2, Qt::AltModifier);
  ASSERT_TRUE(QTest::qWaitFor([this] { return place->shown() == QLatin1String("setting"); }))
      << "a key's click shows";
  settle();
  EXPECT_EQ(plainBlanks(child<QLineEdit>(QStringLiteral("aimField")).text()), "22.5 N·m")
      << "carried, not typed";
  EXPECT_EQ(child<QLineEdit>(QStringLiteral("aimConditionField")).text(), QStringLiteral("oiled"));
  keys.enter("1 ft-lb");
  keys.enter("10 in");
  keys.enter("3 in");
  // 22.5 N·m = 16.595 ft·lbf; · 10/(10+3) = 12.77; the nearest mark is 13, and 13·1.3 = 16.9 is within 5 %.
  EXPECT_EQ(number(), "13 ft·lbf");
  EXPECT_EQ(said("inWords"), "13 foot-pounds");
  EXPECT_THAT(said("caution"), AllOf(HasSubstr("deviation"), HasSubstr("30 N·m")));
  EXPECT_LE(keys.pressed(), 60) << "keys, of which a hundred take a minute";
  RecordProperty("keys", keys.pressed());
  savePictures(QStringLiteral("figures_flow"));
}

TEST_F(FiguresFlow, AsSpecifiedGoesToTheWrenchToo) {
  show("condition");
  for (const auto& [input, text] :
       {std::pair("torque", "30 Nm"), {"condition", "dry"}, {"inUse", "oiled"}, {"thread", "M8"}})
    type(input, text);
  child<QPushButton>(QStringLiteral("carryButton1")).click();
  settle();
  EXPECT_EQ(plainBlanks(child<QLineEdit>(QStringLiteral("aimField")).text()), "30 N·m");
  EXPECT_EQ(child<QLineEdit>(QStringLiteral("aimConditionField")).text(), QStringLiteral("dry"));
}

TEST_F(FiguresFlow, InputsAreRememberedWithTheirUnits) {
  show("clamp");
  type("torque", "22 ft-lb");
  type("thread", "M10");
  place = std::make_unique<FiguresPlace>(workspace, navigator);
  place->QWidget::show();
  show("guard");
  EXPECT_EQ(plainBlanks(child<QLineEdit>(QStringLiteral("torqueField")).text()), "22 ft·lbf");
  EXPECT_EQ(child<QLineEdit>(QStringLiteral("threadField")).text(), QStringLiteral("M10"));
  type("torque", "25");
  EXPECT_THAT(found("torque"), HasSubstr("25 ft·lbf"));
}

TEST_F(FiguresFlow, ASpecificationFillsThemIn) {
  show("clamp");
  type("grade", "8.8");
  type("condition", "oiled");
  Specification specification;
  specification.aim = parse<TorqueTag>("65 in-lb").value();
  specification.low = parse<TorqueTag>("60 in-lb").value();
  specification.high = parse<TorqueTag>("70 in-lb").value();
  specification.printedSecond = "7.3 Nm";
  specification.condition = "dry";
  Fastener fastener;
  fastener.thread = "1/4-20 UNC";
  emit navigator.figuresWanted(specification, fastener);
  settle();
  EXPECT_EQ(place->shown().toStdString(), "guard");
  EXPECT_EQ(plainBlanks(child<QLineEdit>(QStringLiteral("torqueField")).text()), "65 in·lbf");
  EXPECT_EQ(child<QLineEdit>(QStringLiteral("gradeField")).text(), QString())
      << "nothing of another joint stays";
  EXPECT_EQ(number(), "Not judged");
  show("setting");
  type("graduation", "1 in-lb");
  EXPECT_EQ(number(), "65 in·lbf");
  EXPECT_THAT(said("sentences"), Not(HasSubstr("assumed"))) << "the sheet's tolerance is kept";
}

TEST_F(FiguresFlow, FromASheetTheKeyFillsItsSpecificationIn) {
  test::SampleShop sample;
  Workspace workspace(sample.clock());
  test::need(workspace.openShop(toQt(sample.file().string())));
  MainWindow window(workspace);
  window.QWidget::show();
  QApplication::setActiveWindow(&window);
  window.show(QStringLiteral("sheets"));
  settle();
  QTest::keyClick(&window, Qt::Key_F8);
  settle();
  EXPECT_EQ(window.shownPlace().toStdString(), "figures");
  const auto* torque =
      window.placeWidget(QStringLiteral("figures"))->findChild<QLineEdit*>(QStringLiteral("torqueField"));
  ASSERT_NE(torque, nullptr);
  EXPECT_EQ(plainBlanks(torque->text()), "65 in·lbf") << "the sample sheet's aim";
  QTest::keyClick(&window, Qt::Key_F8);
  EXPECT_EQ(window.shownPlace().toStdString(), "sheets");
}

TEST_F(FiguresFlow, NumbersAreTypedAndRememberedInTheLocalesManner) {
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  show("convert");
  type("torque", "22,5 Nm");
  EXPECT_EQ(number(), "22.5 N·m");
  show("clamp");
  EXPECT_EQ(plainBlanks(child<QLineEdit>(QStringLiteral("torqueField")).text()), "22.5 N·m");
  type("condition", "µ 0,12 / 0,10");
  type("thread", "M8");
  type("deviation", "2,5 %");
  EXPECT_FALSE(number().empty()) << said("outcomeSaid");
  QLocale::setDefault(QLocale::c());
}

TEST_F(FiguresFlow, TheKeyboardStandsInTheFirstInputThatIsStillEmpty) {
  show("guard");
  type("torque", "30 Nm");
  type("condition", "dry");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_PageDown, Qt::ControlModifier);
  settle();
  EXPECT_EQ(place->shown().toStdString(), "condition");
  EXPECT_EQ(QApplication::focusWidget(), &child<QLineEdit>(QStringLiteral("inUseField")));
}

TEST_F(FiguresFlow, AnUnstatedConditionIsRefusedAndNotGuessed) {
  show("condition");
  for (const auto& [input, text] :
       {std::pair("torque", "30 Nm"), {"condition", "unknown"}, {"inUse", "oiled"}, {"thread", "M8"}})
    type(input, text);
  EXPECT_EQ(number(), "");
  EXPECT_THAT(found("condition"), HasSubstr("does not state"));
  type("condition", "dry");
  type("inUse", "unknown");
  EXPECT_EQ(number(), "");
  EXPECT_THAT(found("inUse"), Not(testing::IsEmpty()));
}

TEST_F(FiguresFlow, ANameThatIsNotThereIsAnsweredByNearOnes) {
  show("condition");
  type("condition", "oild");
  EXPECT_THAT(found("condition"), HasSubstr("oiled"));
  type("thread", "M8x2");
  EXPECT_THAT(found("thread"), HasSubstr("M8"));
}

TEST_F(FiguresFlow, OneKeyOpensItFromAnywhereAndGoesBack) {
  SystemClock clock;
  Workspace workspace(clock);
  MainWindow window(workspace);
  window.QWidget::show();
  QApplication::setActiveWindow(&window);
  window.show(QStringLiteral("sheets"));
  settle();
  QTest::keyClick(&window, Qt::Key_F8);
  EXPECT_EQ(window.shownPlace().toStdString(), "figures");
  settle();
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_F8);
  EXPECT_EQ(window.shownPlace().toStdString(), "sheets");
  const auto* button = window.findChild<QPushButton*>(QStringLiteral("figuresRailButton"));
  EXPECT_THAT(button->toolTip().toStdString(), HasSubstr("F8"));
}

}  // namespace
}  // namespace cw
