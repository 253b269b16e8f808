#pragma once
#include <QWidget>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace cw {

class BenchColumn;
class BenchFoot;
class HandPanel;
class Notices;
class StepList;

/// How the bench is laid out with a job on it: where I am, what I do, what my hand holds; below, the ways out
/// and the one main action. What stands there is RunPanel's.
class RunFrame : public QWidget {
  Q_OBJECT

 public:
  explicit RunFrame(QWidget* parent = nullptr);

 signals:
  void pauseWanted();
  void wayOutWanted(const QString& way);
  void wrenchWanted();
  void mainPressed();

 protected:
  Notices* notices() const { return m_notices; }
  StepList* steps() const { return m_steps; }
  HandPanel* hand() const { return m_hand; }
  QPushButton* main() const;

  void setHead(const QString& job, const QString& person, bool mayPause);
  void setWrenchChangeable(bool may);
  void setTitle(const QString& title, const QString& subtitle);
  void say(const QString& sentence);

  void addPage(QWidget* page);
  /// What stands in view where the window is too low for all: the step's words, or the page below them.
  enum class InLowWindow { Words, Page };
  void bringUp(QWidget* page, InLowWindow first);
  void forgetPages() { m_shown = nullptr; }
  QWidget* shownPage() const { return m_shown; }
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* makeHead();
  QWidget* makeBody();
  QWidget* makeMiddle();
  void makeFoot();
  void fitHand();

  QLabel *m_head, *m_person, *m_title, *m_subtitle;
  BenchFoot* m_foot;
  Notices* m_notices;
  StepList* m_steps;
  BenchColumn* m_middle;
  HandPanel* m_hand;
  QWidget* m_right;  ///< what my hand holds, and the line beside it
  QVBoxLayout* m_pages;
  QWidget* m_shown = nullptr;  ///< the page of them that is up
  QPushButton *m_pause, *m_wrench;
};

}  // namespace cw
