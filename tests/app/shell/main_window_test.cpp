#include "app/shell/main_window.h"

#include <QApplication>
#include <QTest>
#include <set>

#include "tests/app/desk_test.h"

namespace cw {
namespace {

class Window : public DeskTest {
 protected:
  static std::string focused() {
    const QWidget* widget = QApplication::focusWidget();
    return widget == nullptr ? "nothing" : widget->objectName().toStdString();
  }
};

TEST_F(Window, OpensOnTheBenchWhereTheKeyboardStartsAJob) {
  MainWindow::applyLook();
  open();
  MainWindow window(workspace);
  window.QMainWindow::show();
  QApplication::setActiveWindow(&window);
  EXPECT_EQ(focused(), "startJobButton");
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
  EXPECT_EQ(focused(), "workOrderField");
}

TEST_F(Window, GoesRoundByTabAndMissesNothing) {
  open();
  MainWindow window(workspace);
  window.QMainWindow::show();
  QApplication::setActiveWindow(&window);
  std::set<std::string> seen;
  for (int i = 0; i < 20; ++i) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    seen.insert(focused());
  }
  for (const char* name : {"benchRailButton", "shopButton", "schemeButton", "startJobButton"})
    EXPECT_TRUE(seen.contains(name)) << name;
}

}  // namespace
}  // namespace cw
