#include <gmock/gmock.h>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

#include "app/drawing/joint_legend.h"
#include "app/drawing/joint_marks.h"
#include "app/drawing/joint_painter.h"
#include "app/drawing/joint_room.h"
#include "app/drawing/joint_view.h"
#include "core/pattern/order.h"
#include "tests/app/look.h"

namespace cw {
namespace {

constexpr PositionState kStates[] = {PositionState::ToDo, PositionState::Now, PositionState::Done,
                                     PositionState::Redone, PositionState::Trouble};

Layout ringLayout(std::size_t count, bool edged = true) {
  Layout layout{Circle{count, millimetres(200)}};
  if (edged) layout.outline = RoundOutline{millimetres(250)};
  return layout;
}

JointDrawing drawn(const Layout& layout) {
  const auto all = positions(layout);
  const auto order = tighteningOrder(layout, usualRule(layout));
  std::vector<std::string> labels;
  if (all && order)
    for (const std::size_t position : order->positions) labels.push_back((*all)[position - 1].label);
  return drawingOf(layout, labels);
}

/// As in the middle of a pass: a third done, one of them again, the next one now, a later one in trouble.
JointDrawing midway(JointDrawing drawing) {
  const int count = static_cast<int>(drawing.positions.size()), now = std::max(2, count / 3 + 1);
  for (DrawnPosition& position : drawing.positions) {
    if (position.order < now) position.state = PositionState::Done;
    if (position.order == 1) position.state = PositionState::Redone;
    if (position.order == now) position.state = PositionState::Now;
    if (position.order == now + 2) position.state = PositionState::Trouble;
  }
  return drawing;
}

/// The look's bench at 1280 × 800 leaves so much for the joint.
QSize benchRoom() {
  return {430, 430};
}

struct Case {
  const char* name;
  Layout layout;
};

std::vector<Case> layouts() {
  std::vector<Case> out;
  for (const std::size_t count : {4u, 8u, 12u, 24u, 64u}) out.push_back({"ring", ringLayout(count)});
  out.push_back({"bare ring", ringLayout(20, false)});
  out.push_back({"rows", Layout{Rows{4, 6, millimetres(40), millimetres(50)}}});
  out.push_back({"rows of sixty-four", Layout{Rows{8, 8, millimetres(40), millimetres(40)}}});
  out.push_back({"perimeter", Layout{Perimeter{millimetres(300), millimetres(180), 8, 6}}});
  out.push_back({"line", Layout{Line{9, millimetres(40)}}});
  out.push_back(
      {"circles", Layout{ConcentricCircles{{Circle{6, millimetres(90)}, Circle{12, millimetres(200)}}}}});
  Layout clock = ringLayout(12);
  clock.labels.style = LabelStyle::Clock;
  out.push_back({"clock", clock});
  return out;
}

class JointDrawingTest : public testing::Test {
 protected:
  JointDrawingTest() { useLook(Scheme::Light); }
};

TEST_F(JointDrawingTest, NothingLiesOnALabel) {
  for (const Case& each : layouts())
    for (const int side : {200, 430, 800}) {
      const JointDrawing drawing = midway(drawn(each.layout));
      const QRectF where(0, 0, side, side);
      JointDrawingOptions options;
      options.showOrder = true;
      const JointPlan plan = planJoint(where, drawing, deskFont(), options);
      SCOPED_TRACE(std::string(each.name) + " of " + std::to_string(drawing.positions.size()) + " in " +
                   std::to_string(side));
      for (std::size_t i = 0; i < plan.positions.size(); ++i) {
        const PlannedPosition& here = plan.positions[i];
        EXPECT_TRUE(where.contains(rectAt(here.centre, QSizeF(2, 2) * plan.radius)));
        EXPECT_TRUE(here.label.isEmpty() || where.contains(here.label));
        for (std::size_t j = 0; j < plan.positions.size(); ++j) {
          if (i == j) continue;
          const PlannedPosition& other = plan.positions[j];
          EXPECT_GT(std::hypot(here.centre.x() - other.centre.x(), here.centre.y() - other.centre.y()),
                    2 * plan.radius);
          EXPECT_FALSE(here.order.intersects(other.order)) << i << ' ' << j;
          if (!plan.labelsBeside) continue;
          EXPECT_FALSE(here.label.intersects(other.label)) << i << ' ' << j;
          EXPECT_FALSE(here.label.intersects(other.order)) << i << ' ' << j;
          EXPECT_TRUE(here.label.isEmpty() || distance(other.centre, here.label) > plan.radius);
        }
      }
    }
}

TEST_F(JointDrawingTest, TwentyFourLabelsAreReadAtAMetre) {
  // 5.8 mm is 20 arc-minutes at 1 m: NUREG-0700 rev. 3, 11.4.1.5-1.
  const QWidget screen;
  const QFont bench = fontOfHeight(bench::kTextHeight, &screen);
  JointDrawingOptions options;
  options.standHere = QStringLiteral("you stand here");
  for (const std::size_t count : {4u, 8u, 12u, 24u}) {
    const JointPlan plan =
        planJoint(QRectF(QPointF(), benchRoom()), drawn(ringLayout(count)), bench, options);
    EXPECT_GE(QFontMetricsF(plan.labelFont).capHeight(), pixels(bench::kTextHeight, &screen) * 0.99) << count;
    for (const PlannedPosition& each : plan.positions) EXPECT_FALSE(each.label.isEmpty());
  }
}

TEST_F(JointDrawingTest, LabelsWhatMattersWhereThereIsNoRoomForAll) {
  const JointDrawing drawing = midway(drawn(ringLayout(128)));
  const JointPlan plan = planJoint(QRectF(0, 0, 240, 240), drawing, deskFont(), {});
  EXPECT_GE(plan.labelFont.pixelSize(), 8);
  std::size_t labelled = 0;
  for (std::size_t i = 0; i < plan.positions.size(); ++i) {
    const PositionState state = drawing.positions[i].state;
    const bool isThere = !plan.positions[i].label.isEmpty();
    labelled += isThere;
    if (state == PositionState::Now || state == PositionState::Trouble) EXPECT_TRUE(isThere) << i;
  }
  EXPECT_GT(labelled, 15u);
  EXPECT_LT(labelled, 128u);
}

/// One mark as it looks where every ink is the same black: shape is all that is left.
QImage markAlone(PositionState state, bool labelInside, qreal radius) {
  QImage image(80, 80, QImage::Format_Grayscale8);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  const JointInk black{Qt::white, Qt::black, Qt::black, Qt::black, Qt::white, Qt::black, QFont()};
  JointMarks marks(painter, black);
  marks.shape(state, {40, 40}, radius, radius * kMarkReach);
  if (labelInside)
    marks.tick(state, {40, 40}, radius, {0, -1});
  else
    marks.sign(state, {40, 40}, radius);
  return image;
}

int differing(const QImage& a, const QImage& b) {
  int count = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) count += std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]) > 64;
  return count;
}

TEST_F(JointDrawingTest, StatesDifferInShapeAlone) {
  for (const bool labelInside : {true, false})
    for (const qreal radius : {6.0, 10.0, 24.0})
      for (const PositionState a : kStates)
        for (const PositionState b : kStates)
          if (a < b) {
            // A tenth of the mark's own area, which no smoothing of edges reaches.
            EXPECT_GT(differing(markAlone(a, labelInside, radius), markAlone(b, labelInside, radius)),
                      0.1 * kPi * radius * radius)
                << int(a) << ' ' << int(b) << " at " << radius << (labelInside ? " inside" : " beside");
          }
}

TEST_F(JointDrawingTest, EveryStateHasAWordOfItsOwn) {
  std::set<QString> words;
  for (const PositionState state : kStates) words.insert(wordOf(state));
  EXPECT_EQ(words.size(), std::size(kStates));
  EXPECT_FALSE(words.contains(QString()));
}

TEST_F(JointDrawingTest, ScreenReadersHearEveryPosition) {
  JointView view;
  view.setDrawing(midway(drawn(ringLayout(12))));
  EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("position 7 done")));
  EXPECT_TRUE(view.accessibleDescription().contains(QStringLiteral("in trouble")));
}

/// The pictures that people look at.
TEST_F(JointDrawingTest, IsShownAtAllSizes) {
  const QString folder = QStringLiteral(CW_PICTURES);
  QDir().mkpath(folder);
  for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
    const QPalette palette = paletteOf(scheme);
    const auto save = [&](const QSize& size, const QFont& font, const JointDrawing& drawing,
                          const JointDrawingOptions& options, const QString& name) {
      QImage image(size, QImage::Format_RGB32);
      image.fill(groundOf(palette));
      QPainter painter(&image);
      paintJoint(painter, QRectF(QPointF(), size), drawing, JointInk::ofPalette(palette, font), options);
      painter.end();
      const QString path = folder + QStringLiteral("/joint_") + name +
                           (scheme == Scheme::Light ? QStringLiteral("_light") : QStringLiteral("_dark"));
      EXPECT_TRUE(image.save(path + QStringLiteral(".png")));
      if (scheme == Scheme::Light) {
        EXPECT_TRUE(
            image.convertToFormat(QImage::Format_Grayscale8).save(path + QStringLiteral("_grey.png")));
      }
    };
    const QWidget screen;
    const QFont bench = fontOfHeight(bench::kTextHeight, &screen);
    for (const std::size_t count : {4u, 8u, 12u, 24u, 64u}) {
      JointDrawingOptions atBench;
      atBench.standHere = QStringLiteral("you stand here");
      save(benchRoom(), bench, midway(drawn(ringLayout(count))), atBench,
           QStringLiteral("bench_%1").arg(count));
      JointDrawingOptions atDesk;
      atDesk.showOrder = atDesk.showLegend = true;
      save({640, 680}, deskFont(), midway(drawn(ringLayout(count))), atDesk,
           QStringLiteral("desk_%1").arg(count));
      JointDrawingOptions small;
      small.showOrder = true;
      save({300, 300}, deskFont(), drawn(ringLayout(count, false)), small,
           QStringLiteral("small_%1").arg(count));
    }
    for (const Case& each : layouts()) {
      JointDrawingOptions options;
      options.showOrder = true;
      if (std::string(each.name) != "ring")
        save({480, 480}, deskFont(), drawn(each.layout), options, QLatin1String(each.name));
    }
  }
}

}  // namespace
}  // namespace cw
