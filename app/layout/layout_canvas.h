#pragma once
#include <QWidget>
#include <optional>

#include "app/drawing/joint_plan.h"
#include "core/pattern/pattern.h"

namespace cw {

/// The part to draw on: a click places a position, dragging or the arrow keys move it (Shift: ten steps),
/// Delete takes it away, Page Up and Page Down go from one to the next. It draws nothing for itself: it asks,
/// in the part's own frame, and is told the pattern anew.
class LayoutCanvas final : public QWidget {
  Q_OBJECT

 public:
  enum class Mode { Positions, Outline, Order };

  explicit LayoutCanvas(QWidget* parent = nullptr);
  QSize minimumSizeHint() const override;

  void present(const Pattern& pattern);
  void setMode(Mode mode);
  Mode mode() const { return m_mode; }
  void showCorners(const std::vector<Point>& corners);  ///< of an outline that is not whole yet
  void showAll();                                       ///< the whole part, with room around it

  /// Where a point of the part is on the screen, and back, on the grid.
  QPointF at(const Point& part) const;
  Point pointAt(const QPointF& pixel) const;

  QSize sizeHint() const override { return {480, 400}; }

 signals:
  void placed(const cw::Point& point);
  void moved(std::size_t index, const cw::Point& point, int gesture);  ///< of one drag or nudge
  void removed(std::size_t index);
  void restored(std::size_t hole);    ///< that was left out
  void picked(std::size_t position);  ///< in mode Order
  void unpicked();                    ///< the last one again

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  QRectF drawn() const;
  qreal pixelsPerMetre() const;
  QPointF fromSeen(const Point& seen) const;
  Length step(qreal leastPixels) const;
  const std::vector<Point>& handles() const;
  std::optional<std::size_t> handleAt(const QPointF& pixel) const;
  std::optional<std::size_t> leftOutAt(const QPointF& pixel) const;
  void select(std::size_t index);
  void nudge(int right, int up, bool far);
  void press(const QPointF& pixel);
  void say();
  void paintHandles(QPainter& painter) const;
  void paintWhere(QPainter& painter) const;

  Pattern m_pattern;
  JointDrawing m_drawing;
  std::vector<Point> m_positions, m_corners, m_open;  ///< in the part's frame; holes that are left out
  std::vector<std::size_t> m_openHoles;
  Mode m_mode = Mode::Positions;
  Point m_middle;                       ///< as seen
  Length m_half = millimetres(120);     ///< from the middle to the nearer side
  std::optional<std::size_t> m_chosen;  ///< handle
  bool m_dragging = false;
  int m_gesture = 0;
  std::optional<QPointF> m_hover;
};

}  // namespace cw
