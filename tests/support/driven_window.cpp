// driven_window SHOP FOLDER
// The program's window on that shop file, without a screen, with somebody at its keys who works through one
// job after the other and is called away now and then. After each key that an entry came of, once the window
// shows what is next, one line: "shown JOB COUNT HEAD NEXT"; when a job is brought up, "at JOB COUNT HEAD
// NEXT".
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <QTimer>
#include <iostream>

#include "app/bench/bench_place.h"
#include "app/common/wording.h"
#include "app/look/fonts.h"
#include "app/run/run_panel.h"
#include "app/shell/main_window.h"
#include "tests/kill/next_words.h"

namespace cw {
namespace {

constexpr int kMovesToAPause = 11;

class Fingers final : public QObject {
 public:
  explicit Fingers(BenchPlace& bench) : m_bench(bench) {}

  void work() {
    const bool wasUp = isRunning();
    move();
    if (isRunning()) report(wasUp);
    QTimer::singleShot(0, this, [this] { work(); });
  }

 private:
  RunPanel& run() { return *m_bench.run(); }
  bool isRunning() { return m_bench.currentWidget() == &run(); }

  template <class Widget>
  Widget* shown(const char* name) {
    for (auto* widget : m_bench.findChildren<Widget*>(QLatin1String(name)))
      if (widget->isVisible() && widget->isEnabled()) return widget;
    return nullptr;
  }
  void press(const char* button) {
    if (auto* found = shown<QPushButton>(button)) {
      found->setFocus();
      QTest::keyClick(found, Qt::Key_Space);
    }
  }
  void type(const char* field, const char* text) {
    if (auto* found = shown<QLineEdit>(field)) {
      found->clear();
      QTest::keyClicks(found, QLatin1String(text));
    }
  }
  void enter() { QTest::keyClick(&run(), Qt::Key_Return); }

  void move() {
    if (isRunning()) return tighten();
    if (shown<QPushButton>("goOnButton") != nullptr) return type("pinField", "2468"), press("goOnButton");
    if (shown<QPushButton>("sealButton") != nullptr) return press("backButton");
    if (shown<QPushButton>("startButton") != nullptr) return start();
    press(shown<QPushButton>("openJobButton") != nullptr ? "openJobButton" : "startJobButton");
  }
  void start() {
    type("workOrderField", "WO 1");
    auto* person = shown<QComboBox>("personChoice");
    person->setCurrentIndex(person->findData(QStringLiteral("mira")));
    type("pinField", "2468");
    press("startButton");
  }
  void tighten() {
    if (run().stage() != Stage::Resume && ++m_moves % kMovesToAPause == 0) return press("pauseButton");
    switch (run().stage()) {
      case Stage::Act:
        QTest::keyClick(shown<QCheckBox>("renewedCheck"), Qt::Key_Space);
        return enter();
      case Stage::Measure:
        QTest::keyClicks(&run(), QStringLiteral("0.05"));
        return enter();
      case Stage::Apply:
        type("batchField", "B-77");
        return enter();
      case Stage::Resume:
        QTest::keyClicks(&run(), QStringLiteral("2468"));
        return enter();
      case Stage::Hold:
      case Stage::WitnessBeforeFinal:
        type("signField", "otto");
        type("pinField", "2468");
        type("toolField", "T-07");
        type("settingField", "65");
        return enter();
      case Stage::TightenPosition:
        QTest::keyClick(&run(), Qt::Key_Space);
        return;
      default:
        return enter();
    }
  }

  void report(bool wasUp) {
    const Job* job = run().course()->job();
    if (job == nullptr || (wasUp && hex(job->head) == m_told)) return;
    m_told = hex(job->head);
    std::cout << (wasUp ? "shown " : "at ") << job->id.text() << ' ' << job->count() << ' ' << m_told << ' '
              << test::inWords(next(*job)) << std::endl;
  }

  BenchPlace& m_bench;
  std::string m_told;
  int m_moves = 0;
};

}  // namespace
}  // namespace cw

int main(int count, char** words) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, QString::fromLocal8Bit(words[2]));
  QApplication::setOrganizationName(QStringLiteral("Clampwright tests"));
  cw::tellFontsApart();
  QApplication application(count, words);
  cw::MainWindow::applyLook();
  cw::SystemClock clock;
  cw::Workspace workspace(clock);
  if (const auto opened = workspace.openShop(QString::fromLocal8Bit(words[1])); !opened) {
    std::cout << "error " << cw::sentence(opened.error()) << std::endl;
    return 1;
  }
  cw::MainWindow window(workspace);
  window.QMainWindow::show();
  cw::Fingers fingers(*window.findChild<cw::BenchPlace*>());
  QTimer::singleShot(0, &fingers, [&] { fingers.work(); });
  return QApplication::exec();
}
