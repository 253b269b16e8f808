#include "tests/app/walk/control_checks.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QScrollBar>
#include <QTest>
#include <algorithm>
#include <set>

#include "app/look/colours.h"
#include "app/look/style.h"
#include "tests/app/walk/bounds.h"
#include "tests/app/walk/colour_count.h"

namespace cw {
namespace {

QRectF rectOf(const QWidget* widget) {
  return QRectF(QPointF(widget->mapTo(widget->window(), QPoint())), QSizeF(widget->size()));
}

bool isPartOfAnother(const QWidget* widget) {
  const QWidget* parent = widget->parentWidget();
  return qobject_cast<const QComboBox*>(parent) != nullptr ||
         qobject_cast<const QLineEdit*>(parent) != nullptr ||
         qobject_cast<const QAbstractSpinBox*>(parent) != nullptr ||
         (parent != nullptr && parent->inherits("QTableView"));
}

bool isTouched(const QWidget* widget) {
  return qobject_cast<const QAbstractButton*>(widget) != nullptr ||
         qobject_cast<const QLineEdit*>(widget) != nullptr ||
         qobject_cast<const QComboBox*>(widget) != nullptr;
}

/// What is left of a widget after its scrolling parents took their share.
QRectF seenOf(const QWidget* widget) {
  QRectF out = rectOf(widget);
  for (const QWidget* parent = widget->parentWidget(); parent != nullptr; parent = parent->parentWidget())
    out &= rectOf(parent);
  return out;
}

bool isMain(const QWidget* widget) {
  return widget->property(kMainProperty).toBool();
}

void addRows(const QListView& list, std::vector<Target>& out) {
  for (int row = 0; row < list.model()->rowCount(); ++row) {
    const QModelIndex index = list.model()->index(row, 0);
    const QRect rect = list.visualRect(index);
    const QRectF there(QPointF(list.viewport()->mapTo(list.window(), rect.topLeft())), QSizeF(rect.size()));
    if (!seenOf(list.viewport()).contains(there) || !index.flags().testFlag(Qt::ItemIsSelectable)) continue;
    out.push_back({&list, there});
  }
}

double gapBetween(const QRectF& a, const QRectF& b) {
  const double across = std::max(a.left() - b.right(), b.left() - a.right());
  const double down = std::max(a.top() - b.bottom(), b.top() - a.bottom());
  return std::max(across, down);
}

QRgb commonestOn(const QImage& picture, const QRect& ring, int thick) {
  ColourCount count;
  const QRect inner = ring.adjusted(thick, thick, -thick, -thick);
  const QRect outer = ring & picture.rect();
  for (int y = outer.top(); y <= outer.bottom(); ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
    const bool crosses = y >= inner.top() && y <= inner.bottom();
    for (int x = outer.left(); x <= outer.right(); ++x) {
      if (crosses && x == inner.left()) x = inner.right() + 1;
      if (x <= outer.right()) count.see(line[x]);
    }
  }
  return count.commonest().value_or(0);
}

bool takesTab(const QWidget* widget) {
  if (!widget->isVisible() || !widget->isEnabled() || !(widget->focusPolicy() & Qt::TabFocus)) return false;
  if (widget->focusProxy() != nullptr) return false;
  // Of an exclusive group the chosen one takes Tab, the arrows go on from there.
  const auto* button = qobject_cast<const QAbstractButton*>(widget);
  return button == nullptr || !button->isCheckable() || button->isChecked() ||
         !(button->autoExclusive() || (button->group() != nullptr && button->group()->exclusive()));
}

/// Empty if Tab may go from a to b.
QString slipBetween(const QRectF& a, const QRectF& b) {
  const auto shared = [](double lowA, double highA, double lowB, double highB) {
    const double common = std::min(highA, highB) - std::max(lowA, lowB);
    return common / std::min(highA - lowA, highB - lowB);
  };
  const bool sameRow = shared(a.top(), a.bottom(), b.top(), b.bottom()) > 0.5;
  const bool sameColumn = shared(a.left(), a.right(), b.left(), b.right()) > 0.5;
  if (sameColumn && !sameRow && b.bottom() <= a.top() + 1) return QStringLiteral("goes up");
  if (sameRow && b.right() <= a.left() + 1) return QStringLiteral("goes left");
  if (!sameRow && !sameColumn && b.bottom() <= a.top() && b.right() <= a.left())
    return QStringLiteral("goes up and left");
  return {};
}

/// Where a widget stands as seen from another: what scrolls stands where its area does.
QRectF standingOf(const QWidget* widget, const QWidget* from) {
  const QWidget* out = widget;
  for (const QWidget* parent = widget->parentWidget(); parent != nullptr; parent = parent->parentWidget()) {
    if (parent->isAncestorOf(from)) break;
    if (qobject_cast<const QAbstractScrollArea*>(parent) != nullptr) out = parent;
  }
  return rectOf(out);
}

}  // namespace

std::vector<Target> targetsIn(const QWidget& within) {
  std::vector<Target> out;
  for (const QWidget* widget : within.findChildren<QWidget*>()) {
    if (!widget->isVisible() || isPartOfAnother(widget)) continue;
    if (const auto* list = qobject_cast<const QListView*>(widget)) addRows(*list, out);
    if (isTouched(widget) && seenOf(widget) == rectOf(widget)) out.push_back({widget, rectOf(widget)});
  }
  return out;
}

Complaints checkTargets(const QWidget& within, double dots, Worst& measured) {
  Complaints out;
  const auto millimetres = [&](double pixels) { return QString::number(pixels / dots, 'f', 1); };
  const std::vector<Target> targets = targetsIn(within);
  for (const Target& target : targets) {
    const double height = isMain(target.widget) ? bounds::kMainHeight : bounds::kTarget;
    const double width = isMain(target.widget) ? bounds::kMainWidth : bounds::kTarget;
    const double slack = bounds::kSoftness * 2;
    measured.target.see(target.rect.height() / dots);
    if (target.rect.height() / dots < height - slack || target.rect.width() / dots < width - slack)
      out.push_back({QStringLiteral("target"), nameOf(target.widget),
                     QStringLiteral("is %1 × %2 mm, least %3 × %4")
                         .arg(millimetres(target.rect.width()), millimetres(target.rect.height()))
                         .arg(width)
                         .arg(height)});
  }
  for (std::size_t i = 0; i < targets.size(); ++i)
    for (std::size_t j = i + 1; j < targets.size(); ++j)
      if (const double gap = measured.gap.see(gapBetween(targets[i].rect, targets[j].rect) / dots);
          gap < bounds::kGap - bounds::kSoftness * 2)
        out.push_back({QStringLiteral("gap"), nameOf(targets[i].widget),
                       QStringLiteral("is %1 mm from %2, least %3")
                           .arg(QString::number(gap, 'f', 1), nameOf(targets[j].widget))
                           .arg(bounds::kGap)});
  return out;
}

double edgeContrast(const QImage& picture, const QRect& control) {
  const QColor ground(commonestOn(picture, control.adjusted(-4, -4, 4, 4), 3));
  double best = 1;
  for (int inset = 0; inset < 4; ++inset)
    best = std::max(
        best,
        contrast(ground, QColor(commonestOn(picture, control.adjusted(inset, inset, -inset, -inset), 1))));
  return best;
}

Complaints checkControls(const QWidget& within, const QImage& picture, Worst& measured) {
  Complaints out;
  for (const QWidget* widget : within.findChildren<QWidget*>()) {
    const bool outlined = qobject_cast<const QPushButton*>(widget) != nullptr ||
                          qobject_cast<const QLineEdit*>(widget) != nullptr ||
                          qobject_cast<const QComboBox*>(widget) != nullptr;
    if (!outlined || !widget->isVisible() || isPartOfAnother(widget) || seenOf(widget) != rectOf(widget))
      continue;
    if (const double ratio = measured.outline.see(edgeContrast(picture, rectOf(widget).toRect()));
        ratio < bounds::kControlContrast)
      out.push_back(
          {QStringLiteral("outline"), nameOf(widget),
           QStringLiteral("has %1 : 1, least %2").arg(ratio, 0, 'f', 1).arg(bounds::kControlContrast)});
  }
  return out;
}

Complaints checkAcross(const QWidget& within) {
  Complaints out;
  for (const auto* area : within.findChildren<QAbstractScrollArea*>())
    if (area->isVisible() && area->horizontalScrollBar()->maximum() > 0)
      out.push_back(
          {QStringLiteral("across"), nameOf(area),
           QStringLiteral("scrolls sideways by %1 pixels").arg(area->horizontalScrollBar()->maximum())});
  return out;
}

Complaints checkNames(const QWidget& within) {
  Complaints out;
  for (const QWidget* widget : within.findChildren<QWidget*>()) {
    if (!takesTab(widget) || isPartOfAnother(widget)) continue;
    if (widget->accessibleName().isEmpty() && widget->property("text").toString().isEmpty())
      out.push_back({QStringLiteral("name"), nameOf(widget), QStringLiteral("has no accessible name")});
    if (widget->objectName().isEmpty() || widget->objectName().startsWith(QLatin1String("qt_")))
      out.push_back({QStringLiteral("name"), nameOf(widget),
                     QStringLiteral("“%1” has no object name").arg(widget->accessibleName())});
  }
  return out;
}

Complaints checkFocusOrder(QWidget& window) {
  Complaints out;
  std::set<const QWidget*> wanted;
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (takesTab(widget) && !isPartOfAnother(widget)) wanted.insert(widget);
  if (wanted.empty()) return out;
  QWidget* before = window.focusWidget();
  std::vector<const QWidget*> visited;
  const auto all = static_cast<std::size_t>(window.findChildren<QWidget*>().size());
  for (std::size_t turn = 0; turn < all; ++turn) {
    QWidget* at = window.focusWidget() != nullptr ? window.focusWidget() : &window;
    QTest::keyClick(at, Qt::Key_Tab);
    const QWidget* now = window.focusWidget();
    if (now == at) {
      out.push_back({QStringLiteral("focus"), nameOf(now), QStringLiteral("holds Tab")});
      break;
    }
    if (std::find(visited.begin(), visited.end(), now) != visited.end()) break;
    visited.push_back(now);
  }
  if (before != nullptr) before->setFocus();
  for (const QWidget* widget : wanted)
    if (std::find(visited.begin(), visited.end(), widget) == visited.end())
      out.push_back({QStringLiteral("focus"), nameOf(widget), QStringLiteral("is not reached by Tab")});
  // The round begins anywhere: it is laid open where it comes back to the top left.
  const auto first =
      std::min_element(visited.begin(), visited.end(), [&](const QWidget* a, const QWidget* b) {
        const QRectF ra = standingOf(a, &window), rb = standingOf(b, &window);
        return ra.left() + ra.top() < rb.left() + rb.top();
      });
  std::rotate(visited.begin(), first, visited.end());
  for (std::size_t i = 0; i + 1 < visited.size(); ++i)
    if (const QString slip =
            slipBetween(standingOf(visited[i], visited[i + 1]), standingOf(visited[i + 1], visited[i]));
        !slip.isEmpty())
      out.push_back({QStringLiteral("focus"), nameOf(visited[i]),
                     QStringLiteral("%1 to %2").arg(slip, nameOf(visited[i + 1]))});
  return out;
}

}  // namespace cw
