// The walk's checks against small widgets that are wrong on purpose, and against the same ones mended.
#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QTableWidget>

#include "app/look/measures.h"
#include "tests/app/look.h"
#include "tests/app/walk/bounds.h"
#include "tests/app/walk/control_checks.h"
#include "tests/app/walk/text_checks.h"
#include "tests/app/walk/walk.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

class Checks : public testing::Test {
 protected:
  void SetUp() override {
    Settings().setTextScale(1);
    useLook(Scheme::Light);
    window.resize(400, 200);
  }
  QLabel* label(const QString& text, const QRect& where) {
    auto* out = new QLabel(text, &window);
    out->setGeometry(where);
    return out;
  }
  QPushButton* button(const QString& text, const QRect& where) {
    auto* out = new QPushButton(text, &window);
    out->setObjectName(text);
    out->setGeometry(where);
    return out;
  }
  std::vector<PaintedText> painted() {
    window.show();
    settle();
    return paintedText(window);
  }
  QImage picture() { return window.grab().toImage().convertToFormat(QImage::Format_RGB32); }
  static std::string said(const Complaints& complaints) {
    std::string out;
    for (const Complaint& one : complaints)
      out += one.check.toStdString() + ": " + one.what.toStdString() + "\n";
    return out;
  }

  QWidget window;
  Worst worst;
};

TEST_F(Checks, HearEveryTextWithItsPlaceAndInk) {
  label(QStringLiteral("here"), {50, 60, 200, 40});
  const auto texts = painted();
  ASSERT_EQ(texts.size(), 1U);
  EXPECT_EQ(texts[0].text, QStringLiteral("here"));
  EXPECT_EQ(texts[0].ink, inkOf(window.palette()));
  EXPECT_TRUE(QRectF(50, 60, 200, 40).contains(texts[0].rect));
  EXPECT_EQ(texts[0].widget->parentWidget(), &window);
}

TEST_F(Checks, FindTextThatIsTooSmall) {
  QLabel* text = label(QStringLiteral("small"), {10, 10, 300, 100});
  QFont font = text->font();
  font.setPixelSize(8);
  text->setFont(font);
  EXPECT_THAT(said(checkHeights(painted(), pixels(1, &window), 1, worst)), HasSubstr("least 2.5"));
  text->setFont(fontOfHeight(bounds::kDesk, text));
  EXPECT_THAT(said(checkHeights(painted(), pixels(1, &window), 1, worst)), IsEmpty());
  EXPECT_THAT(said(checkHeights(painted(), pixels(1, &window), 2, worst)), HasSubstr("least 5"))
      << "at 200 %";
}

TEST_F(Checks, FindTextTooFaintOnWhatIsReallyBehindIt) {
  QLabel* text = label(QStringLiteral("faint words"), {10, 10, 300, 40});
  QPalette palette = text->palette();
  palette.setColor(QPalette::WindowText, QColor(165, 163, 155));
  text->setPalette(palette);
  EXPECT_THAT(said(checkContrast(painted(), picture(), worst)), HasSubstr("least 7"));
  // The same ink is strong enough once a dark ground is painted below it by somebody else.
  window.setAutoFillBackground(true);
  QPalette dark = window.palette();
  dark.setColor(QPalette::Window, Qt::black);
  window.setPalette(dark);
  EXPECT_THAT(said(checkContrast(painted(), picture(), worst)), IsEmpty());
}

TEST_F(Checks, FindTextInTheColourOfItsGround) {
  QLabel* text = label(QStringLiteral("nothing to see"), {10, 10, 300, 40});
  text->setForegroundRole(QPalette::Window);
  EXPECT_THAT(said(checkContrast(painted(), picture(), worst)), HasSubstr("has 1.0 : 1"));
}

TEST_F(Checks, FindTextThatIsCut) {
  QLabel* text = label(QStringLiteral("a sentence that needs more room than this"), {10, 10, 60, 30});
  EXPECT_THAT(said(checkCut(painted())), HasSubstr("cut: "));
  text->resize(380, 30);
  EXPECT_THAT(said(checkCut(painted())), IsEmpty());
  text->setWordWrap(true);
  text->resize(120, 26);
  EXPECT_THAT(said(checkCut(painted())), HasSubstr("cut: ")) << "wrapped, and too low for its lines";
}

TEST_F(Checks, FindACellThatIsShortened) {
  QTableWidget table(1, 1, &window);
  table.setWordWrap(false);
  table.setItem(0, 0, new QTableWidgetItem(QStringLiteral("a long name of a part that does not fit")));
  table.setColumnWidth(0, 90);
  table.resize(300, 150);
  EXPECT_THAT(said(checkCut(painted())), HasSubstr("is shortened"));
  table.setColumnWidth(0, 285);
  EXPECT_THAT(said(checkCut(painted())), IsEmpty());
}

TEST_F(Checks, LetWhatCanBeScrolledBeAndNotWhatCannot) {
  QScrollArea area(&window);
  area.resize(200, 60);
  auto* inside = new QLabel(QStringLiteral("one\ntwo\nthree\nfour\nfive\nsix"));
  area.setWidget(inside);
  EXPECT_THAT(said(checkCut(painted())), IsEmpty());
  area.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area.setWidgetResizable(true);
  inside->setMinimumSize(1, 1);
  inside->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
  EXPECT_THAT(said(checkCut(painted())), HasSubstr("cut: "));
}

TEST_F(Checks, FindARowThatNoScrollBarBrings) {
  QListWidget list(&window);
  list.resize(200, 40);
  list.addItems({QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three")});
  for (int row = 0; row < list.count(); ++row) list.item(row)->setSizeHint({0, 26});
  EXPECT_THAT(said(checkCut(painted())), IsEmpty());
  list.setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  EXPECT_THAT(said(checkCut(painted())), HasSubstr("cut: "));
}

TEST_F(Checks, FindWhatMustBeScrolledSideways) {
  QScrollArea area(&window);
  area.resize(200, 60);
  area.setWidget(new QLabel(QStringLiteral("a line that is much longer than the area is wide")));
  painted();
  EXPECT_THAT(said(checkAcross(window)), HasSubstr("scrolls sideways"));
  area.resize(390, 60);
  painted();
  EXPECT_THAT(said(checkAcross(window)), IsEmpty());
}

TEST_F(Checks, FindTextsThatLieOnOneAnother) {
  label(QStringLiteral("first"), {10, 10, 100, 30});
  QLabel* second = label(QStringLiteral("second"), {20, 12, 100, 30});
  EXPECT_THAT(said(checkOverlap(painted())), HasSubstr("lies on"));
  second->move(20, 50);
  EXPECT_THAT(said(checkOverlap(painted())), IsEmpty());
}

TEST_F(Checks, FindRunningTextInAFixedPitchFace) {
  QLabel* text = label(QStringLiteral("running text"), {10, 10, 300, 40});
  text->setFont(QFont(QStringLiteral("DejaVu Sans Mono"), 12));
  EXPECT_THAT(said(checkProportional(painted())), HasSubstr("equally wide"));
  text->setFont(deskFont());
  EXPECT_THAT(said(checkProportional(painted())), IsEmpty());
}

TEST_F(Checks, FindTargetsTooSmallAndTooClose) {
  const double dots = pixels(1, &window);
  const int target = static_cast<int>(std::ceil(bounds::kTarget * dots));
  QPushButton* first = button(QStringLiteral("A"), {10, 10, target, target});
  QPushButton* second = button(QStringLiteral("B"), {10 + target + 40, 10, target, target});
  painted();
  EXPECT_THAT(said(checkTargets(window, dots, worst)), IsEmpty());
  second->resize(target, target / 2);
  EXPECT_THAT(said(checkTargets(window, dots, worst)), HasSubstr("target: is"));
  second->setGeometry(10 + target + 4, 10, target, target);
  EXPECT_THAT(said(checkTargets(window, dots, worst)), HasSubstr("gap: is 1.0 mm"));
  second->hide();
  first->setProperty(kMainProperty, true);
  EXPECT_THAT(said(checkTargets(window, dots, worst)), HasSubstr("least 44 × 22"));
}

TEST_F(Checks, FindAControlThatDoesNotStandOut) {
  QPushButton* faint = button(QStringLiteral("faint"), {20, 20, 120, 50});
  painted();
  EXPECT_THAT(said(checkControls(window, picture(), worst)), IsEmpty());
  QPalette palette = faint->palette();
  palette.setColor(QPalette::WindowText, QColor(0xE0, 0xDD, 0xD4));
  faint->setPalette(palette);
  painted();
  EXPECT_THAT(said(checkControls(window, picture(), worst)), HasSubstr("outline: "));
}

TEST_F(Checks, FindAWidgetWithoutANameToSpeak) {
  QLineEdit field(&window);
  field.setObjectName(QStringLiteral("field"));
  painted();
  EXPECT_THAT(said(checkNames(window)), HasSubstr("no accessible name"));
  field.setAccessibleName(QStringLiteral("Reading"));
  EXPECT_THAT(said(checkNames(window)), IsEmpty());
  field.setObjectName(QString());
  EXPECT_THAT(said(checkNames(window)), HasSubstr("no object name"));
}

TEST_F(Checks, JudgeNoInkThatIsScrolledAway) {
  QScrollArea area(&window);
  area.setGeometry(0, 0, 200, 40);
  auto* inside = new QWidget;
  inside->resize(180, 400);
  auto* faint = new QLabel(QStringLiteral("far below"), inside);
  faint->setGeometry(0, 300, 180, 30);
  faint->setForegroundRole(QPalette::Window);
  area.setWidget(inside);
  painted();
  EXPECT_THAT(said(checkContrast(painted(), picture(), worst)), IsEmpty());
  area.ensureWidgetVisible(faint);
  EXPECT_THAT(said(checkContrast(painted(), picture(), worst)), HasSubstr("least 7"));
}

TEST_F(Checks, KnowThatAFigureHasNothingBelowItsLine) {
  QLabel* upper = label(QStringLiteral("4"), {10, 10, 60, 20});
  label(QStringLiteral("you stand here"), {10, 21, 200, 20});
  EXPECT_THAT(said(checkOverlap(painted())), IsEmpty());
  upper->setText(QStringLiteral("y"));
  upper->move(10, 12);
  EXPECT_THAT(said(checkOverlap(painted())), HasSubstr("lies on"));
}

TEST_F(Checks, HearNothingWhereOnlyALineMayBreak) {
  label(QString(QChar(0x200B)), {10, 10, 60, 20});
  EXPECT_TRUE(painted().empty());
}

TEST_F(Checks, CountNoRowThatIsScrolledAway) {
  QScrollArea area(&window);
  area.setGeometry(0, 0, 300, 60);
  auto* list = new QListWidget;
  list->addItems(
      {QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three"), QStringLiteral("four")});
  for (int row = 0; row < list->count(); ++row) list->item(row)->setSizeHint({0, 40});
  list->resize(280, 200);
  area.setWidget(list);
  painted();
  const auto rows = targetsIn(window);
  EXPECT_EQ(rows.size(), 1U);
}

/// Keeps Tab to itself.
class Trap final : public QLineEdit {
 public:
  using QLineEdit::QLineEdit;
  bool focusNextPrevChild(bool) override { return true; }
};

TEST_F(Checks, FindFocusThatJumpsOrIsHeld) {
  QPushButton* top = button(QStringLiteral("top"), {10, 10, 80, 40});
  QPushButton* middle = button(QStringLiteral("middle"), {10, 60, 80, 40});
  QPushButton* low = button(QStringLiteral("low"), {10, 110, 80, 40});
  window.show();
  window.activateWindow();
  top->setFocus();
  settle();
  EXPECT_THAT(said(checkFocusOrder(window)), IsEmpty());
  QWidget::setTabOrder(top, low);
  QWidget::setTabOrder(low, middle);
  EXPECT_THAT(said(checkFocusOrder(window)), HasSubstr("goes up"));
  QWidget::setTabOrder(top, middle);
  QWidget::setTabOrder(middle, low);
  Trap trap(&window);
  trap.setGeometry(120, 10, 80, 40);
  trap.show();
  EXPECT_THAT(said(checkFocusOrder(window)), HasSubstr("holds Tab"));
}

TEST_F(Checks, LetFocusLeaveWhatIsScrolledForWhatStandsBelowIt) {
  QScrollArea area(&window);
  area.setGeometry(0, 0, 200, 80);
  area.setFocusPolicy(Qt::NoFocus);
  auto* inside = new QWidget;
  inside->resize(180, 600);
  auto* deep = new QLineEdit(inside);
  deep->setGeometry(0, 500, 100, 30);
  area.setWidget(inside);
  button(QStringLiteral("foot"), {0, 120, 80, 40});
  window.show();
  window.activateWindow();
  deep->setFocus();
  settle();
  EXPECT_THAT(said(checkFocusOrder(window)), IsEmpty()) << "the field stands where its area does";
}

}  // namespace
}  // namespace cw
