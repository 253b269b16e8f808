#pragma once
#include <QWidget>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "core/units/parse.h"

class QLabel;
class QLineEdit;

namespace cw {

/// One line of a form: label above, what is typed, and below it in words what was found about it.
class InputField : public QWidget {
  Q_OBJECT

 public:
  struct Words {
    QString name;  ///< for settings, tests and refusals: "thread"
    QString label;
    QString example;  ///< shown while it is empty
    bool optional = false;
  };
  explicit InputField(const Words& words, QWidget* parent = nullptr);
  ~InputField() override;

  const QString& name() const { return m_words.name; }
  const QString& label() const { return m_words.label; }
  bool optional() const { return m_words.optional; }
  QLineEdit* edit() const { return m_edit; }

  std::string text() const;
  bool empty() const { return text().empty(); }
  /// How its numbers are written: as the locale has it while one types, with a point otherwise.
  DecimalMark numberMark() const { return m_mark; }
  /// Puts a text there that the program wrote: its numbers have a point. `edited` is not sent.
  void setText(const QString& text);

  /// What the text is once it is understood, numbers with a point; nothing while it is not.
  virtual std::optional<QString> understood() const { return toQt(text()); }
  /// What is wrong with it by itself; empty while nothing is.
  virtual QString problem() const { return {}; }
  /// What the reader should know of how it was taken.
  virtual QString remark() const { return {}; }

  void find(const QString& sentence);  ///< a finding in plain ink; empty for none
  void findTrouble(const QString& sentence);
  QString found() const;

 signals:
  void edited();

 protected:
  /// The text that stands there once the user has left it.
  virtual QString settled() const;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fitExamples();
  void settle();

  Words m_words;
  QLineEdit* m_edit;
  QLabel* m_found;
  DecimalMark m_mark = DecimalMark::Point;
};

}  // namespace cw
