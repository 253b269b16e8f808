#include "app/run/ways_out.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/common/wording.h"
#include "app/look/labels.h"
#include "app/run/course.h"
#include "app/run/entry_fields.h"
#include "app/run/leads_word.h"
#include "app/run/touch.h"
#include "core/record/leads_word.h"
#include "core/report/describe.h"

namespace cw {
namespace {

/// What the entry says, as corrected.
QString told(const Kept& kept, const BenchView& view) {
  Entry entry = kept.entry;
  entry.body = kept.body();
  const auto sentences = describe(entry, view.job, view.floor.people);
  return sentences.empty() ? QString() : worded(sentences.front());
}

QString stepName(const Job& job, std::size_t step) {
  return QStringLiteral("%1  %2").arg(step + 1).arg(toQt(job.sheet.steps[step].text));
}

}  // namespace

WaysOut::WaysOut(Course& course, QWidget* parent) : QWidget(parent), m_course(course) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  m_way = touchChoice(QStringLiteral("wayChoice"));
  column->addWidget(labelFor(*m_way, tr("What is the matter?")));
  column->addWidget(m_way);
  m_explanation = textLabel({}, fontOfHeight(bench::kLabelHeight, this));
  column->addWidget(m_explanation);
  makeChoices(column);
  makeFields(column);
  QPushButton* back = touchButton(tr("Back to the step"), QStringLiteral("backToStepButton"));
  column->addSpacing(touchGap(*this) - column->spacing());
  column->addWidget(back, 0, Qt::AlignLeft);
  column->addStretch(1);
  connect(m_way, &QComboBox::currentIndexChanged, this, &WaysOut::showAsked);
  connect(back, &QPushButton::clicked, this, &WaysOut::left);
  auto* escape = new QShortcut(QKeySequence(Qt::Key_Escape), this);
  escape->setContext(Qt::WidgetWithChildrenShortcut);
  connect(escape, &QShortcut::activated, this, &WaysOut::left);
}

void WaysOut::makeChoices(QVBoxLayout* column) {
  addChoice(column, Asks::Step, tr("Back to step"), QStringLiteral("stepChoice"));
  addChoice(column, Asks::Pulled, tr("Which position"), QStringLiteral("pulledChoice"));
  addChoice(column, Asks::Closed, tr("Which step"), QStringLiteral("closedChoice"));
  addChoice(column, Asks::Words, tr("Whose words"), QStringLiteral("wordsChoice"));
  m_wordsGiven = textLabel({}, fontOfHeight(bench::kLabelHeight, this));
  m_wordsGiven->setObjectName(QStringLiteral("wordsGivenText"));
  column->addWidget(m_wordsGiven);
  addChoice(column, Asks::Entry, tr("Which entry"), QStringLiteral("entryChoice"));
  m_fields = new EntryFields;
  column->addWidget(m_fields);
  connect(m_choices[Asks::Entry], &QComboBox::currentIndexChanged, this, &WaysOut::showEntry);
  connect(m_choices[Asks::Words], &QComboBox::currentIndexChanged, this, &WaysOut::showWords);
}

void WaysOut::makeFields(QVBoxLayout* column) {
  addLine(column, Asks::Position, tr("Position"), QStringLiteral("positionField"));
  addLine(column, Asks::What, tr("What was done"), QStringLiteral("whatField"));
  addLine(column, Asks::WaitsFor, tr("What it waits for"), QStringLiteral("waitsForField"));
  addLine(column, Asks::Machine, tr("State of the machine, for the do-not-run tag"),
          QStringLiteral("machineStateField"));
  m_word = new LeadsWord({tr("Allowed by (initials of a shop lead)"), {}}, bench::kLabelHeight);
  column->addWidget(m_word);
  m_confirmPin = new QLineEdit;
  m_confirmPin->setObjectName(QStringLiteral("confirmPinField"));
  m_confirmPin->setEchoMode(QLineEdit::Password);
  fitForTouch(*m_confirmPin);
  column->addWidget(m_names[m_confirmPin] = labelFor(*m_confirmPin, tr("Their PIN")));
  column->addWidget(m_confirmPin);
  addLine(column, Asks::Reason, tr("Reason, in a few words"), QStringLiteral("reasonField"));
}

QLineEdit* WaysOut::addLine(QVBoxLayout* column, Asks asks, const QString& label, const QString& objectName) {
  auto* field = new QLineEdit;
  field->setObjectName(objectName);
  fitForTouch(*field);
  column->addWidget(m_names[field] = labelFor(*field, label));
  column->addWidget(field);
  return m_lines[asks] = field;
}

QComboBox* WaysOut::addChoice(QVBoxLayout* column, Asks asks, const QString& label,
                              const QString& objectName) {
  QComboBox* choice = touchChoice(objectName, 2);
  column->addWidget(m_names[choice] = labelFor(*choice, label));
  column->addWidget(choice);
  return m_choices[asks] = choice;
}

void WaysOut::present(const BenchView& view) {
  for (auto& [asks, field] : m_lines) field->clear();
  m_confirmPin->clear();
  m_joint = view.next.step < view.job.sheet.steps.size() ? view.step().joint : std::string();
  {
    const QSignalBlocker entries(m_choices[Asks::Entry]), words(m_choices[Asks::Words]);
    for (auto& [asks, choice] : m_choices) choice->clear();
    fillSteps(view);
    fillEntries(view);
    fillWords(view);
  }
  offerWays();
}

void WaysOut::fillSteps(const BenchView& view) {
  const Job& job = view.job;
  for (std::size_t i = 0; i < job.steps.size(); ++i) {
    const QString id = toQt(job.sheet.steps[i].id);
    m_choices[Asks::Step]->addItem(stepName(job, i), id);
    if (isReopenable(job, i)) m_choices[Asks::Closed]->addItem(stepName(job, i), id);
    if (job.sheet.steps[i].kind != StepKind::Tighten) continue;
    for (const std::string& label : orderOf(job, job.sheet.steps[i]))
      if (job.steps[i].tightening.tightened.contains(label))
        m_choices[Asks::Pulled]->addItem(tr("Position %1 of step %2").arg(toQt(label), stepName(job, i)),
                                         QStringList{id, toQt(label)});
  }
}

void WaysOut::fillEntries(const BenchView& view) {
  m_entries.clear();
  for (auto kept = view.job.entries.rbegin(); kept != view.job.entries.rend(); ++kept) {
    if (!isCorrectable(kept->entry.body) || kept->overtaken) continue;
    m_choices[Asks::Entry]->addItem(QStringLiteral("%1  %2").arg(kept->entry.sequence).arg(told(*kept, view)),
                                    kept->entry.sequence);
    m_entries.push_back(kept->body());
  }
}

void WaysOut::fillWords(const BenchView& view) {
  m_given.clear();
  for (const std::string& sign : unconfirmedPeople(view.job)) {
    auto& [entries, what] = m_given[toQt(sign)];
    entries = unconfirmedWordsOf(view.job, sign);
    QStringList lines;
    for (const int of : entries) lines << QStringLiteral("%1  %2").arg(of).arg(told(view.job.kept(of), view));
    what = lines.join(QLatin1Char('\n'));
    m_choices[Asks::Words]->addItem(toQt(nameOf(sign, view.floor.people)), toQt(sign));
  }
  const int own = m_choices[Asks::Words]->findData(toQt(view.worker));
  m_choices[Asks::Words]->setCurrentIndex(std::max(0, own));
}

/// Only ways for which there is something to choose from.
void WaysOut::offerWays() {
  const QSignalBlocker quiet(m_way);
  m_way->clear();
  for (const Way& each : waysOut()) {
    const auto isEmpty = [&](const auto& choice) {
      return each.asks.contains(choice.first) && choice.second->count() == 0;
    };
    const bool isRepairOfNothing = each.asks.contains(Asks::Position) && m_joint.empty();
    if (!isRepairOfNothing && std::none_of(m_choices.begin(), m_choices.end(), isEmpty))
      m_way->addItem(each.name, each.key);
  }
}

void WaysOut::choose(const QString& way) {
  m_way->setCurrentIndex(std::max(0, m_way->findData(way)));
  showAsked();
  m_way->setFocus();
}

const Way& WaysOut::way() const {
  const QString key = m_way->currentData().toString();
  for (const Way& each : waysOut())
    if (each.key == key) return each;
  return waysOut().front();
}

void WaysOut::showAsked() {
  m_explanation->setText(way().explanation);
  const auto showField = [&](QWidget* field, bool shown) {
    field->setVisible(shown);
    m_names[field]->setVisible(shown);
  };
  for (const auto& [what, choice] : m_choices) showField(choice, asks(what));
  for (const auto& [what, field] : m_lines) showField(field, asks(what));
  m_fields->setVisible(asks(Asks::Entry));
  m_wordsGiven->setVisible(asks(Asks::Words));
  const auto given = wordWanted();
  m_word->setVisible(given.has_value());
  if (given) m_word->present(*given);
  showEntry();
  showWords();
  emit changed();
}

void WaysOut::showEntry() {
  const int entry = m_choices[Asks::Entry]->currentIndex();
  if (entry < 0)
    m_fields->clear();
  else
    m_fields->present(m_entries[static_cast<std::size_t>(entry)]);
}

/// A lead who is at work here has given the PIN already.
void WaysOut::showWords() {
  const QString sign = data(Asks::Words);
  const auto given = m_given.find(sign);
  m_wordsGiven->setText(given == m_given.end() ? QString() : given->second.second);
  const bool asksPin = asks(Asks::Words) && fromQt(sign) != m_course.worker().sign;
  m_confirmPin->setVisible(asksPin);
  m_names[m_confirmPin]->setVisible(asksPin);
}

QString WaysOut::action() const {
  return tr("State: %1").arg(m_way->currentText());
}

std::string WaysOut::typed(Asks asks) const {
  return fromQt(m_lines.at(asks)->text().trimmed());
}

QString WaysOut::data(Asks asks) const {
  return m_choices.at(asks)->currentData().toString();
}

std::optional<Given> WaysOut::wordWanted() const {
  const Job* job = m_course.job();
  if (job == nullptr || asks(Asks::Entry)) return std::nullopt;
  const auto stated = body();
  return stated ? wordFor(*job, *stated) : std::nullopt;
}

Result<Body> WaysOut::correction() const {
  CW_TRY(changed, m_fields->changed());
  if (changed.object()->empty())
    return fail(ErrorCode::InvalidInput, "", "", "nothing is changed yet",
                "change what was wrong, in its field");
  return Body(
      Corrected{m_choices.at(Asks::Entry)->currentData().toInt(), std::move(changed), typed(Asks::Reason)});
}

Result<Body> WaysOut::body() const {
  const QString key = way().key;
  const std::string reason = typed(Asks::Reason), allowedBy = fromQt(m_word->sign());
  if (key == QLatin1String("correction")) return correction();
  if (key == QLatin1String("not-tightened")) {
    const QStringList pulled = m_choices.at(Asks::Pulled)->currentData().toStringList();
    return Body(Reopened{fromQt(pulled.value(0)), fromQt(pulled.value(1)), reason});
  }
  if (key == QLatin1String("not-done")) return Body(Reopened{fromQt(data(Asks::Closed)), {}, reason});
  if (key == QLatin1String("not-applicable"))
    return Body(LeftBlank{"", Absence::NotApplicable, reason, allowedBy});
  if (key == QLatin1String("not-recorded"))
    return Body(LeftBlank{"", Absence::NotRecorded, reason, allowedBy});
  if (key == QLatin1String("deviation"))
    return Body(Deviated{"", typed(Asks::What), reason, allowedBy, {}, {}, {}});
  if (key == QLatin1String("take-apart")) return Body(TakenApart{fromQt(data(Asks::Step)), reason});
  if (key == QLatin1String("repair"))
    return Body(Repaired{m_joint, typed(Asks::Position), typed(Asks::What), reason, allowedBy});
  if (key == QLatin1String("confirm")) {
    const auto given = m_given.find(data(Asks::Words));
    return Body(Confirmed{given == m_given.end() ? std::vector<int>() : given->second.first});
  }
  if (key == QLatin1String("park"))
    return Body(Paused{reason, true, typed(Asks::WaitsFor), typed(Asks::Machine)});
  if (key == QLatin1String("call-off")) return Body(CalledOff{reason});
  return Body(SetAside{"", reason});
}

void WaysOut::stateIt() {
  auto stated = body();
  if (!stated) return emit m_course.refused(wordedWithPlace(stated.error()));
  const auto state = [&] {
    if (asks(Asks::Words) && fromQt(data(Asks::Words)) != m_course.worker().sign)
      return m_course.stateAs(data(Asks::Words), m_confirmPin->text(), *std::move(stated));
    if (wordWanted()) return m_course.stateAllowed(m_word->given(), *std::move(stated));
    return m_course.state(*std::move(stated));
  };
  if (state()) emit left();
}

}  // namespace cw
