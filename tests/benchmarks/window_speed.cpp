// Start to a usable window against a QMainWindow that is empty and one with a line of text (which reads the
// system's fonts), each in a process of its own; and from key press to an entry that is on the disk and a
// bench that is drawn anew, at the first and at the 2 000th entry of a job.
#include <fmt/format.h>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <algorithm>
#include <chrono>
#include <iostream>

#include "app/bench/bench_place.h"
#include "app/common/wording.h"
#include "app/look/fonts.h"
#include "app/run/run_panel.h"
#include "app/shell/main_window.h"
#include "tests/kill/child.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using Stopwatch = std::chrono::steady_clock;

constexpr int kStarts = 21;
constexpr const char* kWindows[] = {"empty", "text", "ours"};
constexpr int kEntries = 2000;
constexpr std::size_t kFew = 100;

double millisecondsSince(Stopwatch::time_point start) {
  return std::chrono::duration<double, std::milli>(Stopwatch::now() - start).count();
}

double medianOf(std::vector<double> values) {
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                   values.end());
  return values[values.size() / 2];
}

/// Painted once, and no event waits.
void untilUsable(QWidget& window) {
  window.show();
  window.repaint();
  QCoreApplication::processEvents();
  std::cout << "usable" << std::endl;
}

int startEmpty() {
  QMainWindow window;
  window.resize(1280, 800);
  untilUsable(window);
  return 0;
}

int startWithText() {
  QMainWindow window;
  window.setCentralWidget(new QLabel(QStringLiteral("Tighten in even passes")));
  window.resize(1280, 800);
  untilUsable(window);
  return 0;
}

int startOurs(const QString& shop) {
  SystemClock clock;
  Workspace workspace(clock);
  test::need(workspace.openShop(shop));
  MainWindow::applyLook();
  MainWindow window(workspace);
  untilUsable(static_cast<QMainWindow&>(window));
  return 0;
}

double startOnce(const std::string& self, const char* which, test::SampleShop& shop) {
  const auto start = Stopwatch::now();
  test::Child child(self, {which, shop.folder().path().string(), shop.file().string()});
  if (child.line() != std::optional<std::string>("usable"))
    throw std::runtime_error("the window did not open");
  const double lasted = millisecondsSince(start);
  child.wait();
  return lasted;
}

void compareStarts(const std::string& self) {
  test::SampleShop shop;
  for (int job = 0; job < 3; ++job) shop.startJob();
  std::vector<double> all[3];
  for (int turn = 0; turn < kStarts; ++turn)
    for (int which = 0; which < 3; ++which) all[which].push_back(startOnce(self, kWindows[which], shop));
  const double empty = medianOf(all[0]), text = medianOf(all[1]), ours = medianOf(all[2]);
  std::cout << fmt::format(
      "start: empty window {:.1f} ms, one with a line of text {:.1f} ms, ours {:.1f} ms, {:.2f} and {:.2f} "
      "times\n",
      empty, text, ours, ours / empty, ours / text);
}

/// Somebody in the final pass of the sample job.
class AtThePosition {
 public:
  AtThePosition() : m_workspace(m_shop.clock()) {
    test::need(m_workspace.openShop(toQt(m_shop.file().string())));
    m_bench = std::make_unique<BenchPlace>(m_workspace, m_navigator, nullptr);
    m_bench->resize(1150, 800);
    m_bench->show();
    walk();
  }

  /// A reading outside the tolerance leaves its position open, so that it can be entered without end.
  double pressOnce() {
    QTest::keyClicks(&run(), QStringLiteral("74"));
    QCoreApplication::processEvents();
    const auto start = Stopwatch::now();
    QTest::keyClick(&run(), Qt::Key_Return);
    m_bench->repaint();
    QCoreApplication::processEvents();
    return millisecondsSince(start);
  }
  int count() { return run().session()->job()->count(); }

 private:
  RunPanel& run() { return *m_bench->run(); }
  template <class Widget>
  Widget& shown(const char* name) {
    for (auto* widget : m_bench->findChildren<Widget*>(QLatin1String(name)))
      if (widget->isVisible()) return *widget;
    throw std::runtime_error(name);
  }
  void type(const char* field, const char* text) { shown<QLineEdit>(field).setText(QLatin1String(text)); }
  void enter(int times = 1) {
    while (times-- > 0) QTest::keyClick(&run(), Qt::Key_Return);
  }
  void walk() {
    shown<QPushButton>("startJobButton").click();
    type("workOrderField", "WO 1");
    auto& person = shown<QComboBox>("personChoice");
    person.setCurrentIndex(person.findData(QStringLiteral("mira")));
    type("pinField", "2468");
    shown<QPushButton>("startButton").click();
    enter();
    shown<QCheckBox>("renewedCheck").click();
    enter(2);
    QTest::keyClicks(&run(), QStringLiteral("0.05"));
    enter();
    type("batchField", "B-77");
    enter(6);
    for (const auto& [field, text] : {std::pair("signField", "otto"), std::pair("pinField", "2468"),
                                      std::pair("toolField", "T-07"), std::pair("settingField", "65")})
      type(field, text);
    enter();
    if (run().stage() != Stage::TightenPosition) throw std::runtime_error("not in the final pass");
  }

  test::SampleShop m_shop;
  Navigator m_navigator;
  Workspace m_workspace;
  std::unique_ptr<BenchPlace> m_bench;
};

void pressKeys() {
  AtThePosition hand;
  std::vector<double> times;
  const int before = hand.count();
  for (int press = 0; press < kEntries; ++press) times.push_back(hand.pressOnce());
  if (hand.count() != before + kEntries) throw std::runtime_error("not every press became an entry");
  const double first = medianOf({times.begin(), times.begin() + kFew});
  const double last = medianOf({times.end() - kFew, times.end()});
  std::cout << fmt::format(
      "key to durable and drawn: first {} {:.2f} ms, last {} of {} {:.2f} ms, {:.2f} times\n", kFew, first,
      kFew, kEntries, last, last / first);
}

}  // namespace
}  // namespace cw

int main(int count, char** words) {
  const std::string which = count > 1 ? words[1] : "";
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  if (which != "empty" && which != "text") cw::tellFontsApart();
  const cw::TemporaryFolder own;
  QSettings::setDefaultFormat(QSettings::IniFormat);
  QSettings::setPath(QSettings::IniFormat, QSettings::UserScope,
                     QString::fromStdString(count > 2 ? words[2] : own.path().string()));
  QApplication::setOrganizationName(QStringLiteral("Clampwright tests"));
  QApplication application(count, words);
  if (which == "empty") return cw::startEmpty();
  if (which == "text") return cw::startWithText();
  if (which == "ours") return cw::startOurs(QString::fromLocal8Bit(words[3]));
  cw::compareStarts(words[0]);
  cw::MainWindow::applyLook();
  cw::pressKeys();
  return 0;
}
