#pragma once
#include <vector>

#include "app/run/stage_panel.h"

class QPushButton;

namespace cw {

/// The gap between the faces after a pass, typed place by place going round, then signed together.
class GapsPanel final : public StagePanel {
  Q_OBJECT

 public:
  explicit GapsPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool isReady() const override;
  void act() override;
  QLineEdit* digitField() const override { return complete() ? nullptr : m_value; }

 private:
  bool complete() const { return m_gaps.size() >= m_wanted.places; }
  Result<StatedLength> typed() const;
  void take();
  void takeBack();
  void showGaps();
  QString differenceText() const;

  QLabel *m_text, *m_taken;
  QLineEdit* m_value;
  LeadsWord* m_word;
  QPushButton* m_back;
  GapReadings m_wanted;
  std::vector<StatedLength> m_gaps;
  const Unit<LengthTag>* m_unit = &kMillimetre;  ///< of a number that is typed without one
};

}  // namespace cw
