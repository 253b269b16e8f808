#pragma once
#include <QWidget>

#include "app/run/course.h"
#include "core/record/leads_word.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace cw {

/// Where a shop lead allows what the program would refuse: name, and the PIN on the spot or, where that is
/// enough, that they said so by phone; and why.
class LeadsWord final : public QWidget {
  Q_OBJECT

 public:
  struct Labels {
    QString lead, reason;  ///< without the second no reason is asked for here
  };
  explicit LeadsWord(const Labels& labels, double textHeight, QWidget* parent = nullptr);

  /// Empties it. `given`: how the rules want the word.
  void present(Given given);
  QString sign() const;
  std::string reason() const;
  GivenWord given() const;
  /// The last of what is filled in, to be kept in view.
  QWidget& lastField() const;

 signals:
  void changed();

 private:
  QLineEdit* addField(QVBoxLayout& column, const QString& label, const QString& objectName,
                      double textHeight);
  void showWay();

  QLineEdit *m_lead, *m_pin, *m_reason = nullptr;
  QLabel *m_pinLabel, *m_unconfirmed;
  QCheckBox* m_byPhone;
};

}  // namespace cw
