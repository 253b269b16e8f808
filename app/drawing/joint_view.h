#pragma once
#include <QWidget>
#include <optional>
#include <set>

#include "app/drawing/joint_painter.h"

namespace cw {

/// A joint drawn in the window. Screen readers hear it as text; where positions may be chosen, each is a
/// touch target, the arrow keys move between them and Space chooses.
class JointView final : public QWidget {
  Q_OBJECT

 public:
  explicit JointView(QWidget* parent = nullptr);

  void setDrawing(JointDrawing drawing);
  void setOptions(JointDrawingOptions options);
  void setChoosable(bool choosable);
  const std::set<std::string>& chosen() const { return m_chosen; }
  void clearChosen();

  QSize sizeHint() const override { return minimumSizeHint(); }
  QSize minimumSizeHint() const override { return {220, 200}; }

 signals:
  void chosenChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void toggle(std::size_t position);
  /// The nearest position whose mark, or touch target around it, holds the point.
  std::optional<std::size_t> positionAt(const QPointF& point) const;
  void describe();

  JointDrawing m_drawing;
  JointDrawingOptions m_options;
  std::set<std::string> m_chosen;
  std::size_t m_cursor = 0;
  bool m_choosable = false;
};

}  // namespace cw
