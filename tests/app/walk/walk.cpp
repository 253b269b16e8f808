#include "tests/app/walk/walk.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QDir>
#include <QImage>
#include <QScrollBar>
#include <QTextDocument>
#include <QTextEdit>
#include <QThreadPool>
#include <algorithm>

#include "app/look/measures.h"
#include "tests/app/walk/control_checks.h"
#include "tests/app/walk/text_checks.h"

namespace cw {
namespace {

constexpr QSize kLeast(1024, 600), kUsual(1280, 800), kLarge(1920, 1080);
constexpr qsizetype kMostPlaces = 3;
constexpr int kQuickToWrite = 90;  // of a PNG: hardly packed

void append(Complaints& to, Complaints more) {
  to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

/// One picture a size is painted again and again; a new one each time would cost as much as the painting.
QImage& pictureOf(QWidget& window) {
  static std::map<int, QImage> pictures;
  QImage& out = pictures[window.width()];
  if (out.size() != window.size()) out = QImage(window.size(), QImage::Format_RGB32);
  window.render(&out);
  return out;
}

QString cell(const Least& least) {
  return (least.seen() ? QString::number(least.value(), 'f', 1) : QStringLiteral("-")).rightJustified(8);
}

}  // namespace

QString WalkLook::text() const {
  return QStringLiteral("%1 %2 %")
      .arg(scheme == Scheme::Light ? QLatin1String("light") : QLatin1String("dark"))
      .arg(scale * 100);
}

WalkReport& WalkReport::theOne() {
  static WalkReport report;
  return report;
}

void WalkReport::complain(const QString& where, const Complaints& complaints) {
  for (const Complaint& one : complaints)
    m_slips[QStringLiteral("%1: %2 %3").arg(one.check, one.widget, one.what)] << where;
}

QString WalkReport::table() const {
  QString out =
      QStringLiteral("%1%2 texts  number    text   label    desk contrast outline  target     gap\n")
          .arg(QStringLiteral("page").leftJustified(10), QStringLiteral("state").leftJustified(24));
  for (const auto& [key, row] : m_rows) {
    out += key.first.leftJustified(10) + key.second.leftJustified(24) +
           QString::number(row.texts).rightJustified(6);
    for (const Least& height : row.height) out += cell(height);
    for (const Least& least : {row.contrast, row.outline, row.target, row.gap}) out += cell(least);
    out += QLatin1Char('\n');
  }
  return out;
}

QString WalkReport::newSlips() {
  QString out;
  for (const auto& [slip, where] : m_slips) {
    QStringList places = where;
    places.removeDuplicates();
    out += slip + QStringLiteral("  [") + places.mid(0, kMostPlaces).join(QStringLiteral("; "));
    if (places.size() > kMostPlaces) out += QStringLiteral("; %1 more").arg(places.size() - kMostPlaces);
    out += QStringLiteral("]\n");
  }
  m_slips.clear();
  return out;
}

void settle() {
  for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();
}

std::vector<QSize> Walk::sizes() const {
  if (m_look.scale > 1) return {kUsual, kLarge};
  if (m_look.scheme == Scheme::Dark) return {kLarge, kUsual};
  return {kLeast, kLarge, kUsual};
}

void Walk::look(const QString& page, const QString& state) {
  Worst& measured = WalkReport::theOne().measured(page, state);
  for (const QSize& size : sizes()) {
    m_window.resize(size);
    settle();
    finishDocuments();
    const QImage& picture = pictureOf(m_window);
    Complaints complaints = check(measured, picture);
    save(page, state, size, picture);
    append(complaints, checkScrolledDown(measured));
    if (size == kUsual && m_look.scheme == Scheme::Light) append(complaints, checkFocusOrder(m_window));
    const QString where = QStringLiteral("%1, %2, %3×%4 %5")
                              .arg(page, state)
                              .arg(size.width())
                              .arg(size.height())
                              .arg(m_look.text());
    WalkReport::theOne().complain(where, complaints);
  }
}

/// Long documents are laid out bit by bit while nothing else happens.
void Walk::finishDocuments() const {
  for (const auto* view : m_window.findChildren<QTextEdit*>())
    if (view->isVisible()) view->document()->idealWidth();
  settle();
}

Complaints Walk::check(Worst& measured, const QImage& picture) const {
  const double dots = pixels(1, &m_window);
  const std::vector<PaintedText> texts = paintedText(m_window);
  measured.texts = std::max(measured.texts, texts.size());
  Complaints out = checkContrast(texts, picture, measured);
  append(out, checkControls(m_window, picture, measured));
  append(out, checkHeights(texts, dots, m_look.scale, measured));
  append(out, checkCut(texts));
  append(out, checkOverlap(texts));
  append(out, checkProportional(texts));
  append(out, checkNames(m_window));
  append(out, checkAcross(m_window));
  if (m_window.shownPlace() == QLatin1String("bench")) append(out, checkTargets(m_window, dots, measured));
  return out;
}

/// What stands below the edge of something that scrolls.
Complaints Walk::checkScrolledDown(Worst& measured) const {
  std::vector<QScrollBar*> down;
  for (const auto* area : m_window.findChildren<QAbstractScrollArea*>())
    if (area->isVisible() && area->verticalScrollBar()->maximum() > 0)
      down.push_back(area->verticalScrollBar());
  if (down.empty()) return {};
  std::vector<int> before;
  for (QScrollBar* bar : down) {
    before.push_back(bar->value());
    bar->setValue(bar->maximum());
  }
  settle();
  const Complaints out = check(measured, pictureOf(m_window));
  for (std::size_t i = 0; i < down.size(); ++i) down[i]->setValue(before[i]);
  return out;
}

/// Of every state the usual window; the least one too, and the large one with large text, in light.
void Walk::save(const QString& page, const QString& state, const QSize& size, const QImage& picture) const {
  const bool isDark = m_look.scheme == Scheme::Dark, isLargeText = m_look.scale > 1;
  if (isDark && isLargeText) return;
  if (size != kUsual && (isDark || (size == kLarge) != isLargeText)) return;
  const QString folder = QStringLiteral(CW_PICTURES "/walk");
  QDir().mkpath(folder);
  QString name = QStringLiteral("%1_%2_%3_%4")
                     .arg(page, state)
                     .arg(size.width())
                     .arg(m_look.scheme == Scheme::Light ? QLatin1String("light") : QLatin1String("dark"));
  if (m_look.scale > 1) name += QStringLiteral("_%1").arg(m_look.scale * 100);
  name.remove(QLatin1Char(',')).replace(QLatin1Char(' '), QLatin1Char('_'));
  const QString path = folder + QLatin1Char('/') + name + QStringLiteral(".png");
  QThreadPool::globalInstance()->start(
      [picture, path] { picture.convertToFormat(QImage::Format_RGB888).save(path, "PNG", kQuickToWrite); });
}

void waitForPictures() {
  QThreadPool::globalInstance()->waitForDone();
}

}  // namespace cw
