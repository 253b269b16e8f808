#include <gmock/gmock.h>

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/common/wording.h"
#include "app/run/course.h"
#include "app/run/run_panel.h"
#include "tests/app/look.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using testing::HasSubstr;

/// A run that no shop file keeps.
class UnkeptCourse final : public Course {
 public:
  explicit UnkeptCourse(test::Bench& bench) : Course(bench.job().id, {"mira", ""}), m_bench(bench) {}

  const Job* job() override { return &m_bench.job(); }
  ShopFloor floor() override { return m_bench.floor(); }
  Moment now() override { return m_bench.clock().now(); }
  bool isOverruled(const Sheet&) override { return m_overruled; }
  bool isSignedIn() override { return m_signedIn; }

  bool state(Body body) override { return settled(m_bench.say(worker().sign, std::move(body))); }
  bool stateAs(const QString& sign, const QString&, Body body) override {
    return settled(m_bench.say(fromQt(sign), std::move(body)));
  }
  bool stateAllowed(const GivenWord&, Body body) override { return state(std::move(body)); }
  bool resume(const QString&, const QString&, Resumed resumed) override {
    const bool isSignedInAgain = state(SignedIn{});
    return isSignedInAgain && state(resumed);
  }

  bool m_overruled = false, m_signedIn = true;

 private:
  test::Bench& m_bench;
};

class RunOverACourse : public testing::Test {
 protected:
  void SetUp() override {
    useLook(Scheme::Light);
    if (const auto started = m_bench.start(); !started) FAIL() << sentence(started.error());
    open();
  }
  void open() {
    auto course = std::make_unique<UnkeptCourse>(m_bench);
    m_course = course.get();
    m_run.open(std::move(course));
  }
  QString text(const char* name) { return m_run.findChild<QLabel*>(QLatin1String(name))->text(); }
  void enter() { QTest::keyClick(&m_run, Qt::Key_Return); }

  test::Bench m_bench;
  RunPanel m_run;
  UnkeptCourse* m_course = nullptr;
};

TEST_F(RunOverACourse, EachKeyIsOneStatementOfTheCourse) {
  const std::size_t before = m_bench.job().entries.size();
  ASSERT_EQ(m_run.stage(), Stage::ReadWarnings);
  enter();
  EXPECT_EQ(m_bench.job().entries.size(), before + 1);
  EXPECT_EQ(m_run.stage(), Stage::Act);
  m_run.findChild<QCheckBox*>(QStringLiteral("renewedCheck"))->setChecked(true);
  enter();
  EXPECT_EQ(m_bench.job().entries.size(), before + 2);
  EXPECT_EQ(m_run.stage(), Stage::Check);
}

TEST_F(RunOverACourse, WhoeverIsNotSignedInStatesNothingAndIsAsked) {
  const std::size_t before = m_bench.job().entries.size();
  Id asked;
  QObject::connect(&m_run, &RunPanel::signInWanted, [&](const Id& job) { asked = job; });
  m_course->m_signedIn = false;
  enter();
  EXPECT_EQ(m_bench.job().entries.size(), before);
  EXPECT_EQ(asked, m_bench.job().id);
}

TEST_F(RunOverACourse, WhatTheCourseRefusesIsSaidAndTheStageStays) {
  emit m_course->refused(QStringLiteral("the chain is locked; wait a moment."));
  EXPECT_EQ(text("saidText").toStdString(), "the chain is locked; wait a moment.");
  EXPECT_EQ(m_run.stage(), Stage::ReadWarnings);
}

TEST_F(RunOverACourse, ASheetOverruledMeanwhileIsSaidOnResuming) {
  ASSERT_TRUE(m_course->state(Paused{"called away", false, "", ""}));
  ASSERT_EQ(m_run.stage(), Stage::Resume);
  EXPECT_THAT(text("lapsedText").toStdString(), Not(HasSubstr("no longer issued")));
  m_course->m_overruled = true;
  emit m_course->changed();
  EXPECT_THAT(text("lapsedText").toStdString(),
              HasSubstr("Revision A of the sheet is no longer issued; ask the trainer before going on."));
}

}  // namespace
}  // namespace cw
