#pragma once
#include <QWidget>
#include <map>

#include "app/run/stage_panel.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace cw {

/// What can be stated when things do not go as the sheet says. Shown in place of the step, never as a dialog.
class WaysOut final : public QWidget {
  Q_OBJECT
 public:
  explicit WaysOut(Course& course, QWidget* parent = nullptr);

  void present(const BenchView& view);
  void choose(const QString& way);  ///< by its key: "aside", "take-apart" …
  QString action() const;           ///< words for the bench's main button
  void stateIt();

  enum class Asks { Step, Entry, Position, Value, What, WaitsFor, Machine, Lead, LeadPin, Reason };

 signals:
  void changed();  ///< another way was chosen
  void left();     ///< stated, or thought better of

 private:
  QLineEdit* addLine(QVBoxLayout* column, Asks asks, const QString& label, const QString& objectName);
  QComboBox* addChoice(QVBoxLayout* column, const QString& label, const QString& objectName, int lines = 1);
  void showAsked();
  Body body() const;
  std::string typed(Asks asks) const;

  Course& m_course;
  QComboBox *m_way, *m_step, *m_entry;
  std::map<Asks, QLineEdit*> m_lines;
  std::map<QWidget*, QLabel*> m_names;
  QLabel* m_explanation;
  std::vector<Body> m_entries;  ///< of the job, for corrections
  std::string m_joint;          ///< of the step that is now
};

}  // namespace cw
