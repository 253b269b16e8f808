#pragma once
#include <QWidget>

#include "core/report/band_drawing.h"

namespace cw {

/// A band on a scale as a picture: the bar from low to high with its typical value, and above it what is
/// compared with it. Told apart by shape, so it survives grey. Screen readers hear it as text.
class BandView final : public QWidget {
  Q_OBJECT

 public:
  explicit BandView(QWidget* parent = nullptr);

  void present(const BandDrawing& drawing);

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Label {
    QRectF box;
    QString text;
    double x;  ///< of the mark it belongs to
  };
  using Marks = std::vector<BandDrawing::Mark>;

  double placeOf(double share, int width) const;
  /// Side by side, and on the next row where there is no room; tops count rows from 0.
  std::vector<Label> labelsOf(const Marks& marks, int width) const;
  double lineHeight() const;
  void paintScale(QPainter& painter, double middle) const;
  void paintBand(QPainter& painter, double middle) const;

  BandDrawing m_drawing;
};

}  // namespace cw
