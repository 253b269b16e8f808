#pragma once
#include <vector>

#include "app/run/stage_panel.h"
#include "core/record/leads_word.h"
#include "core/record/tool_offer.h"

class QListWidget;

namespace cw {

class JointView;

/// Every fastener to the face by finger; the ones that will not start are chosen on the drawing.
class HandStartPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit HandStartPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  void act() override;

 private:
  JointView* m_joint;
  int m_count = 0;
};

class ConditionPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit ConditionPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  void act() override;

 private:
  QLabel* m_text;
  QString m_condition;
};

/// The wrenches that fit, with their setting; the ones that do not, with the reason.
class ToolPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit ToolPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool isReady() const override { return chosen().has_value(); }
  void act() override;

 private:
  void addItem(const ToolOffer& offer);
  void showLeadsWord();
  /// What setting the chosen wrench states; one that is refused, only with a lead's word.
  std::optional<ToolSet> chosen() const;
  bool asksALead() const;

  QLabel *m_stopped, *m_text;
  QListWidget* m_list;
  LeadsWord* m_word;
  Given m_given = Given::Here;
  std::vector<ToolOffer> m_offers;
};

/// An early pass, or the part of it that shares a torque: one confirmation of the count.
class CountPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit CountPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  void act() override;

 private:
  QLabel* m_text;
  JointView* m_joint;
  int m_count = 0;
  bool m_isWhole = true;
  QString m_setting;
};

/// One position of the final pass. Space states the click; digits and Enter state a reading on the scale in
/// use.
class PositionPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit PositionPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  QString afterwards() const override { return m_then; }
  bool takesSpace() const override { return true; }
  void act() override;
  QLineEdit* digitField() const override { return m_reading; }

 private:
  void showReading();  ///< a click tool's field appears with the first digit
  JointView* m_joint;
  QLineEdit* m_reading;
  StatedTorque m_setting;
  std::string m_position;
  QString m_then;
  bool m_indicates = false;
};

/// Round the joint at full torque; the ones that moved are chosen on the drawing.
class CheckPassPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit CheckPassPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  void act() override;

 private:
  JointView* m_joint;
};

}  // namespace cw
