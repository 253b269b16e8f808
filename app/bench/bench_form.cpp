#include "app/bench/bench_form.h"

#include <QComboBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/common/measures.h"
#include "app/common/style.h"

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
  all->addWidget(makeFoot(heading));
}

QWidget* BenchForm::makeFields(const QString& title) {
  auto* fields = new QWidget;
  auto* column = new QVBoxLayout(fields);
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
  return fields;
}

QWidget* BenchForm::makeFoot(const Heading& heading) {
  auto* foot = new QWidget;
  auto* column = new QVBoxLayout(foot);
  column->setContentsMargins(24, 8, 24, 16);
  m_said = new QLabel;
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_said->setForegroundRole(QPalette::BrightText);
  m_said->setWordWrap(true);
  m_said->hide();
  column->addWidget(m_said);
  auto* across = new QHBoxLayout;
  across->setSpacing(static_cast<int>(pixels(bench::kGap, this)));
  auto* back = new QPushButton(tr("Back"));
  back->setObjectName(QStringLiteral("backButton"));
  back->setFont(fontOfHeight(bench::kLabelHeight, this));
  back->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  m_action = new QPushButton(heading.action);
  m_action->setObjectName(QLatin1String(heading.actionName));
  m_action->setProperty(kMainProperty, true);
  m_action->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_action->setMinimumSize(static_cast<int>(pixels(bench::kMainTargetWidth, this)),
                           static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  across->addWidget(back);
  across->addStretch(1);
  across->addWidget(m_action);
  column->addLayout(across);
  connect(back, &QPushButton::clicked, this, &BenchForm::left);
  connect(m_action, &QPushButton::clicked, this, &BenchForm::acted);
  return foot;
}

void BenchForm::add(const QString& label, QWidget* field, const char* name) {
  auto* above = new QLabel(label);
  above->setFont(fontOfHeight(bench::kLabelHeight, this));
  above->setForegroundRole(QPalette::PlaceholderText);
  above->setBuddy(field);
  field->setObjectName(QLatin1String(name));
  field->setAccessibleName(label);
  field->setFont(fontOfHeight(bench::kLabelHeight, this));
  const int row = m_cell / 2 * 2;
  m_grid->addWidget(above, row, m_cell % 2);
  m_grid->addWidget(field, row + 1, m_cell % 2);
  m_labels[field] = above;
  ++m_cell;
}

void BenchForm::addWide(QWidget* widget) {
  m_cell = (m_cell + 1) / 2 * 2;
  m_grid->addWidget(widget, m_cell, 0, 1, 2);
  m_cell += 2;
}

QLineEdit* BenchForm::addField(const QString& label, const char* name) {
  auto* field = new QLineEdit;
  add(label, field, name);
  field->setMinimumHeight(static_cast<int>(pixels(bench::kTarget * 0.8, this)));
  return field;
}

QLineEdit* BenchForm::addPin(const char* name) {
  QLineEdit* field = addField(tr("PIN"), name);
  field->setEchoMode(QLineEdit::Password);
  connect(field, &QLineEdit::returnPressed, m_action, &QPushButton::click);
  return field;
}

QComboBox* BenchForm::addChoice(const QString& label, const char* name) {
  auto* choice = new QComboBox;
  add(label, choice, name);
  choice->setMinimumHeight(static_cast<int>(pixels(bench::kTarget * 0.8, this)));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  return choice;
}

void BenchForm::setTitle(const QString& title) {
  m_title->setText(title);
}

void BenchForm::setShown(QWidget* field, bool shown) {
  field->setVisible(shown);
  if (const auto label = m_labels.find(field); label != m_labels.end()) label->second->setVisible(shown);
}

void BenchForm::say(const QString& sentence) {
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

}  // namespace cw
