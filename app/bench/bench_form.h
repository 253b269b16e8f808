#pragma once
#include <QWidget>
#include <map>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cw {

class BenchFoot;

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

  /// Of one column, or across both for what may be long.
  enum class Width { Half, Whole };
  QLineEdit* addField(const QString& label, const char* name, Width width = Width::Half);
  QComboBox* addChoice(const QString& label, const char* name, Width width = Width::Half, int lines = 1);
  QLineEdit* addPin(const char* name, const QString& label = {});  ///< Enter in it is the main action
  /// A widget of its own kind in the next cell.
  void add(const QString& label, QWidget* field, const char* name, Width width = Width::Half);
  /// Across both columns.
  void addWide(QWidget* widget);

  void setTitle(const QString& title);
  void setShown(QWidget* field, bool shown);  ///< with its label
  void say(const QString& sentence);
  QPushButton* action() const;

 signals:
  void acted();
  void left();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeFields(const QString& title);

  BenchFoot* m_foot;
  QWidget* m_fields;
  QGridLayout* m_grid;
  int m_cell = 0;
  std::map<QWidget*, QLabel*> m_labels;
  QLabel* m_title;
};

}  // namespace cw
