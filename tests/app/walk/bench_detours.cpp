// What the bench has beside the straight way through a job.
#include <gtest/gtest.h>

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTest>

#include "app/common/wording.h"
#include "app/drawing/joint_view.h"
#include "tests/app/walk/bench_walk.h"

namespace cw {

/// What a stage has beside its straight way on.
void BenchWalk::detours() {
  auto* joint = shown<JointView>("jointView");
  const QString name = nameOfStage(stage());
  if (joint != nullptr && (stage() == Stage::HandStart || stage() == Stage::CheckPass)) {
    QTest::keyClick(joint, Qt::Key_Space);
    look(name + QStringLiteral(", one chosen"));
    QTest::keyClick(joint, Qt::Key_Space);
  }
  if (stage() == Stage::SetTool) refusedWrench();
  if (stage() == Stage::Measure) measureOutside();
  if (stage() == Stage::Check) setAsideOnce();
  if (stage() != Stage::TightenPosition || job().steps[next(job()).step].tightening.tightened.size() != 2)
    return;
  look(QStringLiteral("final pass, two done"));
  type("readingField", QStringLiteral("650"));
  press("mainButton");
  look(QStringLiteral("reading refused"));
  type("readingField", QString());
  press("wrenchButton");
  look(QStringLiteral("wrench anew"));
  press("wrenchButton");
  everyWayOut();
  pauseAndResume();
}

/// One that the crib refuses on the final pass, and a lead's word that is none.
void BenchWalk::refusedWrench() {
  auto* wrenches = shown<QListWidget>("toolList");
  for (int row = 0; row < wrenches->count(); ++row) {
    wrenches->setCurrentRow(row);
    if (shown<QLineEdit>("leadField") == nullptr) continue;
    look(QStringLiteral("wrench refused"));
    type("leadField", QStringLiteral("mira"));
    type("leadPinField", QStringLiteral("2468"));
    type("reasonField", QStringLiteral("the other one is broken"));
    press("mainButton");
    look(QStringLiteral("wrench refused, no lead"));
    break;
  }
  wrenches->setCurrentRow(0);
}

void BenchWalk::measureOutside() {
  if (m_seen.contains(QStringLiteral("measured outside"))) return;
  type("readingField", QStringLiteral("0.9000"));
  press("mainButton");
  look(QStringLiteral("measured outside"));
}

/// A retorque that follows from a record, by an apprentice.
void BenchWalk::startOtherwise(QComboBox& person) {
  const int who = person.currentIndex();
  auto* reason = shown<QComboBox>("reasonChoice");
  reason->setCurrentIndex(reason->count() - 1);
  for (int i = 0; i < person.count() && shown<QComboBox>("supervisorChoice") == nullptr; ++i)
    person.setCurrentIndex(i);
  look(QStringLiteral("start, retorque under supervision"));
  reason->setCurrentIndex(0);
  person.setCurrentIndex(who);
}

/// Entered, judged, refused by the guard and by the PIN, started and left.
void BenchWalk::quickJoint() {
  press("quickJointButton");
  look(QStringLiteral("quick joint"));
  for (const auto& [field, text] : {std::pair("workOrderField", "WO 77"),
                                    {"nameField", "Sight glass"},
                                    {"countField", "4"},
                                    {"threadField", "1/4-20 UNC"},
                                    {"printedField", "600 in. lbs."},
                                    {"documentField", "Invented manual"},
                                    {"pageField", "7"},
                                    {"revisionField", "3"}})
    type(field, QLatin1String(text));
  for (const auto& [name, text] : {std::pair("gradeChoice", "SAE 5"), {"conditionChoice", "dry"}}) {
    auto* choice = shown<QComboBox>(name);
    choice->setCurrentIndex(choice->findText(QLatin1String(text)));
  }
  auto* person = shown<QComboBox>("personChoice");
  person->setCurrentIndex(person->findData(QStringLiteral("mira")));
  look(QStringLiteral("quick joint, against the guard"));
  type("printedField", QStringLiteral("60-70 in. lbs."));
  look(QStringLiteral("quick joint, judged"));
  type("pinField", QStringLiteral("0000"));
  press("startButton");
  look(QStringLiteral("quick joint, refused"));
  type("pinField", QStringLiteral("2468"));
  press("startButton");
  look(QStringLiteral("quick joint, begun"));
  press("pauseButton");
}

void BenchWalk::everyWayOut() {
  if (!m_seen.insert(QStringLiteral("ways out")).second) return;
  press("troubleButton");
  auto* way = shown<QComboBox>("wayChoice");
  ASSERT_NE(way, nullptr);
  for (int i = 0; i < way->count(); ++i) {
    way->setCurrentIndex(i);
    type("reasonField", QStringLiteral("called to another machine"));
    look(QStringLiteral("out, ") + way->currentData().toString());
  }
  way->setCurrentIndex(way->findData(QStringLiteral("deviation")));
  press("mainButton");
  look(QStringLiteral("out, refused"));
  press("backToStepButton");
}

void BenchWalk::pauseAndResume() {
  if (m_seen.contains(QStringLiteral("resume"))) return;
  press("pauseButton");
  look(QStringLiteral("jobs, one open"));
  press("openJobButton");
  look(QStringLiteral("who goes on"));
  press("goOnButton");
  look(QStringLiteral("resume"));
  type("pinField", QStringLiteral("2468"));
  press("mainButton");
  park();
}

/// Parked for days: the joint that is half tightened starts again.
void BenchWalk::park() {
  press("troubleButton");
  auto* way = shown<QComboBox>("wayChoice");
  way->setCurrentIndex(way->findData(QStringLiteral("park")));
  type("waitsForField", QStringLiteral("a new gasket"));
  type("machineStateField", QStringLiteral("cover loose, drained"));
  type("reasonField", QStringLiteral("gasket torn"));
  press("mainButton");
  look(QStringLiteral("parked"));
  type("pinField", QStringLiteral("2468"));
  press("mainButton");
}

void BenchWalk::setAsideOnce() {
  if (m_seen.contains(QStringLiteral("after setting aside"))) return;
  press("asideButton");
  type("reasonField", QStringLiteral("the gauge is away for repair until tomorrow"));
  press("mainButton");
  look(QStringLiteral("after setting aside"));
}

}  // namespace cw
