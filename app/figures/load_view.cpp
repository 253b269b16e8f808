#include "app/figures/load_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/common/wording.h"
#include "app/drawing/joint_room.h"
#include "app/look/colours.h"
#include "app/look/measures.h"

namespace cw {
namespace {

constexpr qreal kBarShare = 0.19;  ///< of the smaller side, a bar at the target
constexpr qreal kWidestBar = 16;
constexpr int kLeastLines = 14;
constexpr std::size_t kMostNumbered = 16;  ///< bolts whose loads are written beside their bars

}  // namespace

LoadView::LoadView(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setAccessibleName(tr("Predicted clamp load of each bolt"));
}

void LoadView::setOutcome(const Layout& bolts, const SettlingOutcome& outcome) {
  m_drawing = drawingOf(bolts, {});
  m_outward = outwardOf(m_drawing);
  m_shares.assign(1, std::vector<double>(m_drawing.positions.size(), 0));
  m_turned.assign(1, 0);
  m_most = 1.1;
  for (const SettlingStep& step : outcome.course.steps) {
    std::vector<double> shares;
    for (const Force load : step.loads) shares.push_back(load / outcome.target);
    m_most = std::max(m_most, *std::max_element(shares.begin(), shares.end()));
    m_shares.push_back(std::move(shares));
    m_turned.push_back(step.bolt);
  }
  showAfter(m_shares.size() - 1);
}

void LoadView::clear() {
  m_drawing = {};
  m_shares.clear();
  showAfter(0);
}

/// In less the numbers of opposite bolts would meet.
QSize LoadView::minimumSizeHint() const {
  const int side = fontMetrics().height() * kLeastLines;
  return {side, side};
}

void LoadView::showAfter(std::size_t steps) {
  m_step = m_shares.empty() ? 0 : std::min(steps, m_shares.size() - 1);
  say();
  update();
}

/// For those who hear the picture.
void LoadView::say() {
  QStringList parts;
  for (std::size_t i = 0; i < m_drawing.positions.size(); ++i)
    parts
        << tr("bolt %1: %2 %").arg(toQt(m_drawing.positions[i].label)).arg(qRound(m_shares[m_step][i] * 100));
  setAccessibleDescription(parts.join(QStringLiteral(", ")));
}

qreal LoadView::longest() const {
  return std::min(width(), height()) * kBarShare / m_most;
}

LoadView::Bar LoadView::barOf(std::size_t bolt) const {
  const qreal text = fontMetrics().height();
  const qreal half = std::min(width(), height()) / 2.0 - longest() * m_most - text - 8;
  const DrawingPoint& at = m_drawing.positions[bolt].at;
  const QPointF centre = QRectF(rect()).center() + QPointF(at.x, at.y) * std::max<qreal>(half, 10) / 0.84;
  return {centre, m_outward[bolt], m_shares[m_step][bolt]};
}

void LoadView::paintBar(QPainter& painter, std::size_t bolt) const {
  const Bar bar = barOf(bolt);
  const bool turned = m_turned[m_step] == static_cast<int>(bolt) + 1;
  const qreal half = std::min(width(), height()) / 2.0 - longest() * m_most;
  const qreal wide = std::clamp<qreal>(m_drawing.pitch * half * 0.45, 3, kWidestBar);
  const QPointF across(-bar.outward.y() * wide / 2, bar.outward.x() * wide / 2);
  const QPointF top = bar.foot + bar.outward * longest() * bar.share;
  const QColor colour = turned ? accentOf(palette()) : inkOf(palette());
  painter.setPen(Qt::NoPen);
  painter.setBrush(colour);
  painter.drawPolygon(QPolygonF{{bar.foot - across, bar.foot + across, top + across, top - across}});
  painter.setPen(QPen(lineOf(palette()), 2));
  const QPointF target = bar.foot + bar.outward * longest();
  painter.drawLine(target - across * 1.5, target + across * 1.5);
  painter.setPen(QPen(colour, 1.5));
  painter.setBrush(turned ? accentOf(palette()) : sheetOf(palette()));
  painter.drawEllipse(bar.foot, wide * 0.6 + (turned ? 3 : 0), wide * 0.6 + (turned ? 3 : 0));
  const qreal text = fontMetrics().height();
  const auto write = [&](const QPointF& where, const QString& said) {
    painter.drawText(QRectF(where - QPointF(40, text / 2), QSizeF(80, text)), Qt::AlignCenter, said);
  };
  painter.setPen(inkOf(palette()));
  if (m_drawing.positions.size() > kMostNumbered && !turned) return;
  write(bar.foot - bar.outward * (wide * 0.6 + text * 0.75), toQt(m_drawing.positions[bolt].label));
  write(bar.foot + bar.outward * (longest() * std::max(bar.share, 1.0) + text * 0.8),
        QString::number(qRound(bar.share * 100)));
}

void LoadView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  if (m_drawing.positions.empty()) return;
  for (std::size_t bolt = 0; bolt < m_drawing.positions.size(); ++bolt) paintBar(painter, bolt);
  painter.setPen(secondInkOf(palette()));
  painter.drawText(rect(), Qt::AlignLeft | Qt::AlignBottom, tr("% of target"));
}

}  // namespace cw
