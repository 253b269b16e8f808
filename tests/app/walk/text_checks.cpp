#include "tests/app/walk/text_checks.h"

#include <QAbstractItemView>
#include <QAbstractScrollArea>
#include <QFontMetricsF>
#include <QScrollBar>
#include <QWidget>
#include <algorithm>
#include <set>

#include "app/look/colours.h"
#include "tests/app/walk/bounds.h"
#include "tests/app/walk/colour_count.h"

namespace cw {
namespace {

constexpr qreal kSoft = 1.5;  // pixels
const QChar kEllipsis(0x2026);

bool isWithin(const QWidget* widget, const char* ancestorClass) {
  for (; widget != nullptr; widget = widget->parentWidget())
    if (widget->inherits(ancestorClass)) return true;
  return false;
}

bool isNamed(const QWidget* widget, const std::set<QString>& names) {
  for (; widget != nullptr; widget = widget->parentWidget())
    if (names.contains(widget->objectName())) return true;
  return false;
}

double leastOf(TextRole role, double scale) {
  switch (role) {
    case TextRole::Number:
      return bounds::kNumber;
    case TextRole::Text:
      return bounds::kText;
    case TextRole::SideLabel:
      return bounds::kSideLabel;
    case TextRole::Desk:
      break;
  }
  return bounds::kDesk * scale;
}

QRectF inWindow(const QWidget* widget) {
  return QRectF(QPointF(widget->mapTo(widget->window(), QPoint())), QSizeF(widget->size()));
}

struct Scrolls {
  bool across = false, down = false;
};

Scrolls scrollsOf(const QWidget* viewport) {
  const auto* area = qobject_cast<const QAbstractScrollArea*>(viewport->parentWidget());
  if (area == nullptr || area->viewport() != viewport) return {};
  const auto can = [](const QScrollBar* bar) { return bar->maximum() > bar->minimum(); };
  const bool acrossOff = area->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff;
  const bool downOff = area->verticalScrollBarPolicy() == Qt::ScrollBarAlwaysOff;
  return {!acrossOff && can(area->horizontalScrollBar()), !downOff && can(area->verticalScrollBar())};
}

/// The widget that takes some of this text away for good, or nullptr.
const QWidget* cutter(const PaintedText& text) {
  QRectF rest = text.rect.adjusted(kSoft, kSoft, -kSoft, -kSoft);
  for (const QWidget* widget = text.widget; widget != nullptr; widget = widget->parentWidget()) {
    const QRectF room = inWindow(widget);
    const Scrolls scrolls = scrollsOf(widget);
    const bool across = rest.left() < room.left() || rest.right() > room.right();
    const bool down = rest.top() < room.top() || rest.bottom() > room.bottom();
    if ((across && !scrolls.across) || (down && !scrolls.down)) return widget;
    rest &= room;
    if (rest.isEmpty()) return nullptr;  // scrolled away; seen when the area is scrolled to it
  }
  return nullptr;
}

/// An ellipsis that stands in the widget's own words is no shortening.
bool isShortened(const PaintedText& text) {
  if (!text.text.contains(kEllipsis) || isWithin(text.widget, "QTextEdit")) return false;
  for (const char* property : {"text", "placeholderText", "currentText"})
    if (text.widget->property(property).toString().contains(kEllipsis)) return false;
  return true;
}

QRectF visiblePart(const PaintedText& text) {
  QRectF out = text.rect;
  for (const QWidget* widget = text.widget; widget != nullptr; widget = widget->parentWidget())
    out &= inWindow(widget);
  return out;
}

/// Most of it scrolled away is seen, and judged, once the area is scrolled to it.
bool isScrolledAway(const PaintedText& text) {
  const QRectF seen = visiblePart(text);
  return !seen.isValid() || seen.width() * seen.height() < text.rect.width() * text.rect.height() / 2;
}

Complaint about(const char* check, const PaintedText& text, const QString& what) {
  return {QLatin1String(check), nameOf(text.widget), QStringLiteral("“%1” %2").arg(text.text.left(40), what)};
}

}  // namespace

QString nameOf(const QWidget* widget) {
  if (widget == nullptr) return QStringLiteral("?");
  const QString type = QLatin1String(widget->metaObject()->className());
  for (const QWidget* named = widget; named != nullptr; named = named->parentWidget())
    if (!named->objectName().isEmpty() && !named->objectName().startsWith(QLatin1String("qt_")))
      return type + QLatin1Char(' ') + (named == widget ? QString() : QStringLiteral("in ")) +
             named->objectName();
  return type;
}

TextRole roleOf(const QWidget& widget) {
  static const std::set<QString> kNumbers{QStringLiteral("settingNumber"), QStringLiteral("positionNumber")};
  static const std::set<QString> kRead{
      QStringLiteral("stepTitle"),     QStringLiteral("warningNotice"), QStringLiteral("cautionNotice"),
      QStringLiteral("noteNotice"),    QStringLiteral("mainButton"),    QStringLiteral("startButton"),
      QStringLiteral("goOnButton"),    QStringLiteral("sealButton"),    QStringLiteral("saidText"),
      QStringLiteral("toolList"),      QStringLiteral("jobList"),       QStringLiteral("emptyText"),
      QStringLiteral("readingField"),  QStringLiteral("settingUnit"),   QStringLiteral("handStartText"),
      QStringLiteral("conditionText"), QStringLiteral("toolText"),      QStringLiteral("limitsText"),
      QStringLiteral("pausedText"),    QStringLiteral("finishText"),    QStringLiteral("witnessText"),
      QStringLiteral("checkPassText")};
  if (!isWithin(&widget, "cw::BenchPlace")) return TextRole::Desk;
  if (isNamed(&widget, kNumbers)) return TextRole::Number;
  // What the hand holds is a side label, but for its number and unit.
  if (isWithin(&widget, "cw::HandPanel") && widget.objectName() != QLatin1String("settingUnit"))
    return TextRole::SideLabel;
  return isNamed(&widget, kRead) ? TextRole::Text : TextRole::SideLabel;
}

Complaints checkHeights(const std::vector<PaintedText>& texts, double dots, double scale, Worst& measured) {
  Complaints out;
  for (const PaintedText& text : texts) {
    const TextRole role = roleOf(*text.widget);
    const double least = leastOf(role, scale), height = text.capitals / dots;
    measured.height[static_cast<std::size_t>(role)].see(height);
    if (height < least - bounds::kSoftness)
      out.push_back(
          about("height", text, QStringLiteral("is %1 mm, least %2").arg(height, 0, 'f', 1).arg(least)));
  }
  return out;
}

double contrastIn(const QImage& picture, const PaintedText& text) {
  const QRect within = visiblePart(text).toAlignedRect().adjusted(-2, -2, 2, 2) & picture.rect();
  const auto near = [ink = text.ink.rgb()](QRgb pixel) {
    return std::abs(qRed(pixel) - qRed(ink)) + std::abs(qGreen(pixel) - qGreen(ink)) +
               std::abs(qBlue(pixel) - qBlue(ink)) <
           24;
  };
  ColourCount count;
  for (int y = within.top(); y <= within.bottom(); ++y) {
    const auto* line = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
    for (int x = within.left(); x <= within.right(); ++x)
      if (!near(line[x])) count.see(line[x]);
  }
  const auto commonest = count.commonest();
  if (!commonest) return within.isEmpty() ? 21 : 1;
  return contrast(text.ink, QColor(*commonest));
}

Complaints checkContrast(const std::vector<PaintedText>& texts, const QImage& picture, Worst& measured) {
  Complaints out;
  for (const PaintedText& text : texts) {
    if (isScrolledAway(text)) continue;
    if (const double ratio = measured.contrast.see(contrastIn(picture, text)); ratio < bounds::kTextContrast)
      out.push_back(
          about("contrast", text,
                QStringLiteral("has %1 : 1, least %2").arg(ratio, 0, 'f', 1).arg(bounds::kTextContrast)));
  }
  return out;
}

Complaints checkCut(const std::vector<PaintedText>& texts) {
  Complaints out;
  for (const PaintedText& text : texts) {
    if (const QWidget* by = cutter(text))
      out.push_back(about("cut", text, QStringLiteral("sticks out of %1").arg(nameOf(by))));
    else if (text.cutByPainter && !isWithin(text.widget, "QTextEdit"))
      out.push_back(about("cut", text, QStringLiteral("is cut where it is painted")));
    if (isShortened(text)) out.push_back(about("cut", text, QStringLiteral("is shortened")));
  }
  return out;
}

Complaints checkOverlap(const std::vector<PaintedText>& texts) {
  Complaints out;
  std::vector<QRectF> seen;
  for (const PaintedText& text : texts)
    seen.push_back(visiblePart(text).adjusted(kSoft, kSoft, -kSoft, -kSoft));
  for (std::size_t i = 0; i < texts.size(); ++i)
    for (std::size_t j = i + 1; j < texts.size(); ++j)
      if (seen[i].isValid() && seen[j].isValid() && seen[i].intersects(seen[j]) &&
          texts[i].text != texts[j].text)
        out.push_back(about("overlap", texts[i], QStringLiteral("lies on “%1”").arg(texts[j].text.left(40))));
  return out;
}

Complaints checkProportional(const std::vector<PaintedText>& texts) {
  Complaints out;
  std::set<QString> judged;
  for (const PaintedText& text : texts) {
    const QFontMetricsF metrics(text.font);
    if (!judged.insert(text.font.family()).second) continue;
    if (metrics.horizontalAdvance(QLatin1Char('m')) < metrics.horizontalAdvance(QLatin1Char('i')) * 1.2)
      out.push_back(
          about("face", text, QStringLiteral("in %1: i and m are equally wide").arg(text.font.family())));
  }
  return out;
}

}  // namespace cw
