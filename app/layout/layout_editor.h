#pragma once
#include <QUndoStack>
#include <QWidget>

#include "core/pattern/pattern.h"

class QLabel;

namespace cw {

class DocumentView;
class LayoutActions;
class LayoutCanvas;
class LayoutForm;
class OrderForm;

/// A layout and its order, to be drawn or typed: forms on the left, the drawing and the order in words on the
/// right. Every change can be undone; layout files are opened and saved.
class LayoutEditor final : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutEditor(QWidget* parent = nullptr);

  const Pattern& pattern() const { return m_pattern; }
  /// Begins anew: nothing to undo.
  void setPattern(const Pattern& pattern);

  /// A file of format "clampwright.layout". Errors of readFile and readLayoutFile, writeFile.
  Result<void> openFile(const QString& path);
  Result<void> saveFile(const QString& path);

  QUndoStack& history() { return m_history; }

 signals:
  void changed();

 private:
  QWidget* makeForms();
  QWidget* makeDrawing();
  void listenToCanvas();
  void listenToForms();
  void listenToActions();
  void setMode(int mode);

  /// Takes a change that can be undone; changes of one gesture (not 0) are undone together.
  void change(const Pattern& to, const QString& what, int gesture = 0);
  void changeLayout(const Layout& to, const QString& what, int gesture = 0);
  void apply(const Pattern& pattern);
  void place(const Point& point);
  void move(std::size_t index, const Point& point, int gesture);
  void remove(std::size_t index);
  void pick(std::size_t position);
  PolygonOutline corners() const;
  void takeCorners(const PolygonOutline& to, const QString& what, int gesture = 0);
  void startEmpty();
  void say(const QString& sentence, bool trouble = false);
  void chooseFile(bool toSave);

  Pattern m_pattern;
  PolygonOutline m_begun;  ///< an outline of one or two corners
  QUndoStack m_history;
  LayoutForm* m_layoutForm;
  OrderForm* m_orderForm;
  LayoutCanvas* m_canvas;
  DocumentView* m_words;
  QLabel* m_said;
  LayoutActions* m_actions;
};

}  // namespace cw
