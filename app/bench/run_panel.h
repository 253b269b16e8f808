#pragma once
#include <QWidget>
#include <map>

#include "app/bench/bench_session.h"
#include "app/bench/stage_panel.h"

class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace cw {

class HandPanel;
class Notices;
class StepList;
class WaysOut;

/// The bench with a job on it: where I am, what I do, what my hand holds; below, the ways out and the one
/// main action, saying exactly what pressing it states.
class RunPanel final : public QWidget {
  Q_OBJECT
 public:
  explicit RunPanel(QWidget* parent = nullptr);

  void open(Workspace& workspace, const Id& job, const QString& sign);
  BenchSession* session() const { return m_session.get(); }
  Stage stage() const { return m_stage; }

 signals:
  void jobLeft();  ///< paused, or set down: back to the list
  void jobFinished(const cw::Id& job);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* makeHead();
  QWidget* makeBody();
  QWidget* makeFoot();
  QPushButton* makeWayOut(const QString& text, const QString& objectName);
  void present();
  void presentHead(const Job& job);
  void presentStage(const BenchView& view);
  QString titleOf(const BenchView& view) const;
  QString subtitleOf(const BenchView& view) const;
  void bringUp(QWidget* page);
  void refreshMain();
  void act();
  void openWaysOut(const QString& way);
  void pause();
  void say(const QString& sentence);
  bool takeKey(QKeyEvent* event);

  std::unique_ptr<BenchSession> m_session;
  std::map<Stage, StagePanel*> m_panels;
  StagePanel* m_panel = nullptr;
  Stage m_stage = Stage::Nothing;
  QLabel *m_head, *m_person, *m_title, *m_subtitle, *m_said;
  Notices* m_notices;
  StepList* m_steps;
  HandPanel* m_hand;
  QVBoxLayout* m_pages;
  QWidget* m_shown = nullptr;  ///< the page of them that is up
  WaysOut* m_ways = nullptr;
  QPushButton *m_main, *m_pause;
};

}  // namespace cw
