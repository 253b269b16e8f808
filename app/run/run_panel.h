#pragma once
#include <map>

#include "app/run/course.h"
#include "app/run/run_frame.h"
#include "app/run/stage_panel.h"

namespace cw {

class WaysOut;

/// The bench with a job on it: brings up what comes next, and makes keys and the main action state it.
class RunPanel final : public RunFrame {
  Q_OBJECT
 public:
  explicit RunPanel(QWidget* parent = nullptr);

  void open(std::unique_ptr<Course> course);
  Course* course() const { return m_course.get(); }
  Stage stage() const { return m_stage; }

 signals:
  void jobLeft();                        ///< paused, or set down: back to the list
  void signInWanted(const cw::Id& job);  ///< the person has not been heard of for a while
  void jobFinished(const cw::Id& job);
  void jobCalledOff(const cw::Id& job);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void present();
  BenchView viewOf(const Job& job) const;
  void sayRefusal(const QString& sentence);
  void presentHead(const Job& job);
  void giveKeyboard();
  void presentStage(const BenchView& view);
  StagePanel* panelFor(Stage stage);
  void sayWhatStaysOpen(const Job& job);
  bool isUpToDate();
  QString titleOf(const BenchView& view) const;
  QString subtitleOf(const BenchView& view) const;
  void refreshMain();
  void act();
  void openWaysOut(const QString& way);
  void changeWrench();
  void pause();
  bool takeKey(QKeyEvent* event);

  std::unique_ptr<Course> m_course;
  std::map<Stage, StagePanel*> m_panels;
  StagePanel* m_panel = nullptr;
  Stage m_stage = Stage::Nothing;
  Next m_next;  ///< what is shown
  WaysOut* m_ways = nullptr;
};

}  // namespace cw
