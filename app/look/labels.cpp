#include "app/look/labels.h"

#include <QCoreApplication>
#include <QLabel>

namespace cw {

QLabel* textLabel(const QString& text, const QFont& font, QPalette::ColorRole ink) {
  auto* label = new QLabel(text);
  label->setTextFormat(Qt::PlainText);
  label->setFont(font);
  label->setForegroundRole(ink);
  label->setWordWrap(true);
  return label;
}

QLabel* cautionLabel(const QString& text, const QFont& font) {
  const QString word = QCoreApplication::translate("labels", "CAUTION");
  QLabel* label = textLabel({}, font, QPalette::ToolTipText);
  label->setTextFormat(Qt::RichText);
  label->setText(QStringLiteral("<b>%1</b>&nbsp; %2").arg(word, text.toHtmlEscaped()));
  label->setObjectName(QStringLiteral("caution"));
  label->setAutoFillBackground(true);
  label->setBackgroundRole(QPalette::ToolTipBase);
  label->setMargin(8);
  return label;
}

}  // namespace cw
