#include "app/figures/order_page.h"

#include "app/layout/layout_editor.h"

namespace cw {

QWidget* makeOrderPage(FigureDesk&, QWidget* parent) {
  return new LayoutEditor(parent);
}

}  // namespace cw
