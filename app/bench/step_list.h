#pragma once
#include <QScrollArea>

#include "core/record/job.h"

namespace cw {

/// Where I am: every step with its state by shape, the one now in the middle of the view.
class StepList final : public QScrollArea {
  Q_OBJECT
 public:
  explicit StepList(QWidget* parent = nullptr);
  void present(const Job& job, const Next& next);

 private:
  class Canvas;
  Canvas* m_canvas;
};

}  // namespace cw
