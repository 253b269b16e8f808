#include "app/common/tab_order.h"

#include <QFocusEvent>
#include <QPointer>
#include <QWidget>
#include <vector>

namespace cw {
namespace {

/// In the order of the keyboard, the part itself first.
std::vector<QWidget*> tabbedIn(QWidget& part) {
  std::vector<QWidget*> out;
  const auto take = [&](QWidget* widget) {
    const bool within = widget == &part || part.isAncestorOf(widget);
    if (within && (widget->focusPolicy() & Qt::TabFocus) && widget->focusProxy() == nullptr)
      out.push_back(widget);
  };
  take(&part);
  for (QWidget* next = part.nextInFocusChain(); next != &part; next = next->nextInFocusChain()) take(next);
  return out;
}

/// Hears that its parent was given the keyboard.
class FocusEntry final : public QObject {
 public:
  explicit FocusEntry(QWidget& whole) : QObject(&whole) { whole.installEventFilter(this); }
  static FocusEntry& of(QWidget& whole) {
    for (QObject* child : whole.children())
      if (auto* entry = dynamic_cast<FocusEntry*>(child)) return *entry;
    return *new FocusEntry(whole);
  }
  void lead(QWidget& part) { m_part = &part; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override {
    if (event->type() == QEvent::FocusIn && m_part != nullptr)
      m_part->setFocus(static_cast<QFocusEvent*>(event)->reason());
    return QObject::eventFilter(watched, event);
  }

 private:
  QPointer<QWidget> m_part;
};

}  // namespace

void passFocusOn(QWidget& whole, QWidget& part) {
  FocusEntry::of(whole).lead(part);
  if (whole.hasFocus()) part.setFocus();
}

void orderTabs(std::initializer_list<QWidget*> parts) {
  QWidget* before = nullptr;
  for (QWidget* part : parts)
    for (QWidget* next : tabbedIn(*part)) {
      if (before != nullptr) QWidget::setTabOrder(before, next);
      before = next;
    }
}

}  // namespace cw
