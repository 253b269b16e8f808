#pragma once
#include <QMainWindow>
#include <map>

#include "app/common/navigator.h"
#include "app/common/place.h"
#include "app/common/workspace.h"
#include "app/shell/shop_page.h"

class QAbstractButton;
class QButtonGroup;
class QLayout;
class QPushButton;
class QStackedWidget;

namespace cw {

/// The window: a slim rail of places, one place beside it. A place is made when it is first shown, so that
/// the window is there at once.
class MainWindow final : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(Workspace& workspace);

  void show(const QString& placeKey);
  ShopPage* shopPage();
  QString shownPlace() const { return m_shown; }
  QWidget* placeWidget(const QString& placeKey) const;

  /// Applies scheme and text scale of the settings to the whole application.
  static void applyLook();
  /// Desk text at that scale, here and now; bench text as far as there is room.
  void setTextScale(double scale);

 private:
  QWidget* makeRail();
  QAbstractButton* makeRailButton(const Place& place, int number);
  QWidget* makeLookButtons();
  QPushButton* addLookButton(QLayout& to, const QString& text, const char* name);
  void addTextSize();
  void makeTextLarger();
  void showTextScale();
  void connectNavigator();
  void showShopPage();
  void showPlacesOrShopPage();
  void openOrLeaveFigures();

  Workspace& m_workspace;
  Navigator m_navigator;
  QStackedWidget* m_stack = nullptr;
  QPushButton* m_textSize = nullptr;
  ShopPage* m_shopPage = nullptr;  ///< made when it is first shown, as are places
  std::map<QString, QWidget*> m_places;
  std::map<QString, QAbstractButton*> m_buttons;
  QButtonGroup* m_rail;  ///< one of them is where we are
  QPushButton* m_shopButton;
  QString m_shown, m_before;  ///< key of the place in front, and of the one before it
};

}  // namespace cw
