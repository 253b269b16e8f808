#pragma once
#include <QWidget>
#include <memory>

#include "app/figures/background_work.h"
#include "core/settling/settling_examples.h"
#include "core/settling/settling_trials.h"
#include "core/settling/settling_way.h"

class QLabel;
class QProgressBar;
class QPushButton;

namespace cw {

class NumberField;

/// What is tried: two ways of one joint.
struct TrialsTask {
  std::shared_ptr<const SettlingModel> model;
  SettlingExample joint;
  SettlingWay ways[2];
};

/// A thousand tightenings of both ways, every bolt with a friction of its own: shows how far it has come,
/// and stops at once.
class TrialsPanel final : public QWidget {
  Q_OBJECT

 public:
  explicit TrialsPanel(QWidget* parent = nullptr);

  void setTask(TrialsTask task);
  void stop();
  bool isRunning() const { return m_work.isRunning(); }

 private:
  void start();
  void showRunning(bool running);
  void present(const Result<FrictionTrials>& one, const Result<FrictionTrials>& other);

  TrialsTask m_task;
  BackgroundWork m_work;
  NumberField* m_scatter;
  QPushButton *m_start, *m_cancel;
  QProgressBar* m_progress;
  QLabel* m_said;
};

}  // namespace cw
