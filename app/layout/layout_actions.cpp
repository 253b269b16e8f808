#include "app/layout/layout_actions.h"

#include <QButtonGroup>
#include <QPushButton>
#include <QUndoStack>

#include "app/look/flow_layout.h"

namespace cw {
namespace {

constexpr int kActionGap = 8;

}  // namespace

LayoutActions::LayoutActions(QUndoStack& history, QWidget* parent)
    : QWidget(parent), m_modes(new QButtonGroup(this)) {
  setLayout(new FlowLayout(kActionGap));
  addModes();
  addHistory(history);
  connect(add(tr("Start empty"), "startEmptyButton"), &QPushButton::clicked, this,
          &LayoutActions::emptyWanted);
  connect(add(tr("Show all"), "showAllButton"), &QPushButton::clicked, this, &LayoutActions::wholeWanted);
  connect(add(tr("Open …"), "openLayoutButton"), &QPushButton::clicked, this, &LayoutActions::openWanted);
  connect(add(tr("Save …"), "saveLayoutButton"), &QPushButton::clicked, this, &LayoutActions::saveWanted);
}

QPushButton* LayoutActions::add(const QString& text, const char* name) {
  auto* button = new QPushButton(text);
  button->setObjectName(QLatin1String(name));
  layout()->addWidget(button);
  return button;
}

void LayoutActions::addModes() {
  const std::pair<QString, const char*> modes[] = {
      {tr("Positions"), "positionsMode"}, {tr("Outline"), "outlineMode"}, {tr("Order"), "orderMode"}};
  for (const auto& [text, name] : modes) {
    QPushButton* button = add(text, name);
    button->setCheckable(true);
    m_modes->addButton(button, static_cast<int>(m_modes->buttons().size()));
  }
  showMode(0);
  connect(m_modes, &QButtonGroup::idClicked, this, &LayoutActions::modeChosen);
}

void LayoutActions::addHistory(QUndoStack& history) {
  QPushButton* undo = add(tr("Undo"), "undoButton");
  QPushButton* redo = add(tr("Redo"), "redoButton");
  undo->setShortcut(QKeySequence::Undo);
  redo->setShortcut(QKeySequence::Redo);
  undo->setEnabled(false);
  redo->setEnabled(false);
  connect(undo, &QPushButton::clicked, &history, &QUndoStack::undo);
  connect(redo, &QPushButton::clicked, &history, &QUndoStack::redo);
  connect(&history, &QUndoStack::canUndoChanged, undo, &QWidget::setEnabled);
  connect(&history, &QUndoStack::canRedoChanged, redo, &QWidget::setEnabled);
}

void LayoutActions::showMode(int mode) {
  m_modes->button(mode)->setChecked(true);
}

}  // namespace cw
