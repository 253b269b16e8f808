#pragma once
#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>
#include <vector>

class QWidget;

namespace cw {

/// One run of text as a window paints it, whoever paints it: a label, a cell, a document, a drawing.
struct PaintedText {
  QString text;
  QFont font;
  QColor ink;
  QRectF rect;                ///< from the top of the capitals to what hangs below the line, in the window
  double capitals = 0;        ///< their height in pixels
  bool cutByPainter = false;  ///< a clip of the painter's own takes some of it away
  const QWidget* widget = nullptr;
};

/// Everything the window paints now, at its present size.
std::vector<PaintedText> paintedText(QWidget& window);

}  // namespace cw
