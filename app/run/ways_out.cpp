#include "app/run/ways_out.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <set>

#include "app/common/wording.h"
#include "app/run/course.h"
#include "app/run/touch.h"
#include "core/report/describe.h"

namespace cw {
namespace {

using Asks = WaysOut::Asks;

struct Way {
  const char* key;
  const char* name;
  const char* explanation;
  std::set<Asks> asks;
};

const std::vector<Way>& ways() {
  static const std::vector<Way> kWays{
      {"aside",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Set this step aside"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "It stays open; you come back to it before the job ends."),
       {Asks::Reason}},
      {"not-applicable",
       QT_TRANSLATE_NOOP("cw::WaysOut", "This step does not apply"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "It closes with nothing written against it, and your reason."),
       {Asks::Reason}},
      {"not-recorded",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Done, but not recorded"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "It closes as not recorded, with your reason, and stands first on the record."),
       {Asks::Reason}},
      {"deviation",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Done in another way"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "A shop lead must have allowed it. The step closes as a deviation."),
       {Asks::What, Asks::Reason, Asks::Lead, Asks::LeadPin}},
      {"correction",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Correct an entry"),
       QT_TRANSLATE_NOOP("cw::WaysOut", "Both values stay on the record, the old one struck through."),
       {Asks::Entry, Asks::Value, Asks::Reason}},
      {"take-apart",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Take apart and go back"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "Everything from that step on is done again; single-use parts are asked for anew."),
       {Asks::Step, Asks::Reason}},
      {"repair",
       QT_TRANSLATE_NOOP("cw::WaysOut", "A position was repaired"),
       QT_TRANSLATE_NOOP("cw::WaysOut",
                         "An insert, another fastener, a stud that turned with its nut: what was done, and "
                         "where. A shop lead "
                         "states it."),
       {Asks::Position, Asks::What, Asks::Reason}},
      {"park",
       QT_TRANSLATE_NOOP("cw::WaysOut", "Park the job for days"),
       QT_TRANSLATE_NOOP(
           "cw::WaysOut",
           "Write what it waits for. On resuming, a joint that is half tightened starts again."),
       {Asks::WaitsFor, Asks::Machine, Asks::Reason}},
  };
  return kWays;
}

/// The old body with the one value that people misread or mistype replaced.
Json corrected(const Body& old, const std::string& value) {
  Json now = bodyToJson(old);
  for (const char* key : {"value", "batch", "remark"})
    if (now.find(key) != nullptr) return now.set(key, value);
  if (const Json* reading = now.find("reading")) {
    Json again = *reading;
    now.set("reading", again.set("value", value));
  }
  return now;
}

bool canBeCorrected(const Body& body) {
  return std::holds_alternative<Measured>(body) || std::holds_alternative<CheckMade>(body) ||
         std::holds_alternative<Applied>(body) || std::holds_alternative<ActDone>(body) ||
         std::holds_alternative<Tightened>(body);
}

}  // namespace

WaysOut::WaysOut(Course& course, QWidget* parent) : QWidget(parent), m_course(course) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  m_way = addChoice(column, tr("What is the matter?"), QStringLiteral("wayChoice"));
  for (const Way& way : ways()) m_way->addItem(tr(way.name), QLatin1String(way.key));
  m_explanation = new QLabel;
  m_explanation->setWordWrap(true);
  m_explanation->setFont(fontOfHeight(bench::kLabelHeight, this));
  column->addWidget(m_explanation);
  m_step = addChoice(column, tr("Back to step"), QStringLiteral("stepChoice"), 2);
  m_entry = addChoice(column, tr("Which entry"), QStringLiteral("entryChoice"), 2);
  addLine(column, Asks::Position, tr("Position"), QStringLiteral("positionField"));
  addLine(column, Asks::Value, tr("What it should have been"), QStringLiteral("valueField"));
  addLine(column, Asks::What, tr("What was done"), QStringLiteral("whatField"));
  addLine(column, Asks::WaitsFor, tr("What it waits for"), QStringLiteral("waitsForField"));
  addLine(column, Asks::Machine, tr("State of the machine, for the do-not-run tag"),
          QStringLiteral("machineStateField"));
  addLine(column, Asks::Lead, tr("Allowed by (sign of a shop lead)"), QStringLiteral("leadField"));
  addLine(column, Asks::LeadPin, tr("PIN of the lead"), QStringLiteral("leadPinField"))
      ->setEchoMode(QLineEdit::Password);
  addLine(column, Asks::Reason, tr("Reason, in a few words"), QStringLiteral("reasonField"));
  QPushButton* back = touchButton(tr("Back to the step"), QStringLiteral("backToStepButton"));
  column->addSpacing(touchGap(*this) - column->spacing());
  column->addWidget(back, 0, Qt::AlignLeft);
  column->addStretch(1);
  connect(m_way, &QComboBox::currentIndexChanged, this, &WaysOut::showAsked);
  connect(back, &QPushButton::clicked, this, &WaysOut::left);
  showAsked();
}

QLineEdit* WaysOut::addLine(QVBoxLayout* column, Asks asks, const QString& label, const QString& objectName) {
  auto* field = new QLineEdit;
  field->setObjectName(objectName);
  fitForTouch(*field);
  column->addWidget(m_names[field] = labelFor(*field, label));
  column->addWidget(field);
  return m_lines[asks] = field;
}

QComboBox* WaysOut::addChoice(QVBoxLayout* column, const QString& label, const QString& objectName,
                              int lines) {
  QComboBox* choice = touchChoice(objectName, lines);
  column->addWidget(m_names[choice] = labelFor(*choice, label));
  column->addWidget(choice);
  return choice;
}

void WaysOut::present(const BenchView& view) {
  for (auto& [asks, field] : m_lines) field->clear();
  m_joint = view.next.step < view.job.sheet.steps.size() ? view.step().joint : std::string();
  m_step->clear();
  for (std::size_t i = 0; i < view.job.sheet.steps.size(); ++i)
    m_step->addItem(QStringLiteral("%1  %2").arg(i + 1).arg(toQt(view.job.sheet.steps[i].text)),
                    toQt(view.job.sheet.steps[i].id));
  m_entry->clear();
  m_entries.clear();
  for (auto kept = view.job.entries.rbegin(); kept != view.job.entries.rend(); ++kept) {
    if (!canBeCorrected(kept->entry.body) || kept->overtaken || kept->correctedBy) continue;
    const auto told = describe(kept->entry, view.job, view.floor.people);
    m_entry->addItem(QStringLiteral("%1  %2")
                         .arg(kept->entry.sequence)
                         .arg(told.empty() ? QString() : worded(told.front())),
                     kept->entry.sequence);
    m_entries.push_back(kept->entry.body);
  }
}

void WaysOut::choose(const QString& way) {
  m_way->setCurrentIndex(std::max(0, m_way->findData(way)));
  m_way->setFocus();
}

void WaysOut::showAsked() {
  const Way& way = ways()[static_cast<std::size_t>(std::max(0, m_way->currentIndex()))];
  m_explanation->setText(tr(way.explanation));
  emit changed();
  const auto showField = [&](QWidget* field, Asks asks) {
    field->setVisible(way.asks.contains(asks));
    m_names[field]->setVisible(way.asks.contains(asks));
  };
  showField(m_step, Asks::Step);
  showField(m_entry, Asks::Entry);
  for (const auto& [asks, field] : m_lines) showField(field, asks);
}

QString WaysOut::action() const {
  return tr("State: %1").arg(m_way->currentText());
}

std::string WaysOut::typed(Asks asks) const {
  return fromQt(m_lines.at(asks)->text().trimmed());
}

Body WaysOut::body() const {
  const QString way = m_way->currentData().toString();
  const std::string reason = typed(Asks::Reason);
  if (way == QLatin1String("aside")) return SetAside{"", reason};
  if (way == QLatin1String("not-applicable")) return LeftBlank{"", Absence::NotApplicable, reason};
  if (way == QLatin1String("not-recorded")) return LeftBlank{"", Absence::NotRecorded, reason};
  if (way == QLatin1String("deviation"))
    return Deviated{"", typed(Asks::What), reason, typed(Asks::Lead), {}, {}, {}};
  if (way == QLatin1String("take-apart")) return TakenApart{fromQt(m_step->currentData().toString()), reason};
  if (way == QLatin1String("repair"))
    return Repaired{m_joint, typed(Asks::Position), typed(Asks::What), reason};
  if (way == QLatin1String("park")) return Paused{reason, true, typed(Asks::WaitsFor), typed(Asks::Machine)};
  Corrected correction{m_entry->currentData().toInt(), Json(), reason};
  if (m_entry->currentIndex() >= 0)
    correction.now =
        corrected(m_entries[static_cast<std::size_t>(m_entry->currentIndex())], typed(Asks::Value));
  return correction;
}

void WaysOut::stateIt() {
  const bool allowed = m_way->currentData() == QLatin1String("deviation");
  const bool stated = allowed ? m_course.stateAllowed(m_lines.at(Asks::Lead)->text().trimmed(),
                                                      m_lines.at(Asks::LeadPin)->text(), body())
                              : m_course.state(body());
  if (stated) emit left();
}

}  // namespace cw
