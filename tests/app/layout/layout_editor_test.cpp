#include "app/layout/layout_editor.h"

#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>

#include "app/documents/document_view.h"
#include "app/layout/layout_canvas.h"
#include "core/pattern/layout_json.h"
#include "core/store/file_io.h"
#include "tests/app/look.h"
#include "tests/support/need.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

/// An irregular pump housing, invented: millimetres.
constexpr std::pair<int, int> kHousing[] = {{-60, 40}, {0, 70},    {55, 50},  {75, -10},
                                            {40, -60}, {-25, -70}, {-80, -20}};

/// Somebody in front of the editor.
class LayoutEditorTest : public testing::Test {
 protected:
  LayoutEditorTest() {
    useLook(Scheme::Light);
    editor.resize(1100, 760);
    editor.show();
    settle();
  }
  static void settle() {
    for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();
  }
  template <class Widget>
  Widget& child(const char* name) const {
    auto* found = editor.findChild<Widget*>(QLatin1String(name));
    if (found == nullptr) throw std::runtime_error(std::string("no widget is called ") + name);
    return *found;
  }
  LayoutCanvas& canvas() const { return child<LayoutCanvas>("layoutCanvas"); }
  void press(const char* name) const { child<QPushButton>(name).click(); }
  void click(const Point& part) const {
    QTest::mouseClick(&canvas(), Qt::LeftButton, {}, canvas().at(part).toPoint());
  }
  void key(Qt::Key which, Qt::KeyboardModifiers with = {}) const { QTest::keyClick(&canvas(), which, with); }
  void type(const char* name, const QString& text) const {
    auto& field = child<QLineEdit>(name);
    field.selectAll();
    if (text.isEmpty())
      QTest::keyClick(&field, Qt::Key_Delete);
    else
      QTest::keyClicks(&field, text);
  }
  void typePoint(const QString& text) const {
    type("typedPointField", text);
    QTest::keyClick(&child<QLineEdit>("typedPointField"), Qt::Key_Return);
  }
  void choose(const char* name, int row) const {
    auto& box = child<QComboBox>(name);
    box.setCurrentIndex(row);
    emit box.activated(row);
  }
  QString found(const char* name) const {
    const auto& label = child<QLabel>(name);
    return label.isVisibleTo(&editor) ? label.text() : QString();
  }
  void openTab(int tab) const { child<QTabWidget>("patternTabs").setCurrentIndex(tab); }
  QString words() const { return child<DocumentView>("orderWords").toPlainText(); }
  std::vector<Point> points() const { return places(editor.pattern().layout).value_or(std::vector<Point>()); }
  std::vector<std::string> order() const {
    return orderLabels(editor.pattern()).value_or(std::vector<std::string>());
  }
  void drawHousing() const {
    press("startEmptyButton");
    for (const auto& [x, y] : kHousing) click({millimetres(x), millimetres(y)});
  }
  void show(const char* name) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
      useLook(scheme);
      settle();
      const char* suffix = scheme == Scheme::Light ? "_light" : "_dark";
      EXPECT_TRUE(savePicture(editor, QLatin1String(name) + QLatin1String(suffix)));
    }
    useLook(Scheme::Light);
  }

  LayoutEditor editor;
};

MATCHER_P2(IsAt, x, y, "") {
  return std::abs(inMillimetres(arg.x) - x) < 0.51 && std::abs(inMillimetres(arg.y) - y) < 0.51;
}

TEST_F(LayoutEditorTest, DrawsAPumpHousingByMouse) {
  drawHousing();
  ASSERT_EQ(points().size(), std::size(kHousing));
  for (std::size_t i = 0; i < points().size(); ++i)
    EXPECT_THAT(points()[i], IsAt(kHousing[i].first, kHousing[i].second)) << i;
  EXPECT_THAT(order(), testing::UnorderedElementsAre("1", "2", "3", "4", "5", "6", "7"));
  EXPECT_TRUE(words().contains(QStringLiteral("start at 1"))) << words().toStdString();
  press("outlineMode");
  for (const auto& [x, y] : kHousing) click({millimetres(x * 1.3), millimetres(y * 1.3)});
  ASSERT_TRUE(editor.pattern().layout.outline.has_value());
  EXPECT_EQ(std::get<PolygonOutline>(*editor.pattern().layout.outline).corners.size(), std::size(kHousing));
  press("positionsMode");
  show("layout_editor_housing");
}

TEST_F(LayoutEditorTest, TypesTheSamePumpHousing) {
  drawHousing();
  const auto byMouse = order();
  press("startEmptyButton");
  for (const auto& [x, y] : kHousing) typePoint(QStringLiteral("%1 %2").arg(x).arg(y));
  ASSERT_EQ(points().size(), std::size(kHousing));
  EXPECT_THAT(points()[6], IsAt(-80, -20));
  EXPECT_EQ(order(), byMouse);
  auto& table = child<QTableWidget>("pointTable");
  EXPECT_EQ(table.rowCount(), 7);
  table.item(6, 1)->setText(QStringLiteral("-82.5"));
  EXPECT_NEAR(inMillimetres(points()[6].x), -82.5, 1e-9);
}

TEST_F(LayoutEditorTest, DraggingAndNudgingMoveAPositionAndCanBeUndone) {
  drawHousing();
  const QPoint from = canvas().at(points()[3]).toPoint(),
               to = canvas().at({millimetres(70), millimetres(10)}).toPoint();
  QTest::mousePress(&canvas(), Qt::LeftButton, {}, from);
  for (int step = 1; step <= 5; ++step) QTest::mouseMove(&canvas(), from + (to - from) * step / 5);
  QTest::mouseRelease(&canvas(), Qt::LeftButton, {}, to);
  EXPECT_THAT(points()[3], IsAt(70, 10));
  const Point before = points()[3];
  key(Qt::Key_Right);
  EXPECT_GT(points()[3].x, before.x);
  key(Qt::Key_Left);
  key(Qt::Key_Up, Qt::ShiftModifier);
  EXPECT_GT(points()[3].y - before.y, millimetres(4));
  press("undoButton");
  press("undoButton");
  press("undoButton");
  EXPECT_THAT(points()[3], IsAt(70, 10));
  press("undoButton");  // the drag, all five moves of it
  EXPECT_THAT(points()[3], IsAt(75, -10));
  press("redoButton");
  EXPECT_THAT(points()[3], IsAt(70, 10));
  key(Qt::Key_PageDown);
  key(Qt::Key_Delete);
  EXPECT_EQ(points().size(), 6u);
}

TEST_F(LayoutEditorTest, MirroringLeavesLabelsOnTheirHolesAndTheOrderAlone) {
  drawHousing();
  const auto before = order();
  const auto plain = *positions(editor.pattern().layout);
  child<QCheckBox>("mirroredBox").click();
  type("rotationField", QStringLiteral("90"));
  EXPECT_EQ(order(), before);
  EXPECT_EQ(positions(editor.pattern().layout)->at(0).label, plain[0].label);
  // Mirrored, x turns its sign; then a quarter turn clockwise takes (-x, y) to (y, x).
  EXPECT_NEAR(positions(editor.pattern().layout)->at(0).x.si(), plain[0].y.si(), 1e-9);
  EXPECT_NEAR(positions(editor.pattern().layout)->at(0).y.si(), plain[0].x.si(), 1e-9);
  // What is clicked still lands under the pointer.
  click({millimetres(10), millimetres(5)});
  EXPECT_THAT(points().back(), IsAt(10, 5));
  show("layout_editor_mirrored");
}

TEST_F(LayoutEditorTest, EveryShapeIsMadeFromItsSizes) {
  const std::size_t counts[] = {8, 10, 14, 7, 18};
  for (int kind = 0; kind < 5; ++kind) {
    choose("shapeChoice", kind);
    EXPECT_EQ(points().size(), counts[kind]) << kind;
    EXPECT_EQ(order().size(), counts[kind]) << kind;
  }
  choose("shapeChoice", 0);
  type("countField", QStringLiteral("12"));
  EXPECT_EQ(points().size(), 12u);
  type("left_outField", QStringLiteral("3 7"));
  EXPECT_EQ(points().size(), 10u);
  choose("labelChoice", 1);
  EXPECT_THAT(order(), testing::Contains("J"));
  choose("labelChoice", 2);
  EXPECT_THAT(order(), testing::Contains("12"));
  choose("shapeChoice", 5);  // the same holes, to be moved one by one
  EXPECT_EQ(points().size(), 10u);
  show("layout_editor_freed");
}

TEST_F(LayoutEditorTest, ShowsGapsAndRepeatsOfAnOrderByHand) {
  openTab(1);
  type("handOrderField", QStringLiteral("1 5 3 3"));
  EXPECT_TRUE(found("handOrderFound").contains(QLatin1Char('3'))) << found("handOrderFound").toStdString();
  EXPECT_TRUE(words().contains(QStringLiteral("1  5  3  3")));
  type("handOrderField", QStringLiteral("1 5 3 7 2 6 4 8"));
  EXPECT_EQ(found("handOrderFound"), QString());
  type("handOrderField", {});
  press("clickOrderButton");
  for (const std::size_t position : {0u, 4u, 2u}) click(points()[position]);
  EXPECT_THAT(editor.pattern().byHand, testing::ElementsAre("1", "5", "3"));
  EXPECT_NE(found("handOrderFound"), QString());
  key(Qt::Key_Backspace);
  EXPECT_THAT(editor.pattern().byHand, testing::ElementsAre("1", "5"));
}

TEST_F(LayoutEditorTest, SharesTheOrderAmongTools) {
  openTab(1);
  child<QSpinBox>("toolsSpin").setValue(4);
  EXPECT_TRUE(words().contains(QStringLiteral("Tool 4")));
  choose("shapeChoice", 3);
  type("countField", QStringLiteral("3"));
  EXPECT_TRUE(found("handOrderFound").contains(QStringLiteral("4 tools")))
      << found("handOrderFound").toStdString();
}

TEST_F(LayoutEditorTest, SaysWhatIsWrongBesideItsField) {
  const auto refused = [&](const char* field, const QString& text, const char* label) {
    const auto before = points();
    type(field, text);
    EXPECT_EQ(points().size(), before.size()) << field;
    const QString said = found(label);
    EXPECT_TRUE(said.endsWith(QLatin1Char('.'))) << label << ": " << said.toStdString();
    return said;
  };
  EXPECT_TRUE(refused("countField", QStringLiteral("2"), "countFound").contains(QStringLiteral("no circle")));
  type("countField", QStringLiteral("8"));
  EXPECT_EQ(found("countFound"), QString());
  refused("diameterField", QStringLiteral("-3"), "diameterFound");
  refused("diameterField", QStringLiteral("1000000000"), "diameterFound");
  refused("diameterField", QStringLiteral("wide"), "diameterFound");
  type("diameterField", QStringLiteral("150"));
  refused("left_outField", QStringLiteral("9"), "left_outFound");
  type("left_outField", {});
  choose("shapeChoice", 5);
  for (const char* bad : {"40", "40 x", "1000000000 0", "0 75"}) {
    typePoint(QLatin1String(bad));
    EXPECT_TRUE(found("typedPointFound").endsWith(QLatin1Char('.'))) << bad;
    EXPECT_EQ(points().size(), 8u) << bad;
  }
  EXPECT_TRUE(found("typedPointFound").contains(QStringLiteral("one point")));  // 0 75 is position 1
  openTab(1);
  type("sharesField", QStringLiteral("70 30"));
  EXPECT_NE(found("sharesFound"), QString());
  show("layout_editor_refused");
}

TEST_F(LayoutEditorTest, SavesWhatTheCommandLineReads) {
  const TemporaryFolder folder;
  const QString path = QString::fromStdString((folder.path() / "housing.json").string());
  drawHousing();
  test::need(editor.saveFile(path));
  const auto read = readLayoutFile(test::need(readFile(path.toStdString())));
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(*read, editor.pattern().layout);
  choose("shapeChoice", 0);
  test::need(editor.openFile(path));
  EXPECT_EQ(points().size(), 7u);
  test::need(writeFile(path.toStdString(), "{\"format\":\"other\"}", Existing::Replaced));
  EXPECT_FALSE(editor.openFile(path).has_value());
  EXPECT_EQ(points().size(), 7u);
}

TEST_F(LayoutEditorTest, EveryControlHasAName) {
  EXPECT_THAT(namelessFocusTargets(editor).join(QLatin1Char(',')).toStdString(), testing::IsEmpty());
}

}  // namespace
}  // namespace cw
