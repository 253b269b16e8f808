#pragma once
#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/bench/bench_place.h"
#include "app/common/wording.h"
#include "app/run/run_panel.h"
#include "tests/app/look.h"
#include "tests/support/sample_shop.h"

namespace cw {

/// The sample shop's bench, and somebody with a keyboard at it, in both schemes.
class AtTheBench : public testing::TestWithParam<Scheme> {
 protected:
  explicit AtTheBench(const Sheet& sheet = test::sampleSheet()) : m_sample(sheet) {}

  void SetUp() override {
    useLook(GetParam());
    m_workspace = std::make_unique<Workspace>(m_sample.clock());
    ASSERT_TRUE(m_workspace->openShop(toQt(m_sample.file().string())));
    m_bench = std::make_unique<BenchPlace>(*m_workspace, m_navigator, nullptr);
    m_bench->resize(1150, 800);
    m_bench->show();
  }

  RunPanel& run() { return *m_bench->run(); }
  const Job& job() { return *run().course()->job(); }
  template <class T>
  T* visible(const char* name) {
    for (T* widget : m_bench->findChildren<T*>(QLatin1String(name)))
      if (widget->isVisible()) return widget;
    ADD_FAILURE() << "no visible " << name;
    return new T;
  }
  void key(Qt::Key key) { QTest::keyClick(&run(), key); }
  void type(const char* field, const char* text) {
    QLineEdit* line = visible<QLineEdit>(field);
    line->clear();
    QTest::keyClicks(line, QLatin1String(text));
  }
  std::string said() { return fromQt(run().findChild<QLabel*>(QStringLiteral("saidText"))->text()); }
  void picture(const char* name) {
    for (int pass = 0; pass < 4; ++pass) QCoreApplication::processEvents();  // wrapped text settles in turns
    const QString scheme = GetParam() == Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark");
    EXPECT_TRUE(savePicture(*m_bench, QStringLiteral("%1_%2_%3").arg(m_album, QLatin1String(name), scheme)));
    EXPECT_THAT(namelessFocusTargets(*m_bench).join(QLatin1Char('\n')).toStdString(), testing::IsEmpty())
        << name;
  }

  void start() {
    QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
    type("workOrderField", "WO 1");
    visible<QComboBox>("machineChoice")->setCurrentIndex(0);
    QComboBox* person = visible<QComboBox>("personChoice");
    person->setCurrentIndex(person->findData(QStringLiteral("mira")));
    type("pinField", "2468");
    picture("start");
    QTest::keyClick(visible<QLineEdit>("pinField"), Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::ReadWarnings);
  }
  /// Up to the wrench of the tighten step.
  void walkToTighten() {
    start();
    picture("warnings");
    key(Qt::Key_Return);
    picture("act");
    QTest::keyClick(visible<QCheckBox>("renewedCheck"), Qt::Key_Space);
    key(Qt::Key_Return);
    picture("check");
    key(Qt::Key_Return);
    QTest::keyClicks(&run(), QStringLiteral("0.05"));
    picture("measure");
    key(Qt::Key_Return);
    type("batchField", "B-77");
    picture("apply");
    key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::HandStart);
  }
  void press(const char* button) {
    auto* found = visible<QPushButton>(button);
    found->setFocus();
    QTest::keyClick(found, Qt::Key_Space);
  }
  void chooseWay(const char* way) {
    press("troubleButton");
    auto* choice = visible<QComboBox>("wayChoice");
    ASSERT_NE(choice->findData(QLatin1String(way)), -1) << way << " is not offered";
    choice->setCurrentIndex(choice->findData(QLatin1String(way)));
  }
  void enterIn(const char* field) { QTest::keyClick(visible<QLineEdit>(field), Qt::Key_Return); }
  /// What the second person sees; without a setting, that the one thing asked is so.
  void fillSecondPerson(const char* setting) {
    press("independentButton");
    if (*setting != '\0') {
      type("toolField", "T-07");
      type("settingField", setting);
    } else {
      press("soButton1");
    }
    type("signField", "otto");
    type("pinField", "2468");
  }
  void secondPerson(const char* setting) {
    fillSecondPerson(setting);
    key(Qt::Key_Return);
  }

  QString m_album = QStringLiteral("bench");  ///< what the names of the pictures begin with
  test::SampleShop m_sample;
  Navigator m_navigator;
  std::unique_ptr<Workspace> m_workspace;
  std::unique_ptr<BenchPlace> m_bench;
};

inline std::string schemeName(const testing::TestParamInfo<Scheme>& each) {
  return each.param == Scheme::Light ? "Light" : "Dark";
}

}  // namespace cw
