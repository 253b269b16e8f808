#include "app/documents/document_objects.h"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextDocument>
#include <QTextObjectInterface>
#include <QWidget>
#include <algorithm>

#include "app/drawing/joint_painter.h"
#include "app/look/colours.h"

namespace cw {
namespace {

enum Objects { JointObject = QTextFormat::UserObject + 1, GaugeObject };
enum Properties { Content = QTextFormat::UserProperty + 1 };

constexpr qreal kJointSide = 360;

/// Something of our own in a text.
class DrawnObject : public QObject, public QTextObjectInterface {
  Q_OBJECT
  Q_INTERFACES(QTextObjectInterface)

 public:
  explicit DrawnObject(QWidget& widget) : QObject(&widget), m_widget(widget) {}

 protected:
  QWidget& m_widget;
};

class JointInText final : public DrawnObject {
 public:
  using DrawnObject::DrawnObject;

  QSizeF intrinsicSize(QTextDocument* document, int, const QTextFormat&) override {
    const qreal room = document->textWidth() - 2 * document->documentMargin();
    const qreal side = std::clamp<qreal>(room, 120, kJointSide);
    return {side, side};
  }
  void drawObject(QPainter* painter, const QRectF& rect, QTextDocument*, int,
                  const QTextFormat& format) override {
    JointDrawingOptions options;
    options.showOrder = true;
    paintJoint(*painter, rect, format.property(Content).value<JointDrawing>(),
               JointInk::ofPalette(m_widget.palette(), m_widget.font()), options);
  }
};

class GaugeInText final : public DrawnObject {
 public:
  using DrawnObject::DrawnObject;

  QSizeF intrinsicSize(QTextDocument*, int, const QTextFormat&) override {
    return gaugeSize(QFontMetricsF(m_widget.font()));
  }
  /// The tolerance as a bar with ends; a reading is a filled mark, a setting an open one.
  void drawObject(QPainter* painter, const QRectF& rect, QTextDocument*, int,
                  const QTextFormat& format) override {
    const auto gauge = format.property(Content).value<Gauge>();
    const QPalette palette = m_widget.palette();
    const qreal margin = rect.width() / 6, mark = rect.height() / 4, middle = rect.center().y();
    const qreal low = rect.left() + margin, high = rect.right() - margin;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setPen(QPen(lineOf(palette), 2));
    painter->drawLine(QPointF(low, middle), QPointF(high, middle));
    for (const qreal end : {low, high})
      painter->drawLine(QPointF(end, middle - mark), QPointF(end, middle + mark));
    const qreal at = std::clamp(low + gauge.value * (high - low), rect.left() + mark, rect.right() - mark);
    painter->setPen(QPen(inkOf(palette), 1.5));
    painter->setBrush(gauge.isReading ? inkOf(palette) : sheetOf(palette));
    painter->drawEllipse(QPointF(at, middle), mark, mark);
    painter->restore();
  }
};

QTextCharFormat objectFormat(int type, const QVariant& content) {
  QTextCharFormat format;
  format.setObjectType(type);
  format.setProperty(Content, content);
  return format;
}

}  // namespace

QTextCharFormat jointFormat(const JointDrawing& drawing) {
  return objectFormat(JointObject, QVariant::fromValue(drawing));
}

QSizeF gaugeSize(const QFontMetricsF& metrics) {
  return {metrics.height() * 2.8, metrics.height()};
}

QTextCharFormat gaugeFormat(const Gauge& gauge) {
  return objectFormat(GaugeObject, QVariant::fromValue(gauge));
}

void registerDocumentObjects(QAbstractTextDocumentLayout& layout, QWidget& widget) {
  layout.registerHandler(JointObject, new JointInText(widget));
  layout.registerHandler(GaugeObject, new GaugeInText(widget));
}

}  // namespace cw

#include "document_objects.moc"
