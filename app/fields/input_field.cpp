#include "app/fields/input_field.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "app/common/tab_order.h"
#include "app/look/labels.h"
#include "app/look/measures.h"

namespace cw {
namespace {

constexpr int kTextMargin = 6, kFrameRoom = 24;

}  // namespace

InputField::InputField(const Words& words, QWidget* parent)
    : QWidget(parent), m_words(words), m_edit(new QLineEdit), m_found(textLabel({}, deskFont())) {
  const QString shown = words.optional ? tr("%1 (may stay empty)").arg(words.label) : words.label;
  auto* label = textLabel(shown, deskFont(), QPalette::PlaceholderText);
  label->setBuddy(m_edit);
  m_edit->setObjectName(words.name + QLatin1String("Field"));
  m_edit->setAccessibleName(words.label);
  m_edit->installEventFilter(this);
  m_edit->setTextMargins(kTextMargin, 0, kTextMargin, 0);
  m_found->setObjectName(words.name + QLatin1String("Found"));
  m_found->hide();
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(2);
  down->addWidget(label);
  down->addWidget(m_edit);
  down->addWidget(m_found);
  passFocusOn(*this, *m_edit);
  connect(m_edit, &QLineEdit::textEdited, this, [this] {
    m_mark = Settings().decimalMark();
    emit edited();
  });
  connect(m_edit, &QLineEdit::editingFinished, this, &InputField::settle);
}

/// The line loses focus, and says so, when it is already half gone.
InputField::~InputField() {
  m_edit->disconnect(this);
}

bool InputField::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) fitExamples();
  return QWidget::eventFilter(watched, event);
}

/// As many examples as there is room for; half a one would teach something wrong.
void InputField::fitExamples() {
  const auto fits = [this](const QString& hint) {
    return m_edit->fontMetrics().horizontalAdvance(hint) < m_edit->width() - 2 * kTextMargin - kFrameRoom;
  };
  const QString examples = m_words.example;
  qsizetype end = examples.size();
  for (; end > 0 && !fits(tr("for example %1").arg(examples.left(end)));)
    end = std::max(examples.left(end).lastIndexOf(tr(", ")), examples.left(end).lastIndexOf(tr(" or ")));
  if (end > 0) return m_edit->setPlaceholderText(tr("for example %1").arg(examples.left(end)));
  const QString first = examples.section(tr(", "), 0, 0);
  m_edit->setPlaceholderText(fits(first) ? first : QString());
}

std::string InputField::text() const {
  return fromQt(m_edit->text().trimmed());
}

void InputField::setText(const QString& text) {
  m_mark = DecimalMark::Point;
  m_edit->setText(text);
}

QString InputField::settled() const {
  return understood().value_or(m_edit->text().trimmed());
}

void InputField::settle() {
  const QString text = settled();
  if (text != m_edit->text() && understood()) setText(text);
}

void InputField::find(const QString& sentence) {
  m_found->setForegroundRole(QPalette::PlaceholderText);
  m_found->setText(sentence);
  m_found->setVisible(!sentence.isEmpty());
  m_edit->setAccessibleDescription(sentence);
}

void InputField::findTrouble(const QString& sentence) {
  find(sentence);
  m_found->setForegroundRole(QPalette::BrightText);
}

QString InputField::found() const {
  return m_found->text();
}

}  // namespace cw
