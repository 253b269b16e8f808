#pragma once
#include <QScrollArea>

#include "core/record/next.h"

namespace cw {

/// Where I am: every step with its state by shape, the one now in the middle of the view.
class StepList final : public QScrollArea {
  Q_OBJECT
 public:
  explicit StepList(QWidget* parent = nullptr);
  void present(const Job& job, const Next& next);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void revealNow();
  class Canvas;
  Canvas* m_canvas;
  std::size_t m_now = 0;
};

}  // namespace cw
