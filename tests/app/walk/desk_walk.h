#pragma once
#include <set>

#include "tests/app/walk/walk.h"

class QTableView;
class QWidget;

namespace cw {

/// Takes the places of the desk through their rows, their pages, what their actions ask, and what they
/// refuse.
class DeskWalk {
 public:
  explicit DeskWalk(Walk& walk) : m_walk(walk) {}

  void everythingIn(const QString& key);
  /// Every computation with a result and its working, and with an input that it refuses.
  void everyFigure();
  void settings();

 private:
  void rowsOf(const QString& key, QTableView& list);
  void press(const QString& key, const QString& action);
  void type(const QString& field, const QString& text) const;
  QWidget& place(const QString& key) const { return *m_walk.window().placeWidget(key); }

  Walk& m_walk;
  std::set<QString> m_pressed;
};

}  // namespace cw
