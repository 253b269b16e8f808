#include "app/bench/bench_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/run/bench_foot.h"
#include "app/run/touch.h"

namespace cw {

BenchForm::BenchForm(const Heading& heading, QWidget* parent) : QWidget(parent) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  auto* area = new QScrollArea;
  area->setWidget(makeFields(heading.title));
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  all->addWidget(area, 1);
  m_foot = new BenchFoot({{tr("Back"), QStringLiteral("backButton")}},
                         {heading.action, QLatin1String(heading.actionName)});
  all->addWidget(m_foot);
  connect(m_foot->way(0), &QPushButton::clicked, this, &BenchForm::left);
  connect(action(), &QPushButton::clicked, this, &BenchForm::acted);
}

QWidget* BenchForm::makeFields(const QString& title) {
  m_fields = new QWidget;
  auto* column = new QVBoxLayout(m_fields);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(4);
  m_title = new QLabel(title);
  m_title->setFont(fontOfHeight(bench::kTextHeight * 1.2, this, QFont::Bold));
  m_title->setTextFormat(Qt::PlainText);
  m_title->setWordWrap(true);
  column->addWidget(m_title);
  m_grid = new QGridLayout;
  m_grid->setHorizontalSpacing(24);
  m_grid->setColumnStretch(0, 1);
  m_grid->setColumnStretch(1, 1);
  column->addLayout(m_grid);
  column->addStretch(1);
  return m_fields;
}

void BenchForm::add(const QString& label, QWidget* field, const char* name, Width width) {
  if (width == Width::Whole) m_cell = (m_cell + 1) / 2 * 2;
  const int row = m_cell / 2 * 2, across = width == Width::Whole ? 2 : 1;
  field->setObjectName(QLatin1String(name));
  QLabel* above = labelFor(*field, label);
  m_grid->addWidget(above, row, m_cell % 2, 1, across, Qt::AlignBottom);
  m_grid->addWidget(field, row + 1, m_cell % 2, 1, across);
  m_labels[field] = above;
  if (m_labels.size() == 1) passFocusOn(*this, *field);
  m_cell += across;
}

void BenchForm::addWide(QWidget* widget) {
  m_cell = (m_cell + 1) / 2 * 2;
  m_grid->addWidget(widget, m_cell, 0, 1, 2);
  m_cell += 2;
}

QLineEdit* BenchForm::addField(const QString& label, const char* name, Width width) {
  auto* field = new QLineEdit;
  fitForTouch(*field);
  add(label, field, name, width);
  return field;
}

QLineEdit* BenchForm::addPin(const char* name, const QString& label) {
  QLineEdit* field = addField(label.isEmpty() ? tr("PIN") : label, name);
  field->setEchoMode(QLineEdit::Password);
  connect(field, &QLineEdit::returnPressed, action(), &QPushButton::click);
  return field;
}

QComboBox* BenchForm::addChoice(const QString& label, const char* name, Width width, int lines) {
  QComboBox* choice = touchChoice(QLatin1String(name), lines);
  add(label, choice, name, width);
  return choice;
}

QPushButton* BenchForm::action() const {
  return m_foot->main();
}

void BenchForm::setTitle(const QString& title) {
  m_title->setText(title);
}

/// Fields are added after the foot was made.
void BenchForm::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  orderTabs({m_fields, m_foot});
}

void BenchForm::setShown(QWidget* field, bool shown) {
  field->setVisible(shown);
  if (const auto label = m_labels.find(field); label != m_labels.end()) label->second->setVisible(shown);
}

void BenchForm::say(const QString& sentence) {
  m_foot->say(sentence);
}

}  // namespace cw
