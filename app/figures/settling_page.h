#pragma once
#include <QScrollArea>
#include <memory>

#include "app/figures/background_work.h"
#include "app/figures/sheet_joints.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QVBoxLayout;

namespace cw {

class FigureDesk;
class StepPlayer;
class TrialsPanel;
class WayPanel;

/// Two ways of tightening one joint side by side: predicted clamp loads after every step, tilt and spread
/// after every pass, what one more pass buys. A prediction with its model and limits, never kept.
class SettlingPage final : public QScrollArea {
  Q_OBJECT

 public:
  explicit SettlingPage(FigureDesk& desk, QWidget* parent = nullptr);

  /// A file of format "clampwright.settle"; its passes do not matter here. Errors of readFile and
  /// readSettlingFile.
  Result<void> openFile(const QString& path);
  bool isComputing() const { return m_work.isRunning(); }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* makeJointRow();
  void fillChoices();
  void choose(int row);
  void chooseFile();
  void setJoint(SettlingExample joint);
  void compute();
  void present(const Result<SettlingOutcome>& left, const Result<SettlingOutcome>& right);
  void say(const QString& sentence, bool trouble = false);

  FigureDesk& m_desk;
  std::vector<SheetJoint> m_joints;  ///< as the choice lists them
  std::vector<SheetJoint> m_opened;  ///< from files
  SettlingExample m_joint;
  std::shared_ptr<const SettlingModel> m_model;  ///< of m_joint; none until it is computed
  BackgroundWork m_work;
  QComboBox* m_choice;
  WayPanel *m_left, *m_right;
  QBoxLayout* m_across;
  StepPlayer* m_player;
  TrialsPanel* m_trials;
  QLabel* m_said;
};

QWidget* makeSettlingPage(FigureDesk& desk, QWidget* parent);

}  // namespace cw
