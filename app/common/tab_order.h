#pragma once
#include <initializer_list>

class QWidget;

namespace cw {

/// Tab goes through what is in the first of these, then what is in the next, each in the order that it has
/// within. Qt's own order is that of making, which is not always that of standing.
void orderTabs(std::initializer_list<QWidget*> parts);

/// The keyboard, given to `whole`, goes on to `part`. Unlike a focus proxy this makes no stop for Tab of
/// `whole`: where Qt comes upon one after what is in it, Tab goes round in there for ever.
void passFocusOn(QWidget& whole, QWidget& part);

}  // namespace cw
