#include "app/figures/step_player.h"

#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "app/look/flow_layout.h"

namespace cw {
namespace {

constexpr int kStepMilliseconds = 600, kButtonGap = 8;

}  // namespace

StepPlayer::StepPlayer(QWidget* parent)
    : QWidget(parent), m_slider(new QSlider(Qt::Horizontal)), m_play(new QPushButton(tr("Play"))) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  auto* across = new FlowLayout(kButtonGap);
  down->addLayout(across);
  const auto add = [&](QPushButton* button, const char* name) {
    button->setObjectName(QLatin1String(name));
    across->addWidget(button);
    return button;
  };
  connect(add(new QPushButton(tr("Start")), "firstStepButton"), &QPushButton::clicked, this,
          [this] { play(false), go(0); });
  connect(add(new QPushButton(tr("Step back")), "stepBackButton"), &QPushButton::clicked, this,
          [this] { play(false), go(m_slider->value() - 1); });
  connect(add(new QPushButton(tr("Step")), "stepButton"), &QPushButton::clicked, this,
          [this] { play(false), go(m_slider->value() + 1); });
  add(m_play, "playButton");
  connect(m_play, &QPushButton::clicked, this, [this] { play(!isPlaying()); });
  connect(add(new QPushButton(tr("To the end")), "lastStepButton"), &QPushButton::clicked, this,
          [this] { play(false), go(m_slider->maximum()); });
  m_slider->setObjectName(QStringLiteral("stepSlider"));
  m_slider->setAccessibleName(tr("Step"));
  m_slider->setRange(0, 0);
  down->addWidget(m_slider);
  connect(m_slider, &QSlider::valueChanged, this, [this] { emit stepChanged(step()); });
  m_clock.setInterval(kStepMilliseconds);
  connect(&m_clock, &QTimer::timeout, this, [this] {
    go(m_slider->value() + 1);
    if (m_slider->value() == m_slider->maximum()) play(false);
  });
}

void StepPlayer::setSteps(std::size_t count) {
  play(false);
  m_slider->setMaximum(static_cast<int>(count));
  m_slider->setValue(m_slider->maximum());
  emit stepChanged(step());
}

std::size_t StepPlayer::step() const {
  return static_cast<std::size_t>(m_slider->value());
}

void StepPlayer::go(int step) {
  m_slider->setValue(step);
}

/// From the start if it stands at the end.
void StepPlayer::play(bool on) {
  if (on && m_slider->value() == m_slider->maximum()) go(0);
  m_play->setText(on ? tr("Stop") : tr("Play"));
  on ? m_clock.start() : m_clock.stop();
}

}  // namespace cw
