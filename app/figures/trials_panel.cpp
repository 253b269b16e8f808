#include "app/figures/trials_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>

#include "app/fields/number_field.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr int kTrials = 1000, kWhole = 1000;

Result<FrictionTrials> trialsOf(const TrialsTask& task, const SettlingWay& way, double deviation,
                                const std::function<void(int)>& progress, const std::stop_token& stop) {
  CW_TRY(tightening, tighteningBy(task.joint.joint, way, task.joint.target));
  return frictionTrials(*task.model, tightening, {deviation, kTrials, 1}, progress, stop);
}

QString spreadWords(const FrictionTrials& trials) {
  return TrialsPanel::tr("spread %1 % on average, one joint in twenty over %2 %")
      .arg(toQt(fixed(trials.meanSpread * 100, 0)), toQt(fixed(trials.highSpread * 100, 0)));
}

}  // namespace

TrialsPanel::TrialsPanel(QWidget* parent)
    : QWidget(parent),
      m_scatter(new NumberField({QStringLiteral("scatter"), tr("Friction scatter, % (one deviation)"), {}})),
      m_start(new QPushButton(tr("Try %1 times").arg(kTrials))),
      m_cancel(new QPushButton(tr("Cancel"))),
      m_progress(new QProgressBar),
      m_said(textLabel({}, deskFont())) {
  m_scatter->setText(QStringLiteral("10"));
  m_start->setObjectName(QStringLiteral("trialsButton"));
  m_cancel->setObjectName(QStringLiteral("cancelTrialsButton"));
  m_progress->setObjectName(QStringLiteral("trialsProgress"));
  m_progress->setRange(0, kWhole);
  m_progress->setAccessibleName(tr("Trials done"));
  m_said->setObjectName(QStringLiteral("trialsSaid"));
  auto* row = new QHBoxLayout;
  row->addWidget(m_scatter);
  row->addWidget(m_start, 0, Qt::AlignBottom);
  row->addWidget(m_progress, 1, Qt::AlignBottom);
  row->addWidget(m_cancel, 0, Qt::AlignBottom);
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->addLayout(row);
  down->addWidget(m_said);
  m_start->setEnabled(false);
  showRunning(false);
  connect(m_start, &QPushButton::clicked, this, &TrialsPanel::start);
  connect(m_cancel, &QPushButton::clicked, this, [this] {
    stop();
    m_said->setText(tr("Cancelled."));
  });
  connect(&m_work, &BackgroundWork::runningChanged, this, &TrialsPanel::showRunning);
  connect(&m_work, &BackgroundWork::progressed, m_progress, &QProgressBar::setValue);
}

void TrialsPanel::setTask(TrialsTask task) {
  stop();
  m_task = std::move(task);
  m_said->clear();
  m_start->setEnabled(true);
}

void TrialsPanel::stop() {
  m_work.stop();
}

void TrialsPanel::showRunning(bool running) {
  m_progress->setVisible(running);
  m_cancel->setVisible(running);
  m_start->setVisible(!running);
}

void TrialsPanel::start() {
  const auto scatter = m_scatter->number();
  m_scatter->findTrouble(scatter ? QString() : worded(scatter.error()));
  if (!scatter) return;
  m_progress->setValue(0);
  m_said->clear();
  m_work.start(
      [this, task = m_task, deviation = *scatter / 100](
          const std::stop_token& stop, const BackgroundWork::Progress& progress) -> BackgroundWork::Answer {
        const auto half = [&](int before) {
          return [&progress, before](int done) { progress((before + done) * kWhole / (2 * kTrials)); };
        };
        auto one = trialsOf(task, task.ways[0], deviation, half(0), stop);
        if (stop.stop_requested()) return [] {};
        auto other = trialsOf(task, task.ways[1], deviation, half(kTrials), stop);
        return [this, one = std::move(one), other = std::move(other)] { present(one, other); };
      });
}

void TrialsPanel::present(const Result<FrictionTrials>& one, const Result<FrictionTrials>& other) {
  for (const auto* trials : {&one, &other})
    if (!*trials) return m_scatter->findTrouble(worded(trials->error()));
  m_said->setText(
      tr("With friction, the one way: %1. The other: %2.").arg(spreadWords(*one), spreadWords(*other)));
}

}  // namespace cw
