#pragma once
#include <QWidget>
#include <functional>

#include "app/common/workspace.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace cw {

/// What a sign-off at the desk states, and what is asked for with it.
struct SignQuestion {
  QString states;     ///< what will happen, in a sentence
  QString button;     ///< says the same in a word or two
  QString textLabel;  ///< empty: no text is asked for
};

/// A form that stands in the page instead of a dialog: the statement, a text where one is wanted, name and
/// PIN. It closes when what was tried is done, and says in one sentence why it was not.
class SignForm final : public QWidget {
  Q_OBJECT

 public:
  using Attempt = std::function<Result<void>(const Signed&)>;

  explicit SignForm(Workspace& workspace, QWidget* parent = nullptr);

  void ask(const SignQuestion& question, Attempt attempt);
  void close();

 signals:
  void done();
  void left();

 private:
  void addField(QLabel* label, QWidget* field, const char* name);
  Result<void> fillPeople();
  void tryIt();

  Workspace& m_workspace;
  Attempt m_attempt;
  QLabel *m_states, *m_textLabel, *m_said;
  QPlainTextEdit* m_text;
  QComboBox* m_person;
  QLineEdit* m_pin;
  QPushButton* m_do;
};

}  // namespace cw
