// The bench in the smallest window: nothing is cut off, and the main action can be reached at every stage.
#include <QScrollArea>

#include "app/shell/main_window.h"
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

constexpr QSize kSmallest(1024, 600);

QRect inWindow(const QWidget& widget, const QWidget& window) {
  return {widget.mapTo(&window, QPoint()), widget.size()};
}

/// Width and height that a text needs where it stands.
bool isCut(const QLabel& label) {
  if (label.wordWrap()) return label.heightForWidth(label.width()) > label.height();
  return label.sizeHint().width() > label.width() || label.sizeHint().height() > label.height();
}

bool isCut(const QPushButton& button) {
  const int flags = button.property(kMainProperty).toBool() ? Qt::TextWordWrap : 0;
  const QRect needed = button.fontMetrics().boundingRect(button.rect(), flags, button.text());
  return needed.width() > button.width() || needed.height() > button.height();
}

class SmallWindow : public AtTheBench {
 protected:
  void SetUp() override {
    AtTheBench::SetUp();
    m_bench.reset();
    m_window = std::make_unique<MainWindow>(*m_workspace);
    m_window->resize(kSmallest);
    m_window->QMainWindow::show();
    // The fixture's hands reach for the bench of the whole window.
    m_album = QStringLiteral("small_bench");
    m_bench.reset(m_window->findChild<BenchPlace*>());
  }
  void TearDown() override {
    (void)m_bench.release();  // the window's own
    m_window.reset();
  }

  void expectFits(const std::string& where) {
    for (int pass = 0; pass < 4; ++pass) QCoreApplication::processEvents();
    ASSERT_EQ(m_window->size(), kSmallest) << where;
    for (const QLabel* label : m_window->findChildren<QLabel*>())
      EXPECT_FALSE(label->isVisible() && !label->text().isEmpty() && isCut(*label))
          << where << ": " << fromQt(label->objectName() + QLatin1Char(' ') + label->text());
    for (const QPushButton* button : m_window->findChildren<QPushButton*>())
      EXPECT_FALSE(button->isVisible() && isCut(*button))
          << where << ": " << fromQt(button->objectName() + QLatin1Char(' ') + button->text());
    for (const QScrollArea* area : m_window->findChildren<QScrollArea*>())
      EXPECT_FALSE(area->isVisible() && area->widget()->width() > area->viewport()->width())
          << where << ": the columns are wider than the window";
    const auto* main = visible<QPushButton>("mainButton");
    EXPECT_TRUE(m_window->rect().contains(inWindow(*main, *m_window))) << where;
    const QString scheme = GetParam() == Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark");
    EXPECT_TRUE(savePicture(*m_window, QStringLiteral("small_%1_%2").arg(toQt(where), scheme)));
  }
  /// Whole, whatever stands above it.
  void expectInView(const char* name) {
    const auto* part = visible<QWidget>(name);
    EXPECT_EQ(part->visibleRegion().boundingRect(), part->rect()) << name;
  }
  void enterThrough(
      const char* where, Stage stage, const std::function<void()>& look = [] {}) {
    ASSERT_EQ(run().stage(), stage) << said();
    expectFits(where);
    look();
    key(Qt::Key_Return);
  }

  std::unique_ptr<MainWindow> m_window;
};

TEST_P(SmallWindow, ShowsEveryStageWhole) {
  start();
  enterThrough("warnings", Stage::ReadWarnings);
  QTest::keyClick(visible<QCheckBox>("renewedCheck"), Qt::Key_Space);
  enterThrough("act", Stage::Act);
  enterThrough("check", Stage::Check);
  QTest::keyClicks(&run(), QStringLiteral("0.05"));
  enterThrough("measure", Stage::Measure);
  type("batchField", "B-77");
  enterThrough("apply", Stage::Apply);
  const auto drawingIsWhole = [this] { expectInView("jointView"); };
  enterThrough("hand_start", Stage::HandStart, drawingIsWhole);
  enterThrough("condition", Stage::ConfirmCondition);
  enterThrough("tool", Stage::SetTool);
  enterThrough("count", Stage::CountPass, drawingIsWhole);
  enterThrough("tool_final", Stage::SetTool);
  ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  expectFits("witness");
  m_window->activateWindow();
  fillSecondPerson("65 in-lb");
  type("pinField", "0000");
  auto* last = visible<QLineEdit>("pinField");
  last->setFocus();
  QTest::keyClick(last, Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("not the PIN"));
  expectFits("witness_refused");
  expectInView("pinField");  // the sentence takes room, but not where somebody types
  secondPerson("65 in-lb");
  QTest::keyClicks(&run(), QStringLiteral("650"));
  key(Qt::Key_Return);  // refused: the sentence takes room too
  expectFits("refused");
  type("readingField", "66");
  enterThrough("position", Stage::TightenPosition, drawingIsWhole);
  for (int i = 0; i < 3; ++i) key(Qt::Key_Space);
  enterThrough("check_pass", Stage::CheckPass, drawingIsWhole);
  QTest::mouseClick(visible<QPushButton>("troubleButton"), Qt::LeftButton);
  expectFits("trouble");
}

INSTANTIATE_TEST_SUITE_P(Schemes, SmallWindow, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw
