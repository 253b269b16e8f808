#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QBoxLayout;
class QLabel;
class QLineEdit;

namespace cw {

/// Which shop file is open; to open another, or to make a new one with the person who leads it. Stands in the
/// window while none is open.
class ShopPage final : public QWidget {
  Q_OBJECT

 public:
  explicit ShopPage(Workspace& workspace, QWidget* parent = nullptr);

  /// Says in one sentence, where the eye is, what went wrong.
  void sayTrouble(const QString& sentence);
  /// Something else that is set here, below its heading.
  void addSetting(const QString& heading, QWidget* control, const QString& words);
  void openFrom(const QString& file);
  /// Makes the shop that the fields describe in this file.
  void makeAt(const QString& file);

 private:
  void sayWhichIsOpen();
  QLineEdit* addField(QBoxLayout& column, const QString& label, const char* name);
  QLabel* addHeading(QBoxLayout& column, const QString& text, double size);
  void addWords(QBoxLayout& column, const QString& text);

  Workspace& m_workspace;
  QBoxLayout* m_column;
  QLabel *m_state, *m_said;
  QLineEdit *m_name, *m_leadName, *m_leadSign, *m_leadPin;
};

}  // namespace cw
