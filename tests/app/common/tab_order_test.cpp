// The way of the keyboard through widgets that were made in another order than they stand in.
#include "app/common/tab_order.h"

#include <gmock/gmock.h>

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

namespace cw {
namespace {

/// The object names that Tab comes to, from the first on, once round.
std::vector<std::string> roundOf(QWidget& window, QWidget& first) {
  first.setFocus();
  std::vector<std::string> out;
  for (int turn = 0; turn < 12; ++turn) {
    const std::string name = window.focusWidget()->objectName().toStdString();
    if (!out.empty() && name == out.front()) break;
    out.push_back(name);
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
  }
  return out;
}

class TabOrder : public testing::Test {
 protected:
  TabOrder() : upper(new QWidget), lower(new QWidget) {
    auto* down = new QVBoxLayout(&window);
    down->addWidget(upper);
    down->addWidget(lower);
    for (QWidget* part : {upper, lower}) new QVBoxLayout(part);
  }
  QLineEdit* field(QWidget* part, const char* name) {
    auto* out = new QLineEdit;
    out->setObjectName(QLatin1String(name));
    part->layout()->addWidget(out);
    return out;
  }
  void show() {
    window.show();
    window.activateWindow();
    QApplication::processEvents();
  }

  QWidget window;
  QWidget *upper, *lower;
};

TEST_F(TabOrder, GoesThroughOnePartAfterTheOther) {
  field(lower, "third");
  QLineEdit* first = field(upper, "first");
  field(lower, "fourth");
  field(upper, "second");
  orderTabs({upper, lower});
  show();
  EXPECT_THAT(roundOf(window, *first), testing::ElementsAre("first", "second", "third", "fourth"));
}

TEST_F(TabOrder, GivesAPartTheKeyboardWithoutStoppingAtIt) {
  QLineEdit* first = field(upper, "first");
  field(upper, "second");
  field(lower, "third");
  passFocusOn(*upper, *first);
  show();
  upper->setFocus();
  QApplication::processEvents();
  EXPECT_EQ(window.focusWidget(), first);
  EXPECT_THAT(roundOf(window, *first), testing::ElementsAre("first", "second", "third"));
}

}  // namespace
}  // namespace cw
