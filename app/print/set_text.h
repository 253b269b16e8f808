#pragma once
#include <QColor>
#include <QFont>
#include <QPointF>
#include <QString>
#include <memory>

class QPaintDevice;
class QPainter;
class QTextLayout;

namespace cw {

/// How a text is set.
struct TextLook {
  QFont font;
  QColor colour = Qt::black;
  Qt::Alignment alignment = Qt::AlignLeft;
  int struck = 0;  ///< so many characters from the start are struck through
};

/// A text broken into lines for a width on a device; it can be drawn a few lines at a time.
class SetText {
 public:
  SetText(const QString& text, const TextLook& look, double width, QPaintDevice& device);

  int lineCount() const;
  double height() const;
  double lineHeight() const;

  /// Lines [first, first + count) with the first one's top left corner at `at`.
  void draw(QPainter& painter, QPointF at, int first, int count) const;
  void draw(QPainter& painter, QPointF at) const { draw(painter, at, 0, lineCount()); }

 private:
  std::shared_ptr<QTextLayout> m_layout;
  QColor m_colour;
};

}  // namespace cw
