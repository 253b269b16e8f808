#include "app/shell/main_window.h"

#include <QApplication>
#include <QButtonGroup>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/common/settings.h"
#include "app/look/colours.h"
#include "app/look/measures.h"
#include "app/look/style.h"
#include "app/shell/places.h"

namespace cw {
namespace {

constexpr Qt::Key kFiguresKey = Qt::Key_F8;
constexpr double kTextStep = 0.25, kLargestText = 2;
const QString kFigures = QStringLiteral("figures");

}  // namespace

MainWindow::MainWindow(Workspace& workspace) : m_workspace(workspace) {
  setWindowTitle(tr("Clampwright"));
  setMinimumSize(1024, 600);
  resize(1280, 800);
  auto* body = new QWidget;
  auto* across = new QHBoxLayout(body);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(0);
  across->addWidget(makeRail());
  auto* edge = new QFrame;
  edge->setFrameStyle(int(QFrame::VLine) | int(QFrame::Plain));
  edge->setForegroundRole(QPalette::Mid);
  across->addWidget(edge);
  m_stack = new QStackedWidget;
  across->addWidget(m_stack, 1);
  setCentralWidget(body);
  const auto larger = new QShortcut(QKeySequence(Qt::Key_F7), this);
  connect(larger, &QShortcut::activated, this, &MainWindow::makeTextLarger);
  connectNavigator();
  connect(&m_workspace, &Workspace::shopChanged, this, &MainWindow::showPlacesOrShopPage);
  showPlacesOrShopPage();
}

ShopPage* MainWindow::shopPage() {
  if (m_shopPage != nullptr) return m_shopPage;
  m_shopPage = new ShopPage(m_workspace);
  addTextSize();
  m_stack->addWidget(m_shopPage);
  return m_shopPage;
}

void MainWindow::showShopPage() {
  m_stack->setCurrentWidget(shopPage());
  // Nowhere of the places, then: one of them stays checked only while it is shown.
  m_rail->setExclusive(false);
  for (const auto& [key, button] : m_buttons) button->setChecked(false);
  m_rail->setExclusive(true);
  m_shopButton->setChecked(true);
  m_shopPage->setFocus(Qt::OtherFocusReason);
}

void MainWindow::showPlacesOrShopPage() {
  if (!m_workspace.hasShop()) return showShopPage();
  const QString last = Settings().place();
  const bool known = m_buttons.contains(last);
  if (!places().empty()) show(known && last != QLatin1String("bench") ? last : places().front().key);
}

QWidget* MainWindow::makeRail() {
  auto* rail = new QWidget;
  rail->setObjectName(QStringLiteral("rail"));
  auto* down = new QVBoxLayout(rail);
  down->setContentsMargins(8, 8, 8, 8);
  down->setSpacing(static_cast<int>(pixels(bench::kGap, this)));
  m_rail = new QButtonGroup(rail);
  int number = 0;
  for (const Place& place : places()) {
    QAbstractButton* button = makeRailButton(place, ++number);
    m_rail->addButton(button);
    down->addWidget(button);
  }
  down->addStretch(1);
  down->addWidget(makeLookButtons());
  return rail;
}

QAbstractButton* MainWindow::makeRailButton(const Place& place, int number) {
  auto* button = new QPushButton(QCoreApplication::translate("places", place.title));
  button->setObjectName(place.key + QLatin1String("RailButton"));
  button->setCheckable(true);
  button->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  button->setAutoExclusive(true);
  const QKeySequence key(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_0 + number));
  button->setToolTip(tr("%1 (%2)").arg(button->text(), key.toString(QKeySequence::NativeText)));
  auto* shortcut = new QShortcut(key, this);
  const auto go = [this, placeKey = place.key] { show(placeKey); };
  connect(shortcut, &QShortcut::activated, this, go);
  connect(button, &QPushButton::clicked, this, go);
  m_buttons[place.key] = button;
  return button;
}

QWidget* MainWindow::makeLookButtons() {
  auto* box = new QWidget;
  auto* down = new QVBoxLayout(box);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(static_cast<int>(pixels(bench::kGap, this)));
  m_shopButton = addLookButton(*down, tr("Settings"), "shopButton");
  m_shopButton->setCheckable(true);
  m_shopButton->setToolTip(tr("Shop file, size of text"));
  connect(m_shopButton, &QPushButton::clicked, this, &MainWindow::showShopPage);
  QPushButton* scheme = addLookButton(*down, tr("Light / dark"), "schemeButton");
  scheme->setShortcut(QKeySequence(Qt::Key_F9));
  scheme->setToolTip(tr("Change between light and dark (F9)"));
  connect(scheme, &QPushButton::clicked, this, [] {
    Settings settings;
    settings.setScheme(settings.scheme() == Scheme::Light ? Scheme::Dark : Scheme::Light);
    applyLook();
  });
  return box;
}

QPushButton* MainWindow::addLookButton(QLayout& to, const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(QLatin1String(name));
  button->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  to.addWidget(button);
  return button;
}

void MainWindow::addTextSize() {
  m_textSize = new QPushButton;
  m_textSize->setObjectName(QStringLiteral("textSizeButton"));
  connect(m_textSize, &QPushButton::clicked, this, &MainWindow::makeTextLarger);
  m_shopPage->addSetting(
      tr("Size of text"), m_textSize,
      tr("F7 makes it larger from anywhere, up to twice as large, then begins anew. Text at "
         "the bench is twice as large from the start; it grows as far as the window has room."));
  showTextScale();
}

void MainWindow::makeTextLarger() {
  const double wanted = Settings().textScale() + kTextStep;
  setTextScale(wanted > kLargestText ? 1 : wanted);
}

void MainWindow::showTextScale() {
  if (m_textSize != nullptr) m_textSize->setText(tr("Text %1 %").arg(qRound(Settings().textScale() * 100)));
}

void MainWindow::setTextScale(double scale) {
  const double before = Settings().textScale();
  Settings().setTextScale(scale);
  const double now = Settings().textScale();
  if (m_shopPage != nullptr) rescaleText(*m_shopPage, before, now);
  for (const auto& [key, place] : m_places)
    if (key != QLatin1String("bench")) rescaleText(*place, before, now);
  applyLook();
  showTextScale();
}

void MainWindow::connectNavigator() {
  connect(&m_navigator, &Navigator::placeWanted, this, [this](const QString& key) { show(key); });
  auto* figures = new QShortcut(QKeySequence(kFiguresKey), this);
  connect(figures, &QShortcut::activated, this, &MainWindow::openOrLeaveFigures);
  const QString key = figures->key().toString(QKeySequence::NativeText);
  m_buttons[kFigures]->setToolTip(
      tr("%1; %2 opens it from anywhere and goes back").arg(m_buttons[kFigures]->toolTip(), key));
}

/// One key, there and back.
void MainWindow::openOrLeaveFigures() {
  const QString here = m_shown, before = m_before;
  if (here != kFigures) return m_navigator.openFiguresFrom(here);
  if (!before.isEmpty()) show(before);
}

void MainWindow::show(const QString& placeKey) {
  for (const Place& place : places()) {
    if (place.key != placeKey) continue;
    QWidget*& widget = m_places[placeKey];
    if (widget == nullptr) {
      widget = place.make(m_workspace, m_navigator, m_stack);
      m_stack->addWidget(widget);
    }
    m_stack->setCurrentWidget(widget);
    m_buttons[placeKey]->setChecked(true);
    m_shopButton->setChecked(false);
    if (m_shown != placeKey) m_before = m_shown;
    m_shown = placeKey;
    Settings().setPlace(placeKey);
    widget->setFocus(Qt::OtherFocusReason);
  }
}

QWidget* MainWindow::placeWidget(const QString& placeKey) const {
  const auto found = m_places.find(placeKey);
  return found == m_places.end() ? nullptr : found->second;
}

void MainWindow::applyLook() {
  if (qobject_cast<WorkshopStyle*>(QApplication::style()) == nullptr)
    QApplication::setStyle(new WorkshopStyle);
  QApplication::setPalette(paletteOf(Settings().scheme()));
  QApplication::setFont(deskFont());
}

}  // namespace cw
