#include "app/drawing/joint_plan.h"

#include <QFontMetricsF>
#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <tuple>

#include "app/common/wording.h"
#include "app/drawing/joint_legend.h"
#include "app/drawing/joint_marks.h"
#include "app/drawing/joint_room.h"

namespace cw {
namespace {

constexpr qreal kLeastText = 8;             ///< px; smaller labels are not read on a screen
constexpr qreal kLeastOrder = 7;            ///< px, of an order number
constexpr qreal kBesideShare = 0.31;        ///< of the pitch: radius of a mark whose label is beside it
constexpr qreal kLargestBeside = 1.3;       ///< labels beside marks, over the size asked for
constexpr std::size_t kMostSearched = 256;  ///< positions for which places of labels are searched

QFont fontOf(const QFont& font, qreal pixels, QFont::Weight weight) {
  QFont out(font);
  out.setPixelSize(std::max(1, qRound(pixels)));
  out.setWeight(weight);
  return out;
}

/// Widths of the labels at a font size of 1 px.
std::vector<qreal> unitWidths(const JointDrawing& drawing, const QFont& font) {
  const QFontMetricsF metrics(fontOf(font, 100, QFont::Bold));
  std::vector<qreal> out;
  for (const DrawnPosition& position : drawing.positions)
    out.push_back(metrics.horizontalAdvance(toQt(position.label)) / 100);
  return out;
}

class Planner {
 public:
  Planner(const QRectF& room, const JointDrawing& drawing, const QFont& font,
          const JointDrawingOptions& options)
      : m_room(room),
        m_drawing(drawing),
        m_font(font),
        m_pinned(options.pinned),
        m_widths(unitWidths(drawing, font)),
        m_height(QFontMetricsF(fontOf(font, 100, QFont::Bold)).capHeight() / 100) {
    m_outward = outwardOf(drawing);
  }

  /// Labels in their marks, as large as the marks allow; marks of a share of their usual size.
  JointPlan inside(qreal share) const {
    JointPlan plan;
    plan.positions.resize(m_drawing.positions.size());
    for (int turn = 0; turn < 6; ++turn) {
      plan.radius = share * m_drawing.radius * plan.scale;
      plan.reach = std::min(plan.radius * kMarkReach,
                            std::max<qreal>(m_drawing.pitch * plan.scale - plan.radius - 2, plan.radius));
      put(plan);
      fit(plan, around(plan, plan.radius * kTickReach));
    }
    const qreal widest = m_widths.empty() ? 1 : *std::max_element(m_widths.begin(), m_widths.end());
    const qreal diagonal = std::hypot(widest, m_height);
    const qreal size = std::min(plan.radius * 1.8 / diagonal, plan.radius * 1.35);
    plan.labelFont = fontOf(m_font, size, QFont::Bold);
    for (PlannedPosition& each : plan.positions)
      each.label = rectAt(each.centre, QSizeF(plan.radius * 2, plan.radius * 1.6));
    return plan;
  }

  /// Every `stride`th label beside its mark at that font size; nothing if they get into each other's way.
  std::optional<JointPlan> beside(qreal size, std::size_t stride) const {
    JointPlan plan;
    plan.labelsBeside = true;
    plan.labelFont = fontOf(m_font, size, QFont::Bold);
    plan.positions.resize(m_drawing.positions.size());
    for (int turn = 0; turn < 6; ++turn) {
      const qreal pitch = m_drawing.pitch * plan.scale;
      plan.radius = std::min({kBesideShare * pitch, m_drawing.radius * plan.scale, size * 0.8});
      plan.reach = std::min(plan.radius * kMarkReach, pitch - plan.radius - 1);
      put(plan);
      putLabels(plan, size, stride);
      fit(plan, around(plan, plan.radius * kMarkReach));
    }
    put(plan);
    putLabels(plan, size, stride);
    if (plan.radius < 1 || !isClear(plan)) return std::nullopt;
    return plan;
  }

  qreal labelHeight(const JointPlan& plan) const { return plan.labelFont.pixelSize() * m_height; }
  qreal sizeFor(qreal height) const { return height / m_height; }

 private:
  void put(JointPlan& plan) const {
    for (std::size_t i = 0; i < plan.positions.size(); ++i) {
      plan.positions[i].centre = plan.at(m_drawing.positions[i].at);
      plan.positions[i].outward = m_outward[i];
    }
  }

  void putLabels(JointPlan& plan, qreal size, std::size_t stride) const {
    for (std::size_t i = 0; i < plan.positions.size(); ++i) {
      PlannedPosition& each = plan.positions[i];
      const PositionState state = m_drawing.positions[i].state;
      each.label = {};
      if (i % stride == 0 || state == PositionState::Now || state == PositionState::Trouble)
        each.label = besideCircle(each.centre, plan.radius * kMarkReach + 2, each.outward,
                                  QSizeF(m_widths[i] * size + 2, m_height * size + 2));
    }
    const JointEdge edge(m_drawing, plan.origin, plan.scale);
    for (PlannedPosition& each : plan.positions)
      for (int push = 0; push < 100 && !each.label.isEmpty() && edge.crosses(each.label); ++push)
        each.label.translate(each.outward * size / 12);
    dropNeighboursOfStates(plan, stride);
  }

  /// Where not all are labelled, those that must be push aside the regular ones.
  void dropNeighboursOfStates(JointPlan& plan, std::size_t stride) const {
    if (stride == 1) return;
    for (std::size_t i = 0; i < plan.positions.size(); ++i) {
      const PositionState state = m_drawing.positions[i].state;
      if (state != PositionState::Now && state != PositionState::Trouble) continue;
      for (std::size_t j = 0; j < plan.positions.size(); ++j) {
        const PositionState other = m_drawing.positions[j].state;
        const bool mayGo = other != PositionState::Now && (other != PositionState::Trouble || j > i);
        if (i != j && mayGo && plan.positions[i].label.intersects(plan.positions[j].label))
          plan.positions[j].label = {};
      }
    }
  }

  QRectF around(const JointPlan& plan, qreal margin) const {
    QRectF all = JointEdge(m_drawing, plan.origin, plan.scale).bounds();
    for (const PlannedPosition& each : plan.positions) {
      all |= rectAt(each.centre, QSizeF(2 * margin, 2 * margin));
      if (plan.labelsBeside) all |= each.label;
    }
    return all;
  }

  /// Scales and moves the plan so that what is around it fills the room; margins in pixels do not scale, so
  /// that it takes a few turns.
  void fit(JointPlan& plan, const QRectF& all) const {
    if (m_pinned) {
      std::tie(plan.origin, plan.scale) = *m_pinned;
      return;
    }
    const QRectF part = partOf(plan);
    const auto growth = [](qreal room, qreal whole, qreal scaled) {
      return scaled > 0 ? (room - (whole - scaled)) / scaled : 1e9;
    };
    const qreal factor = std::min(growth(m_room.width(), all.width(), part.width()),
                                  growth(m_room.height(), all.height(), part.height()));
    const qreal scale = std::clamp<qreal>(plan.scale * std::max<qreal>(factor, 0.05), 1, 1e5);
    const QPointF middle = (all.center() - plan.origin) / plan.scale;
    plan.scale = factor > 1e8 ? 1 : scale;
    plan.origin = m_room.center() - middle * plan.scale;
  }

  QRectF partOf(const JointPlan& plan) const {
    QRectF all = JointEdge(m_drawing, plan.origin, plan.scale).bounds();
    for (const PlannedPosition& each : plan.positions) all |= QRectF(each.centre, QSizeF(1e-6, 1e-6));
    return all;
  }

  bool isClear(const JointPlan& plan) const {
    const std::size_t count = plan.positions.size();
    for (std::size_t i = 0; i < count; ++i) {
      const QRectF& label = plan.positions[i].label;
      if (label.isEmpty()) continue;
      if (!m_room.adjusted(-2, -2, 2, 2).contains(label)) return false;
      for (std::size_t j = 0; j < count; ++j) {
        if (i == j) continue;
        if (distance(plan.positions[j].centre, label) < plan.radius * 1.15) return false;
        if (j > i && label.intersects(plan.positions[j].label)) return false;
      }
    }
    return true;
  }

  QRectF m_room;
  const JointDrawing& m_drawing;
  const QFont& m_font;
  std::optional<std::pair<QPointF, qreal>> m_pinned;
  std::vector<qreal> m_widths;  ///< of labels at 1 px
  qreal m_height;               ///< of capitals at 1 px
  std::vector<QPointF> m_outward;
};

/// The largest labels beside the marks, not above `most`; nothing if none reaches `least`.
std::optional<JointPlan> largestBeside(const Planner& planner, qreal most, qreal least) {
  for (qreal size = std::ceil(most); size >= std::max(kLeastText, least); --size)
    if (auto plan = planner.beside(size, 1)) return plan;
  for (std::size_t stride = 2; least < kLeastText && stride < 40; ++stride)
    if (auto plan = planner.beside(kLeastText + 2, stride)) return plan;
  return std::nullopt;
}

/// Order numbers all on one side of their marks, else wherever there is room. False if there is not.
bool planOrder(JointPlan& plan, const JointDrawing& drawing) {
  Obstacles obstacles(plan);
  const qreal largest = plan.labelsBeside ? plan.labelFont.pixelSize() * 0.8 : plan.radius * 0.75;
  for (const Side side : {Side::Inward, Side::Below, Side::Anywhere})
    for (qreal size = std::max(largest, kLeastOrder); size >= kLeastOrder; size *= 0.9) {
      plan.orderFont.setPixelSize(qRound(size));
      if (obstacles.placeOrders(plan, drawing, side)) return true;
    }
  return false;
}

/// Smaller marks where order numbers find no room between them.
void makeRoomForOrder(JointPlan& plan, const JointDrawing& drawing, const Planner& planner) {
  for (const qreal share : {1.0, 0.8, 0.65, 0.5}) {
    if (!plan.labelsBeside) {
      const QFont font = plan.orderFont;
      plan = planner.inside(share);
      plan.orderFont = font;
    }
    if (planOrder(plan, drawing) || plan.labelsBeside) return;
  }
}

}  // namespace

JointPlan planJoint(const QRectF& where, const JointDrawing& drawing, const QFont& font,
                    const JointDrawingOptions& options) {
  const qreal words = options.standHere.isEmpty() ? 0 : QFontMetricsF(font).height();
  const qreal legend = options.showLegend ? JointLegend(drawing, font).height(where.width()) : 0;
  const QRectF room = where.adjusted(2, 2, -2, -2 - words - legend);
  const Planner planner(room, drawing, font, options);
  JointPlan plan = planner.inside(1);
  const qreal wanted = QFontMetricsF(font).capHeight(), has = planner.labelHeight(plan);
  if (has < wanted && drawing.positions.size() <= kMostSearched) {
    const qreal most = planner.sizeFor(wanted * kLargestBeside);
    if (auto other = largestBeside(planner, most, planner.sizeFor(has * 1.1))) plan = *other;
  }
  plan.orderFont = fontOf(font, 10, QFont::Normal);
  if (options.showOrder && drawing.positions.size() <= kMostSearched)
    makeRoomForOrder(plan, drawing, planner);
  plan.words = QRectF(where.left(), room.bottom(), where.width(), words);
  plan.legend = QRectF(where.left(), room.bottom() + words, where.width(), legend);
  return plan;
}

}  // namespace cw
