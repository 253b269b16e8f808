#pragma once
#include <QTimer>
#include <QWidget>

class QPushButton;
class QSlider;

namespace cw {

/// Goes through the steps of a tightening: one by one, by itself until the end, or to the end at once, which
/// is where it begins. It moves by itself only while it plays.
class StepPlayer final : public QWidget {
  Q_OBJECT

 public:
  explicit StepPlayer(QWidget* parent = nullptr);

  void setSteps(std::size_t count);  ///< shows the last
  std::size_t step() const;
  bool isPlaying() const { return m_clock.isActive(); }

 signals:
  void stepChanged(std::size_t step);  ///< 0: before the first

 private:
  void go(int step);
  void play(bool on);

  QTimer m_clock;
  QSlider* m_slider;
  QPushButton* m_play;
};

}  // namespace cw
