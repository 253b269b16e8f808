#pragma once
#include <QWidget>
#include <map>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cw {

/// A form at the bench: fields in two columns with their labels above; below them what was said of it, the
/// way back and the one main action.
class BenchForm : public QWidget {
  Q_OBJECT

 public:
  struct Heading {
    QString title, action;
    const char* actionName;  ///< object name of the main button
  };
  explicit BenchForm(const Heading& heading, QWidget* parent = nullptr);

  QLineEdit* addField(const QString& label, const char* name);
  QComboBox* addChoice(const QString& label, const char* name);
  QLineEdit* addPin(const char* name);  ///< Enter in it is the main action
  /// A widget of its own kind in the next cell.
  void add(const QString& label, QWidget* field, const char* name);
  /// Across both columns.
  void addWide(QWidget* widget);

  void setTitle(const QString& title);
  void setShown(QWidget* field, bool shown);  ///< with its label
  void say(const QString& sentence);
  QPushButton* action() const { return m_action; }

 signals:
  void acted();
  void left();

 private:
  QWidget* makeFields(const QString& title);
  QWidget* makeFoot(const Heading& heading);

  QGridLayout* m_grid;
  int m_cell = 0;
  std::map<QWidget*, QLabel*> m_labels;
  QLabel *m_title, *m_said;
  QPushButton* m_action;
};

}  // namespace cw
