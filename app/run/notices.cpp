#include "app/run/notices.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/common/wording.h"
#include "app/look/measures.h"
#include "core/procedure/torques_in_text.h"

namespace cw {

QString withUnitInHand(const std::string& text, const TorqueUnit* inHand) {
  if (inHand == nullptr) return toQt(text);
  QStringList said;
  for (const Message& each : torquesInUnit(text, *inHand)) said << worded(each);
  return said.isEmpty() ? toQt(text)
                        : QStringLiteral("%1 (%2)").arg(toQt(text), said.join(QStringLiteral("; ")));
}

Notices::Notices(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->setSpacing(8);
}

void Notices::clear() {
  while (QLayoutItem* item = m_column->takeAt(0)) {
    delete item->widget();
    delete item;
  }
}

void Notices::present(const Step& step, const TorqueUnit* inHand) {
  clear();
  m_inHand = inHand;
  add(tr("WARNING"), step.warnings, QPalette::BrightText, QPalette::Window);
  add(tr("CAUTION"), step.cautions, QPalette::ToolTipBase, QPalette::ToolTipText);
  add(tr("NOTE"), step.notes, QPalette::Base, QPalette::WindowText);
}

void Notices::add(const QString& word, const std::vector<std::string>& texts, QPalette::ColorRole ground,
                  QPalette::ColorRole ink) {
  for (const std::string& text : texts) {
    const QString said = withUnitInHand(text, m_inHand).toHtmlEscaped();
    auto* label = new QLabel(QStringLiteral("<b>%1</b>&nbsp; %2").arg(word, said));
    label->setObjectName(word.toLower() + QLatin1String("Notice"));
    label->setTextFormat(Qt::RichText);
    label->setFont(fontOfHeight(bench::kTextHeight, this));
    label->setWordWrap(true);
    label->setMargin(static_cast<int>(pixels(2, this)));
    label->setAutoFillBackground(true);
    label->setBackgroundRole(ground);
    label->setForegroundRole(ink);
    m_column->addWidget(label);
  }
}

}  // namespace cw
