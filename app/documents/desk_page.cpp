#include "app/documents/desk_page.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QStackedLayout>
#include <QTableView>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/documents/column_fit.h"
#include "app/documents/document_view.h"
#include "app/fields/sign_form.h"
#include "app/look/flow_layout.h"
#include "app/look/labels.h"
#include "app/look/measures.h"

namespace cw {
namespace {

constexpr int kMargin = 24, kGap = 8, kLinesPerRow = 2, kLeastSide = 320, kHintRoom = 60;

QVBoxLayout* columnIn(QWidget* side, const QMargins& margins) {
  auto* down = new QVBoxLayout(side);
  down->setContentsMargins(margins);
  down->setSpacing(kGap);
  side->setMinimumWidth(kLeastSide);
  return down;
}

}  // namespace

DeskPage::DeskPage(Workspace& workspace, QAbstractItemModel& rows, const Words& words, QWidget* parent)
    : QWidget(parent),
      m_search(new QLineEdit),
      m_list(new QTableView),
      m_count(textLabel({}, deskFont(), QPalette::PlaceholderText)),
      m_said(textLabel({}, deskFont(0, QFont::Bold))),
      m_nothing(textLabel(words.whenNothing, deskFont(1))),
      m_form(new SignForm(workspace)),
      m_thing(new DocumentView) {
  setUpList(rows, words.list);
  m_thing->setObjectName(QStringLiteral("deskDocument"));
  auto* sides = new QSplitter;
  sides->setChildrenCollapsible(false);
  sides->addWidget(makeListSide(words));
  sides->addWidget(makeThingSide());
  sides->setStretchFactor(0, 2);
  sides->setStretchFactor(1, 3);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(sides);
  auto* find = new QShortcut(QKeySequence::Find, this);
  connect(find, &QShortcut::activated, this, [this] {
    m_search->setFocus(Qt::ShortcutFocusReason);
    m_search->selectAll();
  });
  passFocusOn(*this, *m_list);
}

void DeskPage::setUpList(QAbstractItemModel& rows, const QString& name) {
  m_sorted.setSourceModel(&rows);
  m_sorted.setSortRole(Qt::UserRole);
  m_sorted.setFilterKeyColumn(-1);
  m_sorted.setFilterCaseSensitivity(Qt::CaseInsensitive);
  m_list->setModel(&m_sorted);
  m_list->setAccessibleName(name);
  m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_list->setSelectionMode(QAbstractItemView::SingleSelection);
  m_list->setShowGrid(false);
  m_list->setTabKeyNavigation(false);
  m_list->setFrameShape(QFrame::NoFrame);
  m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  m_list->setSortingEnabled(true);
  m_list->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  m_list->horizontalHeader()->setHighlightSections(false);
  m_list->verticalHeader()->hide();
  m_list->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  m_list->setObjectName(QStringLiteral("deskList"));
  new ColumnFit(*m_list);
  fitRows();
  connect(m_list->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          [this] { emit chosen(chosenRow()); });
}

QWidget* DeskPage::makeListSide(const Words& words) {
  auto* side = new QWidget;
  auto* down = columnIn(side, {kMargin, kMargin, kGap, kMargin});
  m_filters = new QWidget;
  m_below = new QWidget;
  m_search->setAccessibleName(words.searchHint);
  m_search->setObjectName(QStringLiteral("deskSearch"));
  m_search->setClearButtonEnabled(true);
  m_search->installEventFilter(this);
  m_count->setObjectName(QStringLiteral("deskCount"));
  m_besideSearch = new FlowLayout(kGap);
  m_belowList = new FlowLayout(kGap);
  m_filters->setLayout(m_besideSearch);
  m_below->setLayout(m_belowList);
  for (QWidget* row : {m_filters, m_below}) row->hide();
  down->addWidget(m_search);
  down->addWidget(m_filters);
  down->addWidget(m_count);
  down->addWidget(m_list, 1);
  down->addWidget(m_below);
  return side;
}

QWidget* DeskPage::makeThingSide() {
  auto* side = new QWidget;
  auto* down = columnIn(side, {kGap, kMargin, kMargin, kMargin});
  m_actions = new QWidget;
  m_actionRow = new FlowLayout(kGap);
  m_actions->setLayout(m_actionRow);
  m_said->setObjectName(QStringLiteral("deskSaid"));
  m_said->hide();
  m_nothing->setObjectName(QStringLiteral("deskNothing"));
  m_nothing->setAlignment(Qt::AlignTop);
  m_nothing->setMargin(kMargin);
  down->addWidget(m_actions);
  down->addWidget(m_said);
  down->addWidget(m_form);
  m_stack = new QStackedLayout;
  m_stack->addWidget(m_nothing);
  m_stack->addWidget(m_thing);
  for (QWidget* page : {static_cast<QWidget*>(m_nothing), static_cast<QWidget*>(m_thing)})
    page->setMinimumHeight(kGap);  // while a form asks, its words come first
  down->addLayout(m_stack, 1);
  m_actions->hide();
  return side;
}

void DeskPage::addBesideSearch(QWidget* widget) {
  m_besideSearch->addWidget(widget);
  m_filters->show();
}

void DeskPage::addBelowList(QWidget* widget) {
  m_belowList->addWidget(widget);
  m_below->show();
}

void DeskPage::addAction(QWidget* widget) {
  m_actionRow->addWidget(widget);
}

QPushButton* DeskPage::addAction(const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(QLatin1String(name));
  addAction(button);
  return button;
}

void DeskPage::filter(const QString& text) {
  m_sorted.setFilterFixedString(text);
  if (chosenRow() < 0) choose(-1);
}

void DeskPage::count(const QString& text) {
  m_count->setText(text);
}

void DeskPage::choose(int row) {
  const QModelIndex wanted =
      row < 0 ? QModelIndex() : m_sorted.mapFromSource(m_sorted.sourceModel()->index(row, 0));
  const QModelIndex index = wanted.isValid() ? wanted : m_sorted.index(0, 0);
  if (index.isValid())
    m_list->selectRow(index.row());
  else
    emit chosen(-1);
}

int DeskPage::chosenRow() const {
  const QModelIndex index = m_list->currentIndex();
  return index.isValid() ? m_sorted.mapToSource(index).row() : -1;
}

void DeskPage::present(Document document) {
  m_thing->present(std::move(document));
  m_stack->setCurrentWidget(m_thing);
  m_actions->show();
}

void DeskPage::presentForm(QWidget* form) {
  if (m_stack->indexOf(form) < 0) m_stack->addWidget(form);
  m_stack->setCurrentWidget(form);
  m_actions->hide();
}

void DeskPage::presentNothing(const QString& text) {
  m_nothing->setText(text);
  m_stack->setCurrentWidget(m_nothing);
  m_actions->hide();
  m_form->close();
  m_said->hide();
}

void DeskPage::say(const QString& sentence) {
  say(sentence, QPalette::WindowText);
}

void DeskPage::sayTrouble(const QString& sentence) {
  say(sentence, QPalette::BrightText);
}

void DeskPage::say(const QString& sentence, QPalette::ColorRole ink) {
  m_said->setForegroundRole(ink);
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

/// The whole hint where it fits, its first word where it does not.
void DeskPage::fitHint() {
  const QString whole = m_search->accessibleName();
  const bool fits = m_search->fontMetrics().horizontalAdvance(whole) + kHintRoom < m_search->width();
  m_search->setPlaceholderText(fits ? whole : whole.section(QLatin1Char(' '), 0, 0));
}

bool DeskPage::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) fitHint();
  if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
  const int key = static_cast<QKeyEvent*>(event)->key();
  const bool toList = key == Qt::Key_Down || key == Qt::Key_Return || key == Qt::Key_Enter;
  if (toList) m_list->setFocus(Qt::TabFocusReason);
  return toList || QWidget::eventFilter(watched, event);
}

/// What is added to a row of them is made after the list and the document.
void DeskPage::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  orderTabs({m_search, m_filters, m_list, m_below, m_actions, m_form, m_thing});
}

void DeskPage::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) fitRows();
}

void DeskPage::fitRows() {
  m_list->verticalHeader()->setMinimumSectionSize(fontMetrics().lineSpacing() * kLinesPerRow + 2 * kGap);
}

}  // namespace cw
