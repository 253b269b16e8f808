#include "tests/app/walk/painted_text.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QWidget>
#include <algorithm>

namespace cw {
namespace {

constexpr qreal kCut = 1.5;  // pixels: less is the softness of an edge

/// Nothing of it is seen; a break that has no width counts too.
bool isBlank(QString text) {
  return text.remove(QChar(0x200B)).trimmed().isEmpty();
}

/// Hears what is painted and keeps the texts.
class TextEngine final : public QPaintEngine {
 public:
  TextEngine() : QPaintEngine(AllFeatures) {}

  bool begin(QPaintDevice*) override { return true; }
  bool end() override { return true; }
  void updateState(const QPaintEngineState&) override {}
  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
  void drawPath(const QPainterPath&) override {}
  void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
  Type type() const override { return User; }

  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    if (isBlank(item.text())) return;
    const QFontMetricsF metrics(item.font());
    const QTransform toDevice = painter()->deviceTransform();
    PaintedText out;
    out.text = item.text();
    out.font = item.font();
    out.ink = painter()->pen().color();
    const double below = std::max(0.0, metrics.tightBoundingRect(item.text()).bottom());
    out.rect = toDevice.mapRect(
        QRectF(at.x(), at.y() - metrics.capHeight(), item.width(), metrics.capHeight() + below));
    out.capitals = metrics.capHeight() * toDevice.m22();
    out.cutByPainter = isCut(out.rect, toDevice);
    out.widget = dynamic_cast<const QWidget*>(painter()->device());
    texts.push_back(std::move(out));
  }

  std::vector<PaintedText> texts;

 private:
  bool isCut(const QRectF& rect, const QTransform& toDevice) const {
    if (!painter()->hasClipping()) return false;
    const QRectF clip = toDevice.mapRect(painter()->clipBoundingRect());
    return !clip.contains(rect.adjusted(kCut, kCut, -kCut, -kCut)) && clip.intersects(rect);
  }
};

class TextDevice final : public QPaintDevice {
 public:
  explicit TextDevice(const QWidget& window) : m_window(window) {}
  QPaintEngine* paintEngine() const override { return &m_engine; }
  const std::vector<PaintedText>& texts() const { return m_engine.texts; }

 protected:
  int metric(PaintDeviceMetric metric) const override {
    switch (metric) {
      case PdmWidth:
        return m_window.width();
      case PdmHeight:
        return m_window.height();
      case PdmDpiX:
      case PdmPhysicalDpiX:
        return m_window.logicalDpiX();
      case PdmDpiY:
      case PdmPhysicalDpiY:
        return m_window.logicalDpiY();
      case PdmDepth:
        return 32;
      case PdmDevicePixelRatio:
        return 1;
      default:
        return QPaintDevice::metric(metric);
    }
  }

 private:
  const QWidget& m_window;
  mutable TextEngine m_engine;
};

}  // namespace

std::vector<PaintedText> paintedText(QWidget& window) {
  TextDevice device(window);
  window.render(&device, QPoint(), QRegion(), QWidget::DrawChildren);
  return device.texts();
}

}  // namespace cw
