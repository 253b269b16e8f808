#include "app/bench/quick_panel.h"

#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <set>

#include "app/bench/layout_input.h"
#include "app/bench/lead_fields.h"
#include "app/bench/shop_choices.h"
#include "app/common/wording.h"
#include "app/drawing/joint_view.h"
#include "app/run/touch.h"
#include "core/procedure/printed_torque.h"
#include "core/procedure/sheet_file.h"
#include "core/report/drawing.h"
#include "core/store/file_io.h"
#include "core/units/format.h"

namespace cw {
namespace {

/// What may limit a torque in place of the fastener, in the order of the choice after its first line.
constexpr Ungrounded kLimits[] = {Ungrounded::LimitedByGasket, Ungrounded::LimitedByPlastic, Ungrounded::Plug,
                                  Ungrounded::BearingPreload, Ungrounded::UnmarkedFastener};

constexpr double kJudgedJoint = 80;  ///< mm

enum class PassChoice { ThreeAndCheck, Three, One };

PassPlan planFor(PassChoice passes) {
  PassPlan out;
  if (passes == PassChoice::One) out.shares = {1};
  if (passes != PassChoice::ThreeAndCheck) out.check.reset();
  return out;
}

QString digitsOf(const std::optional<StatedTorque>& torque) {
  return torque ? toQt(torque->digits + " " + std::string(torque->unit->symbol)) : QString();
}

}  // namespace

QuickPanel::QuickPanel(Workspace& workspace, QWidget* parent)
    : BenchForm({tr("Quick joint: no issued sheet"), tr("Start"), "startButton"}, parent),
      m_workspace(workspace) {
  m_workOrder = addField(tr("Work order"), "workOrderField");
  m_name = addField(tr("What is tightened"), "nameField");
  m_machine = addChoice(tr("Machine"), "machineChoice", Width::Whole);
  m_machine->setEditable(true);
  m_machine->lineEdit()->setAccessibleName(tr("Machine"));
  addJoint();
  addSource();
  addWho();
  connect(this, &BenchForm::acted, this, &QuickPanel::start);
}

void QuickPanel::addJoint() {
  m_layout = new LayoutInput;
  add(tr("Fasteners, in a"), m_layout, "layoutInput", Width::Whole);
  m_thread = addField(tr("Thread, such as M8 or 3/8-16"), "threadField");
  m_grade = addChoice(tr("Grade, as marked"), "gradeChoice");
  m_grade->setEditable(true);
  m_grade->lineEdit()->setAccessibleName(tr("Grade, as marked"));
  m_grade->addItem(QString());
  std::set<std::string> names;
  const auto known = m_workspace.catalogue();  // what judge() says if it cannot be read
  const Library& offered = known ? (*known)->rows() : shippedCatalogue().rows();
  for (const Grade& grade : offered.grades)
    if (names.insert(grade.name).second) m_grade->addItem(toQt(grade.name));
  m_condition = addChoice(tr("The torque holds for threads that are"), "conditionChoice");
  m_condition->addItem(tr("the source does not say"), QString());
  for (const Condition& condition : offered.conditions)
    m_condition->addItem(toQt(condition.name), toQt(condition.name));
  m_limit = addChoice(tr("What limits the torque"), "limitChoice");
  m_limit->addItems({tr("what the fastener can bear"), tr("a gasket"), tr("a plastic part"),
                     tr("it is a plug"), tr("it sets a bearing's preload"), tr("the fastener is unmarked")});
  m_passes = addChoice(tr("Passes"), "passesChoice", Width::Whole);
  m_passes->addItems({tr("30, 70, 100 %, then a check pass"),
                      tr("30, 70, 100 %, no check (sealant, threadlocker)"), tr("one")});
  connect(m_layout, &LayoutInput::changed, this, &QuickPanel::judge);
  for (QComboBox* choice : {m_grade, m_condition, m_limit, m_passes})
    connect(choice, &QComboBox::currentTextChanged, this, &QuickPanel::judge);
}

void QuickPanel::addSource() {
  m_printed = addField(tr("Torque, word for word as printed"), "printedField", Width::Whole);
  m_low = addField(tr("Least, with unit"), "leastField");
  m_aim = addField(tr("Aim, with unit"), "aimField");
  m_high = addField(tr("Most, with unit"), "mostField");
  m_document = addField(tr("Printed in (manual, bulletin)"), "documentField");
  m_page = addField(tr("Page"), "pageField");
  m_revision = addField(tr("Its revision or date"), "revisionField");
  m_photographButton = new QPushButton;
  fitForTouch(*m_photographButton);
  add(tr("Photograph of the line, if wanted"), m_photographButton, "photographButton");
  connect(m_photographButton, &QPushButton::clicked, this, &QuickPanel::choosePhotograph);
  connect(m_printed, &QLineEdit::textChanged, this, &QuickPanel::propose);
  for (QLineEdit* field : {m_name, m_thread, m_printed, m_low, m_aim, m_high, m_document, m_page, m_revision})
    connect(field, &QLineEdit::textChanged, this, &QuickPanel::judge);
  addWide(makeJudgement());
}

/// The joint as it will be tightened, and beside it what the guard says.
QWidget* QuickPanel::makeJudgement() {
  auto* judgement = new QWidget;
  auto* across = new QHBoxLayout(judgement);
  across->setContentsMargins(0, 8, 0, 8);
  across->setSpacing(24);
  m_drawing = new JointView;
  m_drawing->setObjectName(QStringLiteral("orderView"));
  m_drawing->setFocusPolicy(Qt::NoFocus);
  m_drawing->setFont(fontOfHeight(bench::kTextHeight, m_drawing));
  const int side = static_cast<int>(pixels(kJudgedJoint, m_drawing));
  m_drawing->setMinimumSize(side, side);
  JointDrawingOptions options;
  options.showOrder = true;
  m_drawing->setOptions(options);
  m_verdict = new QLabel;
  m_verdict->setObjectName(QStringLiteral("verdictText"));
  m_verdict->setFont(fontOfHeight(bench::kTextHeight, this));
  m_verdict->setTextFormat(Qt::PlainText);
  m_verdict->setWordWrap(true);
  across->addWidget(m_drawing);
  across->addWidget(m_verdict, 1);
  return judgement;
}

void QuickPanel::addWho() {
  m_lead = new LeadFields(*this, tr("Lead who allows it all the same"));
  m_person = addChoice(tr("Who answers for it, and does it"), "personChoice");
  m_pin = addPin("pinField");
}

void QuickPanel::present() {
  say({});
  for (QLineEdit* field : {m_workOrder, m_name, m_thread, m_printed, m_low, m_aim, m_high, m_document, m_page,
                           m_revision, m_pin})
    field->clear();
  m_lead->clear();
  for (QComboBox* choice : {m_grade, m_condition, m_limit, m_passes}) choice->setCurrentIndex(0);
  m_layout->clear();
  m_photograph.reset();
  m_photographButton->setText(tr("Choose a picture…"));
  if (const auto filled = fill(); !filled) say(worded(filled.error()));
  judge();
  m_workOrder->setFocus();
}

Result<void> QuickPanel::fill() {
  CW_CHECK(m_lead->fill(m_workspace.shop()));
  CW_CHECK(fillMachines(*m_machine, m_workspace.shop()));
  return fillWorkers(*m_person, m_workspace.shop(), true);
}

void QuickPanel::choosePhotograph() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Photograph of the line"), {},
                                                    tr("Pictures (*.jpg *.jpeg *.png)"));
  if (path.isEmpty()) return;
  if (const auto attached = attach(path); !attached) return say(worded(attached.error()));
  say({});
}

Result<void> QuickPanel::attach(const QString& path) {
  CW_TRY(bytes, readFile(fromQt(path), std::int64_t{kMostPhotographBytes} + 1));
  CW_TRY(picture, photograph(fromQt(QFileInfo(path).fileName()), std::move(bytes)));
  m_photographButton->setText(toQt(picture.name));
  m_photograph = std::move(picture);
  return {};
}

void QuickPanel::propose() {
  const PrintedTorque read = readPrinted(fromQt(m_printed->text()));
  // What somebody wrote themselves stays.
  const auto put = [](QLineEdit* field, const std::optional<StatedTorque>& torque) {
    if (!field->isModified()) field->setText(digitsOf(torque));
  };
  put(m_low, read.low), put(m_aim, read.aim), put(m_high, read.high);
}

QuickFields QuickPanel::fields() const {
  QuickFields out;
  out.name = m_name->text(), out.thread = m_thread->text(), out.grade = m_grade->currentText();
  out.condition = m_condition->currentData().toString();
  out.printed = m_printed->text().trimmed();
  out.low = m_low->text(), out.aim = m_aim->text(), out.high = m_high->text();
  out.document = m_document->text(), out.page = m_page->text(), out.revision = m_revision->text();
  if (const int limit = m_limit->currentIndex(); limit > 0) out.ungrounded = kLimits[limit - 1];
  out.passes = planFor(static_cast<PassChoice>(m_passes->currentIndex()));
  out.by = fromQt(m_person->currentData().toString());
  return out;
}

Result<QuickJoint> QuickPanel::joint() const {
  CW_TRY(layout, m_layout->layout());
  return readQuickFields(fields(), std::move(layout), m_layout->isToScale());
}

/// As it is typed: without the photograph, which has no say in it and would have to be read each time.
void QuickPanel::judge() {
  action()->setText(tr("Start"));
  m_lead->setShown(false);
  const auto read = joint();
  const auto sheet = read ? quickSheet(*read, m_workspace.newId()) : Result<Sheet>(fail(read.error()));
  if (!sheet) {
    m_drawing->setDrawing({});
    return m_verdict->setText(wordedWithPlace(sheet.error()));
  }
  m_drawing->setDrawing(drawingOf(sheet->joints.front()));
  const auto catalogue = m_workspace.catalogue();
  if (!catalogue) return m_verdict->setText(wordedWithPlace(catalogue.error()));
  const auto judged = judgeQuickSheet(*sheet, **catalogue);
  if (!judged) return m_verdict->setText(worded(judged.error()));
  showVerdict(*judged);
  action()->setText(tr("Start: %1 × %2 at %3")
                        .arg(sheet->joints.front().order.size())
                        .arg(toQt(sheet->fasteners.front().thread), toQt(text(*read->specification.aim))));
}

void QuickPanel::showVerdict(const QuickVerdict& verdict) {
  QStringList lines;
  for (const Finding& finding : verdict.findings) lines << worded(finding);
  if (lines.isEmpty()) lines << tr("The guard finds nothing against this torque.");
  if (verdict.blocks()) lines << tr("Only a shop lead can allow it, with a reason that goes on the record.");
  m_verdict->setText(lines.join(QLatin1Char('\n')));
  m_verdict->setForegroundRole(verdict.blocks() ? QPalette::BrightText : QPalette::WindowText);
  m_lead->setShown(verdict.blocks());
}

void QuickPanel::start() {
  auto read = joint();
  if (!read) return say(wordedWithPlace(read.error()));
  read->source.photograph = m_photograph;
  const auto sheet = quickSheet(*read, m_workspace.newId());
  if (!sheet) return say(wordedWithPlace(sheet.error()));
  Beginning beginning;
  beginning.quickSheet = writeSheet(*sheet);
  beginning.by = fromQt(m_person->currentData().toString());
  beginning.pin = fromQt(m_pin->text());
  beginning.start.workOrder = fromQt(m_workOrder->text().trimmed());
  beginning.start.machine = machineIn(*m_machine);
  m_lead->addTo(beginning, beginning.start.guardAllowedBy, beginning.start.guardReason);
  const auto job = m_workspace.startJob(beginning);
  if (!job) return say(worded(job.error()));
  emit started(*job, {beginning.by});
}

}  // namespace cw
