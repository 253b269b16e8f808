#pragma once
#include "app/run/stage_panel.h"

class QButtonGroup;

namespace cw {

/// The second person: who they are, and what they see, entered without being shown the first entry.
class WitnessPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit WitnessPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool isReady() const override;
  void act() override;

 private:
  Manner manner() const;

  QLabel* m_text;
  QLineEdit *m_sign, *m_pin, *m_tool, *m_setting;
  QButtonGroup* m_manner;
  std::vector<std::string> m_what;
  const TorqueUnit* m_unit = nullptr;  ///< of the scale in use; nullptr where no setting is looked at
  bool m_alone = false;
};

}  // namespace cw
