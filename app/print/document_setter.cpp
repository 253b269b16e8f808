#include "app/print/document_setter.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

#include "app/common/wording.h"
#include "app/drawing/joint_painter.h"
#include "app/print/ink_colours.h"
#include "app/print/set_text.h"
#include "app/print/table_setter.h"

namespace cw {
namespace {

constexpr double kHeadline = 72, kTitle = 20, kLead = 13, kHeading = 11.5, kText = 8.5,
                 kSmall = 7.5;       // points
constexpr double kFactShare = 0.23;  ///< of the width, for the labels of facts

QString tr(const char* text) {
  return QCoreApplication::translate("print", text);
}

/// What the marks of a joint's drawing mean.
QString legend(const JointDrawing& drawing) {
  const QString order = tr("Small number: place in the order.\nDotted line: the order.");
  const bool untouched =
      std::all_of(drawing.positions.begin(), drawing.positions.end(),
                  [](const DrawnPosition& position) { return position.state == PositionState::ToDo; });
  if (untouched) return order;
  return tr("Filled with a tick: done.\nDouble ring: done again.\nOutline: not done.\n"
            "Diamond: in trouble.\n") +
         order;
}

}  // namespace

Pages DocumentSetter::set(const Document& document) {
  setTitle(document);
  for (const Section& section : document.sections) setSection(section);
  return std::move(m_pages);
}

std::size_t DocumentSetter::pagesOf(const Document& document, std::size_t sections, const Paper& paper) {
  DocumentSetter setter(paper);
  setter.setTitle(document);
  for (std::size_t i = 0; i < sections; ++i) setter.setSection(document.sections[i]);
  return setter.m_pages.count();
}

void DocumentSetter::setTitle(const Document& document) {
  setText(toQt(document.title), kTitle, QFont::Bold, kInk);
  setText(toQt(document.subtitle), kHeading, QFont::Normal, kSecondInk);
}

void DocumentSetter::setSection(const Section& section) {
  if (section.newPage) m_pages.breakPage();
  const Pages::Mark here = m_pages.mark();
  setBlocks(section);
  const bool torn = m_pages.count() > here.pages && here.cursor > 0;
  if (!torn) return;
  // What would be torn and fits on a page is kept whole; what is longer than a page begins where it stood.
  m_pages.rewind(here);
  m_pages.breakPage();
  setBlocks(section);
  if (m_pages.count() == here.pages + 1) return;
  m_pages.rewind(here);
  setBlocks(section);
}

void DocumentSetter::setBlocks(const Section& section) {
  m_pages.skip(m_paper.points(13));
  if (!section.heading.empty()) {
    m_pages.need(m_paper.points(60));
    setText(toQt(section.heading), kHeading, QFont::Bold, kInk);
    m_pages.skip(m_paper.points(2));
  }
  for (const Block& block : section.blocks) std::visit(*this, block);
}

void DocumentSetter::setText(const QString& text, double size, QFont::Weight weight, const QColor& colour,
                             double indent) {
  const SetText set(text, {m_paper.text(size, weight), colour}, m_pages.width() - indent, m_paper.device());
  for (int line = 0; line < set.lineCount(); ++line) {
    m_pages.need(set.lineHeight());
    m_pages.put(set.lineHeight(), [=](QPainter& painter) { set.draw(painter, QPointF(indent, 0), line, 1); });
  }
}

void DocumentSetter::operator()(const Paragraph& paragraph) {
  m_pages.skip(m_paper.points(5));
  switch (paragraph.tone) {
    case Tone::Plain:
      return setText(toQt(paragraph.text), kText, QFont::Normal, kInk);
    case Tone::Strong:
      return setText(toQt(paragraph.text), kText, QFont::Bold, kInk);
    case Tone::Quiet:
      return setText(toQt(paragraph.text), kSmall, QFont::Normal, kSecondInk);
    case Tone::Lead:
      return setText(toQt(paragraph.text), kLead, QFont::Bold, kInk);
    case Tone::Headline:
      return setText(toQt(paragraph.text), kHeadline, QFont::Black, kInk);
    case Tone::Caution:
      return setCaution(toQt(paragraph.text));
    case Tone::Warning:
      return setWarning(toQt(paragraph.text));
  }
}

/// A bar at its left.
void DocumentSetter::setCaution(const QString& text) {
  const double indent = m_paper.points(9), bar = m_paper.points(3);
  setMarked(text, kInk, indent, 0,
            [=](QPainter& painter, double height) { painter.fillRect(QRectF(0, 0, bar, height), kInk); });
}

/// White on black: nothing else on the page looks so.
void DocumentSetter::setWarning(const QString& text) {
  const double width = m_pages.width(), margin = m_paper.points(6);
  setMarked(text, Qt::white, margin, margin,
            [=](QPainter& painter, double height) { painter.fillRect(QRectF(0, 0, width, height), kInk); });
}

/// Bold text, line by line so that it may run over a page's end; `ground` is painted below each piece.
void DocumentSetter::setMarked(const QString& text, const QColor& ink, double indent, double above,
                               const std::function<void(QPainter&, double)>& ground) {
  const SetText set(text, {m_paper.text(kText, QFont::Bold), ink}, m_pages.width() - 2 * indent,
                    m_paper.device());
  const double seam = m_paper.points(0.5);  // so that no hairline parts the pieces
  const auto putGround = [&](double height) {
    if (height > 0) m_pages.put(height, [=](QPainter& painter) { ground(painter, height + seam); });
  };
  m_pages.skip(m_paper.points(3));
  m_pages.need(std::min(set.height(), 3 * set.lineHeight()) + 2 * above);
  putGround(above);
  for (int line = 0; line < set.lineCount(); ++line) {
    m_pages.need(set.lineHeight());
    m_pages.put(set.lineHeight(), [=, height = set.lineHeight()](QPainter& painter) {
      ground(painter, height + seam);
      set.draw(painter, QPointF(indent, 0), line, 1);
    });
  }
  putGround(above);
}

void DocumentSetter::operator()(const Facts& facts) {
  m_pages.skip(m_paper.points(3));
  for (const Fact& fact : facts.rows) setFact(fact);
}

void DocumentSetter::setFact(const Fact& fact) {
  const double left = m_pages.width() * kFactShare;
  const SetText label(toQt(fact.label), {m_paper.text(kText), kSecondInk}, left - m_paper.points(6),
                      m_paper.device());
  const SetText value(toQt(fact.value), {m_paper.text(kText), kInk}, m_pages.width() - left,
                      m_paper.device());
  const double gap = m_paper.points(2);
  m_pages.need(std::max(label.height(), value.lineHeight()) + gap);
  m_pages.put(0, [=](QPainter& painter) { label.draw(painter, {}); });
  for (int line = 0; line < value.lineCount(); ++line) {
    m_pages.need(value.lineHeight());
    m_pages.put(value.lineHeight(),
                [=](QPainter& painter) { value.draw(painter, QPointF(left, 0), line, 1); });
  }
  m_pages.skip(std::max(label.height() - value.height(), 0.0) + gap);
}

void DocumentSetter::operator()(const Table& table) {
  m_pages.skip(m_paper.points(4));
  TableSetter(table, m_paper, m_pages).set();
}

void DocumentSetter::operator()(const JointDrawing& drawing) {
  const bool large = drawing.positions.size() > 16;
  const double side = m_paper.millimetres(large ? 105 : 70);
  m_pages.skip(m_paper.points(6));
  m_pages.need(side);
  const SetText words(legend(drawing), {m_paper.text(kSmall), kSecondInk}, m_pages.width() - side,
                      m_paper.device());
  m_pages.put(side, [=, font = m_paper.text(8)](QPainter& painter) {
    JointDrawingOptions options;
    options.showOrder = true;
    paintJoint(painter, QRectF(0, 0, side, side), drawing, JointInk::ofPaper(font), options);
    words.draw(painter, QPointF(side, 0));
  });
  m_pages.skip(m_paper.points(6));
}

}  // namespace cw
