#include "tests/app/walk/bench_walk.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>

#include "app/common/wording.h"

namespace cw {
namespace {

constexpr int kMostStages = 120;

}  // namespace

QString nameOfStage(Stage stage) {
  switch (stage) {
    case Stage::Start:
      return QStringLiteral("start");
    case Stage::Resume:
      return QStringLiteral("resume");
    case Stage::ReadWarnings:
      return QStringLiteral("warnings");
    case Stage::Act:
      return QStringLiteral("act");
    case Stage::Check:
      return QStringLiteral("check");
    case Stage::Measure:
      return QStringLiteral("measure");
    case Stage::Apply:
      return QStringLiteral("apply");
    case Stage::Hold:
      return QStringLiteral("hold");
    case Stage::HandStart:
      return QStringLiteral("hand start");
    case Stage::ConfirmCondition:
      return QStringLiteral("condition");
    case Stage::SetTool:
      return QStringLiteral("set wrench");
    case Stage::CountPass:
      return QStringLiteral("early pass");
    case Stage::WitnessBeforeFinal:
      return QStringLiteral("second person");
    case Stage::ReadGaps:
      return QStringLiteral("gaps");
    case Stage::TightenPosition:
      return QStringLiteral("final pass");
    case Stage::CheckPass:
      return QStringLiteral("check pass");
    case Stage::Finish:
      return QStringLiteral("finish");
    default:
      return QStringLiteral("other stage");
  }
}

BenchWalk::BenchWalk(Walk& walk)
    : m_walk(walk), m_bench(dynamic_cast<BenchPlace&>(*walk.window().placeWidget(QStringLiteral("bench")))) {}

void BenchWalk::type(const char* field, const QString& text) const {
  if (auto* line = shown<QLineEdit>(field)) line->setText(text);
}

void BenchWalk::press(const char* button) const {
  if (auto* found = shown<QPushButton>(button); found != nullptr && found->isEnabled()) return found->click();
  ADD_FAILURE() << "nobody can press " << button << " at " << fromQt(nameOfStage(stage()));
}

void BenchWalk::look(const QString& state) {
  if (m_seen.insert(state).second) m_walk.look(QStringLiteral("bench"), state);
}

void BenchWalk::start(const QString& sheet) {
  press("startJobButton");
  type("workOrderField", QStringLiteral("WO 4502"));
  auto* choice = shown<QComboBox>("sheetChoice");
  ASSERT_NE(choice, nullptr);
  choice->setCurrentIndex(choice->findText(sheet, Qt::MatchStartsWith));
  look(QStringLiteral("sheet for another machine"));
  auto* machine = shown<QComboBox>("machineChoice");
  machine->setCurrentIndex(machine->findText(QStringLiteral("P-12"), Qt::MatchStartsWith));
  choice->setCurrentIndex(choice->findText(sheet, Qt::MatchStartsWith));
  auto* person = shown<QComboBox>("personChoice");
  person->setCurrentIndex(person->findData(QStringLiteral("mira")));
  look(QStringLiteral("start"));
  startOtherwise(*person);
  type("pinField", QStringLiteral("0000"));
  press("startButton");
  look(QStringLiteral("start refused"));
  type("pinField", QStringLiteral("2468"));
  press("startButton");
}

void BenchWalk::walkJob(const QString& sheet) {
  look(QStringLiteral("jobs"));
  start(sheet);
  for (int turn = 0; turn < kMostStages && !job().finished; ++turn) {
    look(nameOfStage(stage()));
    detours();
    doStage();
  }
  ASSERT_TRUE(job().finished) << "stuck at " << fromQt(nameOfStage(stage()));
  look(QStringLiteral("finished"));
  type("pinField", QStringLiteral("2468"));
  press("sealButton");
  if (m_seen.insert(QStringLiteral("sealed")).second)
    m_walk.look(QStringLiteral("records"), QStringLiteral("just sealed"));
  m_walk.window().show(QStringLiteral("bench"));
}

/// With a wrong PIN, then seeing another setting, then as it is.
void BenchWalk::beWitness() {
  const ToolSet* set = job().steps[next(job()).step].tightening.set();
  const auto withUnit = [&](const QString& digits) {
    return QStringLiteral("%1 %2").arg(digits, toQt(set->setting.unit->symbol));
  };
  const QString setting = set != nullptr ? withUnit(toQt(set->setting.digits)) : QString();
  const QString count = QString::number(job().sheet.joints.front().order.size());
  const auto fill = [&](const char* pin, const QString& seen) {
    type("signField", QStringLiteral("tomas"));
    type("pinField", QLatin1String(pin));
    press("watchedButton");
    for (auto* so : m_bench.findChildren<QPushButton*>(QRegularExpression(QStringLiteral("^soButton"))))
      if (so->isVisible()) so->click();
    if (set != nullptr) type("toolField", toQt(set->tool));
    type("settingField", seen);
    type("countField", count);
  };
  fill("0000", setting);
  press("mainButton");
  look(nameOfStage(stage()) + QStringLiteral(", refused"));
  if (set != nullptr && !m_seen.contains(QStringLiteral("second person sees otherwise"))) {
    fill("3579", withUnit(QStringLiteral("56")));
    press("mainButton");
    look(QStringLiteral("second person sees otherwise"));
  }
  fill("3579", setting);
}

/// Uneven the first time.
void BenchWalk::readGaps() {
  const bool even = m_seen.contains(QStringLiteral("gaps, uneven"));
  while (auto* field = shown<QLineEdit>("gapField")) {
    field->setText(even || shown<QPushButton>("takeBackButton") ? QStringLiteral("1.2")
                                                                : QStringLiteral("2.8"));
    press("mainButton");
    look(QStringLiteral("gaps, some"));
  }
  look(even ? QStringLiteral("gaps, even") : QStringLiteral("gaps, uneven"));
  press("mainButton");
}

void BenchWalk::doStage() {
  if (stage() == Stage::ReadGaps) return readGaps();
  if (auto* renewed = shown<QCheckBox>("renewedCheck")) renewed->setChecked(true);
  type("batchField", QStringLiteral("MO-2291"));
  if (stage() == Stage::Measure) type("readingField", QStringLiteral("0.0010"));
  if (stage() == Stage::Hold || stage() == Stage::WitnessBeforeFinal) beWitness();
  if (stage() == Stage::Resume) type("pinField", QStringLiteral("2468"));
  press("mainButton");
}

}  // namespace cw
