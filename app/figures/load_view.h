#pragma once
#include <QWidget>
#include <vector>

#include "core/report/drawing.h"
#include "core/settling/settling_way.h"

namespace cw {

/// Predicted clamp loads around the part: at every bolt a bar outward, as long as its share of the target,
/// which a cross-line marks. The bolt that was just turned stands out by shape and accent.
class LoadView final : public QWidget {
  Q_OBJECT

 public:
  explicit LoadView(QWidget* parent = nullptr);

  void setOutcome(const Layout& bolts, const SettlingOutcome& outcome);
  void clear();
  QSize minimumSizeHint() const override;
  /// The loads after so many steps; 0: before the first.
  void showAfter(std::size_t steps);

  QSize sizeHint() const override { return {340, 300}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Bar {
    QPointF foot, outward;
    double share;  ///< of the target
  };
  Bar barOf(std::size_t bolt) const;
  void paintBar(QPainter& painter, std::size_t bolt) const;
  qreal longest() const;  ///< pixels of a bar that carries the target
  void say();

  JointDrawing m_drawing;
  std::vector<QPointF> m_outward;
  std::vector<std::vector<double>> m_shares;  ///< of every bolt after each step, from before the first
  std::vector<int> m_turned;                  ///< bolt of each step; 0 before the first
  double m_most = 1;                          ///< largest share of all steps
  std::size_t m_step = 0;
};

}  // namespace cw
