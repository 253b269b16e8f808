#pragma once
#include <QWidget>

class QButtonGroup;
class QPushButton;
class QUndoStack;

namespace cw {

/// What can be done with a layout, as a row of buttons.
class LayoutActions final : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutActions(QUndoStack& history, QWidget* parent = nullptr);

  void showMode(int mode);

 signals:
  void modeChosen(int mode);  ///< LayoutCanvas::Mode
  void emptyWanted();
  void wholeWanted();
  void openWanted();
  void saveWanted();

 private:
  QPushButton* add(const QString& text, const char* name);
  void addModes();
  void addHistory(QUndoStack& history);

  QButtonGroup* m_modes;
};

}  // namespace cw
