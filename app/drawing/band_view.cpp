#include "app/drawing/band_view.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/look/colours.h"
#include "app/look/measures.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr double kSide = 8, kBetween = 16, kTick = 5, kHalfBar = 9, kLeader = 6, kLeast = 280;

double rowsIn(double bottom, double height) {
  return std::round(bottom / height);
}

}  // namespace

BandView::BandView(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setObjectName(QStringLiteral("band"));
  setAccessibleName(tr("Band on a scale"));
  setFont(deskFont());
}

void BandView::present(const BandDrawing& drawing) {
  m_drawing = drawing;
  QStringList words;
  for (const Marks* marks : {&drawing.band, &drawing.values})
    for (const BandDrawing::Mark& mark : *marks) words << worded(mark.text);
  setAccessibleDescription(words.join(QStringLiteral(", ")));
  updateGeometry();
  update();
}

double BandView::lineHeight() const {
  return QFontMetricsF(font()).height() + 2;
}

double BandView::placeOf(double share, int width) const {
  return kSide + share * (width - 2 * kSide);
}

std::vector<BandView::Label> BandView::labelsOf(const Marks& marks, int width) const {
  const QFontMetricsF metrics(font());
  const double height = lineHeight();
  std::vector<Label> labels;
  for (const BandDrawing::Mark& mark : marks) {
    const QString text = worded(mark.text);
    const double wide = metrics.horizontalAdvance(text) + 2, x = placeOf(mark.at, width);
    const double left = std::clamp(x - wide / 2, 0.0, std::max(0.0, width - wide));
    labels.push_back({QRectF(left, 0, wide, height), text, x});
  }
  std::sort(labels.begin(), labels.end(),
            [](const Label& a, const Label& b) { return a.box.left() < b.box.left(); });
  std::vector<double> taken;  // right end of each row
  for (Label& label : labels) {
    std::size_t row = 0;
    while (row < taken.size() && label.box.left() < taken[row] + kBetween) ++row;
    if (row == taken.size()) taken.push_back(0);
    taken[row] = label.box.right();
    label.box.moveTop(static_cast<double>(row) * height);
  }
  return labels;
}

int BandView::heightForWidth(int width) const {
  double above = 0, below = 0;
  for (const Label& label : labelsOf(m_drawing.values, width)) above = std::max(above, label.box.bottom());
  for (const Label& label : labelsOf(m_drawing.band, width)) below = std::max(below, label.box.bottom());
  return static_cast<int>(std::ceil(above + below + lineHeight() + 2 * kHalfBar + 3 * kLeader + kTick + 4));
}

QSize BandView::sizeHint() const {
  const int wide = static_cast<int>(kLeast * 1.6);
  return {wide, heightForWidth(wide)};
}

QSize BandView::minimumSizeHint() const {
  return {static_cast<int>(kLeast), heightForWidth(static_cast<int>(kLeast))};
}

void BandView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const auto above = labelsOf(m_drawing.values, width());
  double top = 0;
  for (const Label& label : above) top = std::max(top, label.box.bottom());
  const double middle = top + kLeader + kHalfBar;
  paintScale(painter, middle);
  paintBand(painter, middle);

  const QColor ink = inkOf(palette());
  const double rows = rowsIn(top, lineHeight());
  const auto lineTop = [&](const Label& label) { return (rows - 1) * lineHeight() - label.box.top(); };
  for (const Label& label : above) {
    painter.setPen(QPen(ink, 1, Qt::DashLine));
    painter.drawLine(QPointF(label.x, lineTop(label) + lineHeight()), QPointF(label.x, middle + kHalfBar));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    painter.drawPolygon(
        QPolygonF{{{label.x, middle}, {label.x - 5, middle - kHalfBar}, {label.x + 5, middle - kHalfBar}}});
  }
  painter.setPen(ink);
  for (const Label& label : above) {  // the lowest row stands nearest to the bar
    const QRectF box(label.box.left(), lineTop(label), label.box.width(), lineHeight());
    painter.fillRect(box, groundOf(palette()));
    painter.drawText(box, Qt::AlignCenter, label.text);
  }
  const double under = middle + kHalfBar + kTick + lineHeight() + kLeader;
  for (const Label& label : labelsOf(m_drawing.band, width())) {
    painter.setPen(ink);
    painter.drawText(label.box.translated(0, under), Qt::AlignCenter, label.text);
  }
}

void BandView::paintScale(QPainter& painter, double middle) const {
  const double axis = middle + kHalfBar;
  painter.setPen(QPen(lineOf(palette()), 1.5));
  painter.drawLine(QPointF(placeOf(0, width()), axis), QPointF(placeOf(1, width()), axis));
  for (std::size_t i = 0; i < m_drawing.ticks.size(); ++i) {
    const double x = placeOf(m_drawing.ticks[i].at, width());
    painter.setPen(QPen(lineOf(palette()), 1.5));
    painter.drawLine(QPointF(x, axis), QPointF(x, axis + kTick));
    const bool last = i + 1 == m_drawing.ticks.size();
    const QString text =
        worded(m_drawing.ticks[i].text) + (last ? toQt(kUnitSpace + m_drawing.unit) : QString());
    const double wide = QFontMetricsF(font()).horizontalAdvance(text) + 2;
    const double left = std::clamp(x - wide / 2, 0.0, std::max(0.0, width() - wide));
    painter.setPen(secondInkOf(palette()));
    painter.drawText(QRectF(left, axis + kTick, wide, lineHeight()), Qt::AlignCenter, text);
  }
}

void BandView::paintBand(QPainter& painter, double middle) const {
  const double low = placeOf(m_drawing.low, width()), high = placeOf(m_drawing.high, width());
  const QColor ink = inkOf(palette());
  QColor fill = secondInkOf(palette());
  fill.setAlphaF(0.28F);
  painter.fillRect(QRectF(low, middle - kHalfBar + 3, high - low, 2 * kHalfBar - 3), fill);
  painter.setPen(QPen(ink, 2));
  for (const double end : {low, high})
    painter.drawLine(QPointF(end, middle - kHalfBar), QPointF(end, middle + kHalfBar));
  if (m_drawing.band.size() < 3) return;
  const double typical = placeOf(m_drawing.band[1].at, width());
  painter.setBrush(ink);
  painter.drawEllipse(QPointF(typical, middle + 1), 5, 5);
}

}  // namespace cw
