#include "tests/app/walk/desk_walk.h"

#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <algorithm>

#include "app/common/input_field.h"
#include "app/figures/figures_place.h"

namespace cw {
namespace {

constexpr int kMostRows = 4;

struct FigureLook {
  const char* figure;
  std::vector<std::pair<const char*, const char*>> inputs;
  std::pair<const char*, const char*> refused;  ///< the input that spoils it
};

const std::vector<FigureLook>& figureLooks() {
  static const std::vector<FigureLook> kLooks{
      {"convert",
       {{"torque", "60 in-lb"}, {"thread", "1/4-20 UNC"}, {"grade", "SAE 5"}},
       {"torque", "60 lb"}},
      {"guard",
       {{"torque", "30 ft-lb"},
        {"second", "41 Nm"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "dry"},
        {"material", "grey iron"},
        {"engagement", "12 mm"}},
       {"grade", "SAE 5"}},
      {"condition",
       {{"torque", "30 Nm"},
        {"condition", "clean dry"},
        {"inUse", "oil"},
        {"thread", "M8"},
        {"grade", "8.8"}},
       {"inUse", "dry"}},
      {"setting",
       {{"aim", "22.5 Nm"},
        {"graduation", "1 ft-lb"},
        {"length", "10 in"},
        {"offset", "3 in"},
        {"deviation", "4 %"},
        {"thread", "M8"},
        {"grade", "8.8"}},
       {"graduation", "10 ft-lb"}},
      {"applied",
       {{"setting", "17 ft-lb"}, {"length", "10 in"}, {"offset", "3 in"}, {"angle", "45"}},
       {"angle", "200"}},
      {"clamp",
       {{"torque", "25 Nm"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "oiled"},
        {"face", "hex"},
        {"deviation", "4 %"}},
       {"torque", "4000 Nm"}},
      {"torque",
       {{"load", "75 % of proof"},
        {"thread", "M8"},
        {"grade", "8.8"},
        {"condition", "µ 0.12 / 0.10"},
        {"deviation", "4 %"}},
       {"load", "75 %"}},
      {"stripping",
       {{"thread", "M6"}, {"grade", "8.8"}, {"material", "cast aluminium 319-F"}, {"engagement", "6 mm"}},
       {"engagement", "0 mm"}},
      {"angle",
       {{"thread", "M12"},
        {"angleLoad", "40 kN"},
        {"snug", "5 kN"},
        {"plain", "30 mm"},
        {"threaded", "15 mm"},
        {"members", "steel"}},
       {"angleLoad", "3 kN"}},
  };
  return kLooks;
}

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
