#pragma once
#include <QProxyStyle>

namespace cw {

/// The look of ordinary controls: flat, outlined, no gradients or shadows; a thick accent ring shows focus.
/// A button whose property "main" is true is the one action of its screen and stands filled.
class WorkshopStyle final : public QProxyStyle {
  Q_OBJECT

 public:
  WorkshopStyle();

  using QProxyStyle::polish;
  void polish(QWidget* widget) override;

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                   const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override;
  QRect subControlRect(ComplexControl control, const QStyleOptionComplex* option, SubControl part,
                       const QWidget* widget) const override;
  QRect subElementRect(SubElement element, const QStyleOption* option, const QWidget* widget) const override;
  int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
  QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                         const QWidget* widget) const override;
  int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                QStyleHintReturn* data) const override;

 private:
  bool drawsWrapped(const QStyleOption* option, QPainter* painter, const QWidget* widget) const;
};

inline constexpr char kMainProperty[] = "main";

}  // namespace cw
