#pragma once
#include <QRectF>
#include <vector>

#include "app/drawing/joint_ink.h"
#include "core/report/drawing.h"

class QPainter;

namespace cw {

/// "to do", "now", "done", "done again", "in trouble".
QString wordOf(PositionState state);

/// What the marks that are on a drawing mean, mark and word, in as many lines as it takes.
class JointLegend {
 public:
  JointLegend(const JointDrawing& drawing, const QFont& font);

  qreal height(qreal width) const;
  void paint(QPainter& painter, const QRectF& where, const JointInk& ink) const;

 private:
  struct Entry {
    PositionState state;
    QPointF at;  ///< left end of its line, at half height
  };
  std::vector<Entry> arranged(qreal width) const;

  std::vector<PositionState> m_states;
  QFont m_font;
  qreal m_line;    ///< height of a line
  qreal m_radius;  ///< of a mark
};

}  // namespace cw
