#pragma once
#include <QObject>
#include <functional>
#include <memory>
#include <stop_token>

namespace cw {

/// Work off the window's thread, one piece at a time: a new one takes the place of the one before. What the
/// work answers with runs on the window's thread, unless it was stopped meanwhile; stopping answers at once.
class BackgroundWork final : public QObject {
  Q_OBJECT

 public:
  using Answer = std::function<void()>;
  using Progress = std::function<void(int thousandths)>;
  using Work = std::function<Answer(const std::stop_token& stop, const Progress& progress)>;

  using QObject::QObject;
  ~BackgroundWork() override;

  void start(Work work);
  void stop();
  bool isRunning() const { return m_run != nullptr; }

 signals:
  void runningChanged(bool running);
  void progressed(int thousandths);

 private:
  std::shared_ptr<std::stop_source> m_run;  ///< whose answer is waited for
};

}  // namespace cw
