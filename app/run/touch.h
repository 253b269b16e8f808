#pragma once
#include <QListWidget>

#include "app/look/measures.h"

class QBoxLayout;
class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace cw {

/// A list as high as its rows: what is around it scrolls, it does not.
class TallList final : public QListWidget {
  Q_OBJECT

 public:
  TallList();

 protected:
  void updateGeometries() override;
};

/// Font and least size of a control for gloved hands.
void fitForTouch(QWidget& control, double textHeight = bench::kLabelHeight);

/// A button beside the main action, with the words that a step is left by.
QPushButton* touchButton(const QString& text, const QString& objectName);

/// A box to check, as high as a finger needs it.
QCheckBox* touchCheck(const QString& text, const QString& objectName);

/// The words above a field, which they also name to a screen reader.
QLabel* labelFor(QWidget& field, const QString& text);

/// A choice whose rows are as high as a finger needs them; one between sentences has two lines for what is
/// chosen.
QComboBox* touchChoice(const QString& objectName, int lines = 1);

/// Makes every row as high as its words need, and as a finger does.
void fitRowsForTouch(QListWidget& list);

/// Pixels between things that are touched.
int touchGap(const QWidget& of);

}  // namespace cw
