#include "tests/app/walk/desk_walk.h"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <algorithm>

#include "app/fields/input_field.h"
#include "app/figures/figures_place.h"
#include "tests/app/figure_looks.h"

namespace cw {
namespace {

constexpr int kMostRows = 4;

template <class Widget>
Widget* shownIn(const QWidget& place, const QString& name) {
  for (Widget* widget : place.findChildren<Widget*>(name))
    if (widget->isVisible()) return widget;
  return nullptr;
}

}  // namespace

void DeskWalk::type(const QString& field, const QString& text) const {
  auto* line = shownIn<QLineEdit>(place(QStringLiteral("figures")), field + QStringLiteral("Field"));
  if (line == nullptr) return;
  line->selectAll();
  text.isEmpty() ? line->del() : line->insert(text);
}

void DeskWalk::everythingIn(const QString& key) {
  m_walk.window().show(key);
  m_walk.look(key, QStringLiteral("shown"));
  for (QTableView* list : place(key).findChildren<QTableView*>())
    if (list->isVisible()) rowsOf(key, *list);
  for (QListWidget* list : place(key).findChildren<QListWidget*>())
    for (int row = 0; list->isVisible() && row < list->count(); ++row) {
      list->setCurrentRow(row);
      if (row > 0) m_walk.look(key, QStringLiteral("page %1").arg(row + 1));
    }
  if (auto* search = place(key).findChild<QLineEdit*>(QStringLiteral("deskSearch"))) {
    search->setText(QStringLiteral("nothing is called so"));
    m_walk.look(key, QStringLiteral("nothing fits"));
    search->clear();
  }
}

void DeskWalk::rowsOf(const QString& key, QTableView& list) {
  for (int row = 0; row < std::min(list.model()->rowCount(), kMostRows); ++row) {
    list.selectRow(row);
    if (row > 0) m_walk.look(key, QStringLiteral("row %1").arg(row + 1));
    for (const char* action :
         {"submitButton", "issueButton", "withdrawButton", "dropButton", "quarantineButton", "addendumButton",
          "verifyButton", "copyRowButton", "addRowButton"})
      press(key, QLatin1String(action));
  }
}

/// What an action asks is looked at once, and left again.
void DeskWalk::press(const QString& key, const QString& action) {
  auto* button = shownIn<QPushButton>(place(key), action);
  if (button == nullptr || !button->isEnabled() || !m_pressed.insert(key + action).second) return;
  button->click();
  m_walk.look(key, action);
  for (const char* leaving : {"leaveButton", "rowLeaveButton"})
    if (auto* leave = shownIn<QPushButton>(place(key), QLatin1String(leaving))) leave->click();
}

void DeskWalk::everyFigure() {
  const QString key = QStringLiteral("figures");
  m_walk.window().show(key);
  auto& figures = dynamic_cast<FiguresPlace&>(place(key));
  for (const FigureLook& look : figureLooks()) {
    figures.show(QLatin1String(look.figure));
    for (const auto* field : figures.findChildren<InputField*>())
      if (field->isVisible()) type(field->name(), QString());
    for (const auto& [input, text] : look.inputs) type(QLatin1String(input), QString::fromUtf8(text));
    settle();
    if (auto* working = shownIn<QPushButton>(figures, QStringLiteral("workingButton"));
        working != nullptr && !working->isChecked())
      working->click();
    m_walk.look(key, QLatin1String(look.figure) + QStringLiteral(", its working"));
    type(QLatin1String(look.refused.first), QString::fromUtf8(look.refused.second));
    m_walk.look(key, QLatin1String(look.figure) + QStringLiteral(", refused"));
  }
}

void DeskWalk::settings() {
  m_walk.window().findChild<QPushButton*>(QStringLiteral("shopButton"))->click();
  m_walk.look(QStringLiteral("settings"), QStringLiteral("shop open"));
}

}  // namespace cw
