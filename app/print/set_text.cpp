#include "app/print/set_text.h"

#include <QPainter>
#include <QTextLayout>

namespace cw {
namespace {

/// QTextLayout breaks at a line separator, not at a line feed.
QString forPaper(QString text) {
  return text.replace(QLatin1Char('\n'), QChar(QChar::LineSeparator));
}

QTextLayout::FormatRange struckThrough(int length) {
  QTextCharFormat format;
  format.setFontStrikeOut(true);
  return {0, length, format};
}

}  // namespace

SetText::SetText(const QString& text, const TextLook& look, double width, QPaintDevice& device)
    : m_layout(std::make_shared<QTextLayout>(forPaper(text), look.font, &device)), m_colour(look.colour) {
  QTextOption option(look.alignment);
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  m_layout->setTextOption(option);
  if (look.struck > 0) m_layout->setFormats({struckThrough(look.struck)});
  m_layout->beginLayout();
  double y = 0;
  for (QTextLine line = m_layout->createLine(); line.isValid(); line = m_layout->createLine()) {
    line.setLineWidth(width);
    line.setPosition(QPointF(0, y));
    y += line.height();
  }
  m_layout->endLayout();
}

int SetText::lineCount() const {
  return m_layout->lineCount();
}

double SetText::lineHeight() const {
  return lineCount() == 0 ? 0 : m_layout->lineAt(0).height();
}

double SetText::height() const {
  return lineCount() * lineHeight();
}

void SetText::draw(QPainter& painter, QPointF at, int first, int count) const {
  painter.setPen(m_colour);
  const int end = std::min(first + count, lineCount());
  for (int i = first; i < end; ++i) {
    const QTextLine line = m_layout->lineAt(i);
    line.draw(&painter, at - QPointF(0, m_layout->lineAt(first).y()));
  }
}

}  // namespace cw
