#include "app/figures/figures_place.h"

#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QListWidget>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/settings.h"
#include "app/common/tab_order.h"
#include "app/common/workspace.h"
#include "app/figures/from_specification.h"

namespace cw {
namespace {

constexpr int kListMargin = 16, kRowRoom = 8, kListShare = 5;

}  // namespace

FiguresPlace::FiguresPlace(Workspace& workspace, Navigator& navigator, QWidget* parent)
    : QWidget(parent), m_desk(workspace), m_list(new QListWidget), m_pages(new QStackedWidget) {
  auto* across = new QHBoxLayout(this);
  across->setContentsMargins(0, 0, 0, 0);
  across->setSpacing(0);
  across->addWidget(makeList());
  across->addWidget(m_pages, 1);
  connect(&m_desk, &FigureDesk::figureWanted, this, [this](const QString& key) {
    show(key);
    m_pages->currentWidget()->setFocus(Qt::OtherFocusReason);
  });
  connect(&navigator, &Navigator::figuresWanted, this,
          [this](const Specification& specification, const Fastener& fastener) {
            m_desk.carry(QStringLiteral("guard"), inputsFrom(specification, fastener));
          });
  addStepKey(QKeySequence(Qt::CTRL | Qt::Key_PageDown), 1);
  addStepKey(QKeySequence(Qt::CTRL | Qt::Key_PageUp), -1);
  connect(m_list, &QListWidget::currentRowChanged, this, &FiguresPlace::showRow);
  connect(&workspace, &Workspace::shopChanged, this, &FiguresPlace::makeAnew);
  connect(&workspace, &Workspace::libraryChanged, this, &FiguresPlace::makeAnew);
  show(Settings().figure());
}

/// The pages ask the desk as long as they live.
FiguresPlace::~FiguresPlace() {
  delete m_pages;
}

QWidget* FiguresPlace::makeList() {
  m_list->setObjectName(QStringLiteral("figureList"));
  m_list->setAccessibleName(tr("Computations"));
  m_list->setToolTip(tr("Ctrl+Page down and Ctrl+Page up go from one to the next"));
  m_list->setFrameShape(QFrame::NoFrame);
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_list->setWordWrap(true);
  for (const Figure& figure : figures()) {
    auto* item = new QListWidgetItem(QCoreApplication::translate("figures", figure.title));
    item->setData(Qt::UserRole, figure.key);
    m_list->addItem(item);
  }
  auto* side = new QWidget;
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins(kListMargin, kListMargin, 0, kListMargin);
  down->addWidget(m_list);
  fitList();
  return side;
}

/// Rows that a finger hits, and as wide as the words need; large ones stand in two lines.
void FiguresPlace::fitList() {
  const QFontMetrics metrics = m_list->fontMetrics();
  const int most = width() / kListShare;
  int widest = 0;
  for (int row = 0; row < m_list->count(); ++row)
    widest = std::max(widest, metrics.horizontalAdvance(m_list->item(row)->text()));
  const int room = std::min(widest, most - 4 * kRowRoom);
  for (int row = 0; row < m_list->count(); ++row) {
    QListWidgetItem* item = m_list->item(row);
    const QRect words = metrics.boundingRect(QRect(0, 0, room, 1000), Qt::TextWordWrap, item->text());
    item->setSizeHint({0, words.height() + 2 * kRowRoom});
  }
  m_list->setFixedWidth(room + 4 * kRowRoom);
}

void FiguresPlace::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fitList();
}

void FiguresPlace::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitList();
}

void FiguresPlace::addStepKey(const QKeySequence& key, int step) {
  auto* shortcut = new QShortcut(key, this);
  shortcut->setContext(Qt::WidgetWithChildrenShortcut);
  connect(shortcut, &QShortcut::activated, this, [this, step] {
    m_list->setCurrentRow(qBound(0, m_list->currentRow() + step, m_list->count() - 1));
    m_pages->currentWidget()->setFocus(Qt::TabFocusReason);
  });
}

/// The first one if there is none of that name.
void FiguresPlace::show(const QString& key) {
  int row = 0;
  for (int i = 0; i < m_list->count(); ++i)
    if (m_list->item(i)->data(Qt::UserRole).toString() == key) row = i;
  m_list->setCurrentRow(row);
}

QString FiguresPlace::shown() const {
  return m_list->currentItem()->data(Qt::UserRole).toString();
}

void FiguresPlace::showRow(int row) {
  if (row < 0) return;
  const Figure& figure = figures()[static_cast<std::size_t>(row)];
  QWidget* page = pageOf(figure);
  m_pages->setCurrentWidget(page);
  passFocusOn(*this, *page);
  Settings().setFigure(figure.key);
}

QWidget* FiguresPlace::pageOf(const Figure& figure) {
  QWidget*& page = m_made[figure.key];
  if (page == nullptr) {
    page = figure.make(m_desk, m_pages);
    m_pages->addWidget(page);
  }
  return page;
}

/// What names can be chosen has changed; what was understood stays with the desk.
void FiguresPlace::makeAnew() {
  for (const auto& [key, page] : m_made) delete page;
  m_made.clear();
  showRow(m_list->currentRow());
}

QWidget* makeFiguresPlace(Workspace& workspace, Navigator& navigator, QWidget* parent) {
  return new FiguresPlace(workspace, navigator, parent);
}

}  // namespace cw
