#pragma once
#include <QWidget>
#include <map>
#include <optional>

#include "app/run/stage_panel.h"
#include "app/run/ways.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace cw {

class EntryFields;

/// What can be stated when things do not go as the sheet says. Shown in place of the step, never as a dialog.
class WaysOut final : public QWidget {
  Q_OBJECT
 public:
  explicit WaysOut(Course& course, QWidget* parent = nullptr);

  void present(const BenchView& view);
  void choose(
      const QString& way);  ///< by its key: "aside", "take-apart" …; the first where it is not offered
  QString action() const;   ///< words for the bench's main button
  void stateIt();

 signals:
  void changed();  ///< another way was chosen
  void left();     ///< stated, or thought better of

 private:
  void makeChoices(QVBoxLayout* column);
  void makeFields(QVBoxLayout* column);
  QLineEdit* addLine(QVBoxLayout* column, Asks asks, const QString& label, const QString& objectName);
  QComboBox* addChoice(QVBoxLayout* column, Asks asks, const QString& label, const QString& objectName);
  void fillSteps(const BenchView& view);
  void fillEntries(const BenchView& view);
  void fillWords(const BenchView& view);
  void offerWays();
  void showAsked();
  void showEntry();
  void showWords();
  const Way& way() const;
  bool asks(Asks what) const { return way().asks.contains(what); }
  /// InvalidInput for what cannot be read, or a correction that changes nothing.
  Result<Body> body() const;
  Result<Body> correction() const;
  /// Body of the way that is chosen, for the question whether a lead's word is wanted.
  std::optional<Given> wordWanted() const;
  std::string typed(Asks asks) const;
  QString data(Asks asks) const;

  Course& m_course;
  QComboBox* m_way;
  std::map<Asks, QComboBox*> m_choices;
  std::map<Asks, QLineEdit*> m_lines;
  std::map<QWidget*, QLabel*> m_names;
  QLabel *m_explanation, *m_wordsGiven;
  QLineEdit* m_confirmPin;
  EntryFields* m_fields;
  LeadsWord* m_word;
  std::vector<Body> m_entries;  ///< of the job, for corrections
  std::map<QString, std::pair<std::vector<int>, QString>>
      m_given;          ///< by sign: entries to confirm, and what they say
  std::string m_joint;  ///< of the step that is now
};

}  // namespace cw
