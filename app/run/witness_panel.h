#pragma once
#include "app/run/stage_panel.h"

class QButtonGroup;

namespace cw {

/// The second person: who they are, and what they see, entered without being shown the first entry. Nothing
/// is answered for them.
class WitnessPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit WitnessPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool isReady() const override { return missing().isEmpty(); }
  void act() override;

 private:
  /// A thing that is looked at, and is so or not so.
  struct Question {
    std::string item;
    QButtonGroup* answer;
  };
  void addManners();
  void ask(const std::string& item);
  /// What is still to be answered, as the end of a request; empty if all is.
  QString missing() const;
  Manner manner() const;

  QLabel* m_text;
  QLineEdit *m_sign, *m_pin, *m_tool, *m_setting, *m_count;
  QButtonGroup* m_manner;
  QVBoxLayout* m_asked;  ///< the questions
  std::vector<Question> m_questions;
  std::vector<std::string> m_what;
  bool m_asksSetting = false, m_asksCount = false;
  bool m_alone = false;
};

}  // namespace cw
