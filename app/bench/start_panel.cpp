#include "app/bench/start_panel.h"

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
#include "app/common/wording.h"

namespace cw {
namespace {

QString nameOf(Reason reason) {
  switch (reason) {
    case Reason::NewWork:
      return StartPanel::tr("new work");
    case Reason::Warranty:
      return StartPanel::tr("warranty");
    case Reason::Comeback:
      return StartPanel::tr("comeback of a record");
    case Reason::RetorqueDue:
      return StartPanel::tr("retorque due from a record");
  }
  return {};
}

bool follows(Reason reason) {
  return reason == Reason::Comeback || reason == Reason::RetorqueDue;
}

}  // namespace

StartPanel::StartPanel(Workspace& workspace, QWidget* parent) : QWidget(parent), m_workspace(workspace) {
  auto* form = new QWidget;
  auto* column = new QVBoxLayout(form);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(4);
  auto* area = new QScrollArea;
  area->setWidget(form);
  area->setWidgetResizable(true);
  area->setFrameShape(QFrame::NoFrame);
  area->setFocusPolicy(Qt::NoFocus);
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(area, 1);

  auto* title = new QLabel(tr("Start a job"));
  title->setFont(fontOfHeight(bench::kTextHeight * 1.2, this, QFont::Bold));
  column->addWidget(title);
  m_grid = new QGridLayout;
  m_grid->setHorizontalSpacing(24);
  m_grid->setColumnStretch(0, 1);
  m_grid->setColumnStretch(1, 1);
  column->addLayout(m_grid);
  column->addStretch(1);
  m_workOrder = addField(tr("Work order"), QStringLiteral("workOrderField"));
  m_machine = addChoice(tr("Machine"), QStringLiteral("machineChoice"));
  m_machine->setEditable(true);
  m_machine->lineEdit()->setAccessibleName(tr("Machine"));
  m_hours = addField(tr("Hours, as read, with unit"), QStringLiteral("hoursField"));
  m_sheet = addChoice(tr("Sheet"), QStringLiteral("sheetChoice"));
  m_reason = addChoice(tr("Reason"), QStringLiteral("reasonChoice"));
  for (const auto& [reason, word] : Words<Reason>::kAll) m_reason->addItem(nameOf(reason), toQt(word));
  m_parent = addField(tr("Job it follows from"), QStringLiteral("parentField"));
  m_person = addChoice(tr("Who does it"), QStringLiteral("personChoice"));
  m_supervisor = addChoice(tr("Supervised by"), QStringLiteral("supervisorChoice"));
  m_pin = addField(tr("PIN"), QStringLiteral("pinField"));
  m_pin->setEchoMode(QLineEdit::Password);

  auto* foot = new QWidget;
  auto* footColumn = new QVBoxLayout(foot);
  footColumn->setContentsMargins(24, 8, 24, 16);
  m_said = new QLabel;
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_said->setForegroundRole(QPalette::BrightText);
  m_said->setWordWrap(true);
  footColumn->addWidget(m_said);
  auto* across = new QHBoxLayout;
  auto* back = new QPushButton(tr("Back"));
  back->setObjectName(QStringLiteral("backButton"));
  m_start = new QPushButton(tr("Start"));
  m_start->setObjectName(QStringLiteral("startButton"));
  m_start->setProperty(kMainProperty, true);
  back->setFont(fontOfHeight(bench::kLabelHeight, this));
  back->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  m_start->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_start->setMinimumSize(static_cast<int>(pixels(bench::kMainTargetWidth, this)),
                          static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  across->addWidget(back);
  across->addStretch(1);
  across->addWidget(m_start);
  footColumn->addLayout(across);
  all->addWidget(foot);

  connect(back, &QPushButton::clicked, this, &StartPanel::left);
  connect(m_start, &QPushButton::clicked, this, &StartPanel::start);
  connect(m_pin, &QLineEdit::returnPressed, this, &StartPanel::start);
  connect(m_reason, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
  connect(m_person, &QComboBox::currentIndexChanged, this, &StartPanel::refresh);
}

void StartPanel::place(QWidget* name, QWidget* field) {
  const int cell = m_grid->count() / 2;  // each cell holds a name and its field, two cells a row
  m_grid->addWidget(name, cell / 2 * 2, cell % 2);
  m_grid->addWidget(field, cell / 2 * 2 + 1, cell % 2);
}

QComboBox* StartPanel::addChoice(const QString& label, const QString& objectName) {
  auto* name = new QLabel(label);
  auto* choice = new QComboBox;
  choice->setObjectName(objectName);
  choice->setAccessibleName(label);
  choice->setFont(fontOfHeight(bench::kLabelHeight, this));
  choice->setMinimumHeight(static_cast<int>(pixels(bench::kTarget * 0.8, this)));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  name->setFont(fontOfHeight(bench::kLabelHeight, this));
  name->setForegroundRole(QPalette::PlaceholderText);
  name->setBuddy(choice);
  place(name, choice);
  return choice;
}

QLineEdit* StartPanel::addField(const QString& label, const QString& objectName) {
  auto* name = new QLabel(label);
  auto* field = new QLineEdit;
  field->setObjectName(objectName);
  field->setAccessibleName(label);
  field->setFont(fontOfHeight(bench::kLabelHeight, this));
  field->setMinimumHeight(static_cast<int>(pixels(bench::kTarget * 0.8, this)));
  name->setFont(fontOfHeight(bench::kLabelHeight, this));
  name->setForegroundRole(QPalette::PlaceholderText);
  name->setBuddy(field);
  place(name, field);
  return field;
}

void StartPanel::present() {
  m_said->clear();
  for (QLineEdit* field : {m_workOrder, m_parent, m_hours, m_pin}) field->clear();
  for (QComboBox* choice : {m_sheet, m_machine, m_person, m_supervisor}) choice->clear();
  m_sheets.clear();
  if (const auto sheets = m_workspace.shop().sheets().all())
    for (const SheetRow& row : *sheets)
      if (row.status == SheetStatus::Issued) {
        m_sheets.push_back(row);
        m_sheet->addItem(tr("%1, rev %2").arg(toQt(row.title), toQt(row.revision)));
      }
  if (const auto machines = m_workspace.shop().machines().all())
    for (const Machine& machine : *machines)
      m_machine->addItem(QStringLiteral("%1  %2").arg(toQt(machine.id), toQt(machine.model)),
                         toQt(machine.id));
  if (const auto people = m_workspace.shop().people().all())
    for (const Person& person : *people) {
      if (!person.active || !(person.may(Role::Technician) || person.may(Role::ShopLead))) continue;
      m_person->addItem(toQt(person.name), toQt(person.sign));
      if (!person.apprentice) m_supervisor->addItem(toQt(person.name), toQt(person.sign));
    }
  if (m_sheets.empty()) m_said->setText(tr("No sheet is issued yet; a trainer issues one first."));
  refresh();
  m_workOrder->setFocus();
}

void StartPanel::refresh() {
  const auto showWithName = [&](QWidget* field, bool visible) {
    field->setVisible(visible);
    for (QLabel* name : findChildren<QLabel*>())
      if (name->buddy() == field) name->setVisible(visible);
  };
  const auto reason = static_cast<Reason>(m_reason->currentIndex());
  showWithName(m_parent, follows(reason));
  const auto person = m_workspace.hasShop()
                          ? m_workspace.shop().people().find(fromQt(m_person->currentData().toString()))
                          : Result<Person>(fail({}));
  showWithName(m_supervisor, person && person->apprentice);
}

void StartPanel::start() {
  const int sheet = m_sheet->currentIndex();
  if (sheet < 0) return;
  const int known = m_machine->findText(m_machine->currentText());
  Beginning beginning;
  beginning.sheetDigest = m_sheets[static_cast<std::size_t>(sheet)].digest;
  beginning.by = fromQt(m_person->currentData().toString());
  beginning.pin = fromQt(m_pin->text());
  if (m_supervisor->isVisibleTo(this)) beginning.supervisor = fromQt(m_supervisor->currentData().toString());
  beginning.start.workOrder = fromQt(m_workOrder->text().trimmed());
  beginning.start.machine =
      fromQt(known >= 0 ? m_machine->itemData(known).toString() : m_machine->currentText().trimmed());
  beginning.start.hours = fromQt(m_hours->text().trimmed());
  beginning.start.reason = static_cast<Reason>(m_reason->currentIndex());
  beginning.start.parent = fromQt(m_parent->text().trimmed());
  const auto job = m_workspace.startJob(beginning);
  if (!job) return m_said->setText(worded(job.error()));
  emit started(*job, m_person->currentData().toString());
}

}  // namespace cw
