#include "app/layout/layout_editor.h"

#include <QFileDialog>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/wording.h"
#include "app/documents/document_view.h"
#include "app/layout/layout_actions.h"
#include "app/layout/layout_canvas.h"
#include "app/layout/layout_form.h"
#include "app/layout/order_form.h"
#include "app/layout/pattern_change.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/pattern/layout_json.h"
#include "core/report/pattern_document.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr int kEditorMargin = 24, kEditorGap = 8, kFormWidth = 288;

/// Scrolls up and down only: never narrower than what is in it.
class UprightArea final : public QScrollArea {
 public:
  QSize minimumSizeHint() const override {
    const QSize least = QScrollArea::minimumSizeHint();
    const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this);
    return {std::max({least.width(), widget()->minimumSizeHint().width() + bar, kFormWidth}), least.height()};
  }
};

QScrollArea* scrolled(QWidget* form) {
  auto* area = new UprightArea;
  auto* inside = new QWidget;
  auto* down = new QVBoxLayout(inside);
  down->setContentsMargins(0, kEditorGap, 0, kEditorGap);
  down->addWidget(form);
  area->setWidget(inside);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  return area;
}

}  // namespace

LayoutEditor::LayoutEditor(QWidget* parent)
    : QWidget(parent),
      m_layoutForm(new LayoutForm),
      m_orderForm(new OrderForm),
      m_canvas(new LayoutCanvas),
      m_words(new DocumentView),
      m_said(textLabel({}, deskFont())),
      m_actions(new LayoutActions(m_history)) {
  auto* sides = new QSplitter;
  sides->setChildrenCollapsible(false);
  sides->addWidget(makeForms());
  sides->addWidget(makeDrawing());
  sides->setStretchFactor(1, 1);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(sides);
  listenToCanvas();
  listenToForms();
  listenToActions();
  apply(m_pattern);
}

QWidget* LayoutEditor::makeForms() {
  auto* tabs = new QTabWidget;
  tabs->setObjectName(QStringLiteral("patternTabs"));
  tabs->addTab(scrolled(m_layoutForm), tr("Layout"));
  tabs->addTab(scrolled(m_orderForm), tr("Order and passes"));
  tabs->setDocumentMode(true);
  tabs->setAccessibleName(tr("Layout, order and passes"));
  tabs->tabBar()->setAccessibleName(tabs->accessibleName());
  tabs->setFocusPolicy(Qt::NoFocus);
  auto* side = new QWidget;
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins(kEditorMargin, kEditorMargin, kEditorGap, kEditorMargin);
  down->addWidget(tabs);
  return side;
}

QWidget* LayoutEditor::makeDrawing() {
  m_words->setObjectName(QStringLiteral("orderWords"));
  m_words->setAccessibleName(tr("The order in words"));
  m_said->setObjectName(QStringLiteral("layoutSaid"));
  m_said->hide();
  auto* parts = new QSplitter(Qt::Vertical);
  parts->setChildrenCollapsible(false);
  parts->addWidget(m_canvas);
  parts->addWidget(m_words);
  parts->setStretchFactor(0, 3);
  parts->setStretchFactor(1, 2);
  auto* side = new QWidget;
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins(kEditorGap, kEditorMargin, kEditorMargin, kEditorMargin);
  down->setSpacing(kEditorGap);
  down->addWidget(m_actions);
  down->addWidget(m_said);
  down->addWidget(parts, 1);
  return side;
}

void LayoutEditor::listenToCanvas() {
  connect(m_canvas, &LayoutCanvas::placed, this, &LayoutEditor::place);
  connect(m_canvas, &LayoutCanvas::moved, this, &LayoutEditor::move);
  connect(m_canvas, &LayoutCanvas::removed, this, &LayoutEditor::remove);
  connect(m_canvas, &LayoutCanvas::picked, this, &LayoutEditor::pick);
  connect(m_canvas, &LayoutCanvas::restored, this, [this](std::size_t hole) {
    Layout layout = m_pattern.layout;
    std::erase(layout.leftOut, hole);
    if (layout.labels.style == LabelStyle::Own)
      layout.labels.own = ownLabelsFor(layout, keptHoles(layout).size());
    changeLayout(layout, tr("put back"));
  });
  connect(m_canvas, &LayoutCanvas::unpicked, this, [this] {
    Pattern pattern = m_pattern;
    if (!pattern.byHand.empty()) pattern.byHand.pop_back();
    change(pattern, tr("order"));
  });
}

void LayoutEditor::listenToForms() {
  connect(m_layoutForm, &LayoutForm::edited, this,
          [this](const Layout& layout) { changeLayout(layout, tr("layout")); });
  connect(m_layoutForm, &LayoutForm::outlineWanted, this,
          [this] { setMode(static_cast<int>(LayoutCanvas::Mode::Outline)); });
  connect(m_orderForm, &OrderForm::edited, this,
          [this](const Pattern& pattern) { change(pattern, tr("order")); });
  connect(m_orderForm, &OrderForm::clickingWanted, this, [this] {
    setMode(static_cast<int>(LayoutCanvas::Mode::Order));
    m_canvas->setFocus(Qt::OtherFocusReason);
  });
}

void LayoutEditor::listenToActions() {
  connect(m_actions, &LayoutActions::modeChosen, this, &LayoutEditor::setMode);
  connect(m_actions, &LayoutActions::emptyWanted, this, &LayoutEditor::startEmpty);
  connect(m_actions, &LayoutActions::wholeWanted, m_canvas, &LayoutCanvas::showAll);
  connect(m_actions, &LayoutActions::openWanted, this, [this] { chooseFile(false); });
  connect(m_actions, &LayoutActions::saveWanted, this, [this] { chooseFile(true); });
}

void LayoutEditor::setMode(int mode) {
  m_actions->showMode(mode);
  m_canvas->setMode(static_cast<LayoutCanvas::Mode>(mode));
  switch (m_canvas->mode()) {
    case LayoutCanvas::Mode::Positions:
      return say(tr("Click to place, drag or use the arrow keys to move, Delete takes away."));
    case LayoutCanvas::Mode::Outline:
      return say(tr("Click the corners of the part one after the other; drag to move, Delete takes away."));
    case LayoutCanvas::Mode::Order:
      return say(
          tr("Click the positions in the order they are tightened; Backspace takes the last one back."));
  }
}

void LayoutEditor::setPattern(const Pattern& pattern) {
  m_history.clear();
  apply(pattern);
  m_canvas->showAll();
}

void LayoutEditor::change(const Pattern& to, const QString& what, int gesture) {
  if (to == m_pattern) return;
  m_history.push(new PatternChange(
      m_pattern, to, [this](const Pattern& pattern) { apply(pattern); }, what, gesture));
}

/// A rule that the new layout does not bear gives way to the usual one.
void LayoutEditor::changeLayout(const Layout& to, const QString& what, int gesture) {
  const auto placed = positions(to);
  const auto* free = std::get_if<FreePoints>(&to.shape);
  if (!placed && !(free != nullptr && free->points.empty())) {
    if (!m_layoutForm->refuse(placed.error())) say(worded(placed.error()), true);
    return;
  }
  Pattern pattern = m_pattern;
  pattern.layout = to;
  if (placed && pattern.byHand.empty() && !tighteningOrder(to, pattern.rule)) pattern.rule = usualRule(to);
  say({});
  change(pattern, what, gesture);
}

void LayoutEditor::apply(const Pattern& pattern) {
  m_pattern = pattern;
  m_layoutForm->present(pattern.layout);
  m_orderForm->present(pattern);
  m_canvas->present(pattern);
  const auto* free = std::get_if<FreePoints>(&pattern.layout.shape);
  if (free != nullptr && free->points.empty()) {
    Document empty;
    empty.title = inWindow("Tightening order");
    empty.sections.push_back(
        {"", {Paragraph{fromQt(tr("Click where the first fastener sits, or type its x and y."))}}, false});
    m_words->present(empty);
  } else {
    m_words->present(patternDocument(pattern, inWindow));
  }
  emit changed();
}

void LayoutEditor::place(const Point& point) {
  Layout layout = m_pattern.layout;
  if (m_canvas->mode() == LayoutCanvas::Mode::Outline) {
    PolygonOutline next = corners();
    next.corners.push_back(point);
    return takeCorners(next, tr("place a corner"));
  }
  auto* free = std::get_if<FreePoints>(&layout.shape);
  if (free == nullptr)
    return say(tr("The shape is made from its sizes; choose Free positions to place one by one."), true);
  free->points.push_back(point);
  layout.groups.clear();
  if (layout.labels.style == LabelStyle::Own) layout.labels.own = ownLabelsFor(layout, free->points.size());
  changeLayout(layout, tr("place a position"));
}

void LayoutEditor::move(std::size_t index, const Point& point, int gesture) {
  Layout layout = m_pattern.layout;
  if (m_canvas->mode() == LayoutCanvas::Mode::Outline) {
    PolygonOutline next = corners();
    next.corners.at(index) = point;
    return takeCorners(next, tr("move a corner"), gesture);
  }
  auto* free = std::get_if<FreePoints>(&layout.shape);
  if (free == nullptr)
    return say(tr("The shape is made from its sizes; choose Free positions to move one by one."), true);
  free->points.at(index) = point;
  changeLayout(layout, tr("move a position"), gesture);
}

void LayoutEditor::remove(std::size_t index) {
  if (m_canvas->mode() != LayoutCanvas::Mode::Outline)
    return changeLayout(withoutPosition(m_pattern.layout, index), tr("take a position away"));
  PolygonOutline next = corners();
  next.corners.erase(next.corners.begin() + static_cast<std::ptrdiff_t>(index));
  takeCorners(next, tr("take a corner away"));
}

PolygonOutline LayoutEditor::corners() const {
  const auto& outline = m_pattern.layout.outline;
  const auto* polygon = outline ? std::get_if<PolygonOutline>(&*outline) : nullptr;
  return polygon != nullptr ? *polygon : m_begun;
}

/// One and two corners make no outline yet: they wait for the third.
void LayoutEditor::takeCorners(const PolygonOutline& to, const QString& what, int gesture) {
  Layout layout = m_pattern.layout;
  const bool isWhole = to.corners.size() >= 3;
  m_begun = isWhole ? PolygonOutline{} : to;
  layout.outline = isWhole ? std::optional<Outline>(to) : std::nullopt;
  changeLayout(layout, what, gesture);
  if (!isWhole) m_canvas->showCorners(to.corners);
}

void LayoutEditor::pick(std::size_t position) {
  const auto all = positions(m_pattern.layout);
  if (!all) return;
  Pattern pattern = m_pattern;
  pattern.byHand.push_back((*all)[position].label);
  change(pattern, tr("order"));
}

void LayoutEditor::startEmpty() {
  Pattern pattern;
  pattern.layout = Layout{FreePoints{}, m_pattern.layout.unit};
  pattern.rule = OrderRule::Balanced;
  pattern.passes = m_pattern.passes;
  change(pattern, tr("start empty"));
  setMode(static_cast<int>(LayoutCanvas::Mode::Positions));
}

void LayoutEditor::say(const QString& sentence, bool trouble) {
  m_said->setForegroundRole(trouble ? QPalette::BrightText : QPalette::PlaceholderText);
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

void LayoutEditor::chooseFile(bool toSave) {
  const QString kind = tr("Layouts (*.json)");
  const QString path = toSave ? QFileDialog::getSaveFileName(this, tr("Save layout"), {}, kind)
                              : QFileDialog::getOpenFileName(this, tr("Open layout"), {}, kind);
  if (path.isEmpty()) return;
  const auto done = toSave ? saveFile(path) : openFile(path);
  say(done ? (toSave ? tr("Saved as %1.") : tr("Opened %1.")).arg(path) : wordedWithPlace(done.error()),
      !done);
}

Result<void> LayoutEditor::openFile(const QString& path) {
  CW_TRY(bytes, readFile(fromQt(path)));
  CW_TRY(layout, readLayoutFile(bytes));
  changeLayout(layout, tr("open a layout"));
  m_canvas->showAll();
  return {};
}

Result<void> LayoutEditor::saveFile(const QString& path) {
  CW_CHECK(positions(m_pattern.layout));
  return writeFile(fromQt(path), writeLayoutFile(m_pattern.layout), Existing::Replaced);
}

}  // namespace cw
