#include "app/records/records_place.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/documents/desk_page.h"
#include "app/fields/sign_form.h"
#include "app/look/style.h"
#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

constexpr int kMostShown = 200;

QString dateText(const Moment& moment) {
  return toQt(isoDate(localDate(moment)));
}

QString stateText(const JobRow& row) {
  switch (row.state) {
    case JobState::Open:
      return RecordsPlace::tr("in progress");
    case JobState::Finished:
      return RecordsPlace::tr("not sealed");
    case JobState::Sealed:
      return row.addenda == 0 ? RecordsPlace::tr("sealed") : RecordsPlace::tr("sealed\nwith later note");
    case JobState::CalledOff:
      return RecordsPlace::tr("called off");
    case JobState::Disposed:
      return RecordsPlace::tr("disposed of");
  }
  return {};
}

QString twoLines(const QString& first, const QString& second) {
  return first + QLatin1Char('\n') + second;
}

std::vector<RowModel<JobRow>::Column> jobColumns() {
  return {{RecordsPlace::tr("Work order"),
           [](const JobRow& row) { return twoLines(toQt(row.workOrder), dateText(row.started)); },
           [](const JobRow& row) { return toQt(row.workOrder); }},
          {RecordsPlace::tr("Machine"),
           [](const JobRow& row) {
             return twoLines(toQt(row.machine), row.serial.empty() ? toQt(row.model) : toQt(row.serial));
           }},
          {RecordsPlace::tr("Sheet"),
           [](const JobRow& row) {
             return row.quick ? RecordsPlace::tr("%1\nno issued sheet").arg(toQt(row.title))
                              : toQt(row.title);
           }},
          {RecordsPlace::tr("State"), stateText}};
}

}  // namespace

RecordsPlace::RecordsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent)
    : QWidget(parent), m_workspace(workspace), m_model(jobColumns()) {
  m_page = new DeskPage(workspace, m_model,
                        {tr("Records"), tr("Search work order, machine, serial, title"), QString()});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_page);
  passFocusOn(*this, *m_page);
  makeFilters();
  makeActions();
  connect(m_page->search(), &QLineEdit::textChanged, this, &RecordsPlace::reload);
  connect(m_page, &DeskPage::chosen, this, &RecordsPlace::show);
  connect(&navigator, &Navigator::recordWanted, this, &RecordsPlace::openRecord);
  connect(&workspace, &Workspace::recordsChanged, this, &RecordsPlace::reload);
  connect(&workspace, &Workspace::jobChanged, this, [this] { m_stale = true; });
  connect(&workspace, &Workspace::shopChanged, this, [this] { openOther(); });
  fillNamed();
  reload();
}

/// Nothing that was read from the file before is taken for what stands in this one.
void RecordsPlace::openOther() {
  m_shown.reset();
  m_model.setRows({});
  fillNamed();
  reload();
}

/// A job grows entry by entry at the bench; the list is read anew when somebody looks at it.
void RecordsPlace::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (m_stale) reload();
}

void RecordsPlace::makeFilters() {
  m_state = new QComboBox;
  m_state->setObjectName(QStringLiteral("stateChoice"));
  m_state->setAccessibleName(tr("Which state"));
  m_state->addItem(tr("Any state"));
  m_state->addItem(tr("Sealed"), static_cast<int>(JobState::Sealed));
  m_state->addItem(tr("Finished, not sealed"), static_cast<int>(JobState::Finished));
  m_state->addItem(tr("Called off"), static_cast<int>(JobState::CalledOff));
  m_named = new QComboBox;
  m_named->setObjectName(QStringLiteral("namedChoice"));
  m_named->setAccessibleName(tr("Person or tool named in it"));
  for (QComboBox* choice : {m_state, m_named}) {
    choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_page->addBesideSearch(choice);
    connect(choice, &QComboBox::activated, this, &RecordsPlace::reload);
  }
}

/// Person signs and tool ids; the item's data says which of the two.
void RecordsPlace::fillNamed() {
  m_named->clear();
  m_named->addItem(tr("Anybody, any tool"));
  if (!m_workspace.hasShop()) return;
  const auto people = m_workspace.shop().people().all();
  const auto tools = m_workspace.shop().tools().all();
  if (!people || !tools) return m_page->sayTrouble(wordedWithPlace(people ? tools.error() : people.error()));
  for (const Person& person : *people)
    m_named->addItem(toQt(person.name), QStringList{QStringLiteral("person"), toQt(person.sign)});
  for (const TorqueTool& tool : *tools)
    m_named->addItem(tr("Tool %1").arg(toQt(tool.id)), QStringList{QStringLiteral("tool"), toQt(tool.id)});
}

void RecordsPlace::makeActions() {
  m_seal = m_page->addAction(tr("Seal…"), "sealButton");
  m_seal->setProperty(kMainProperty, true);
  m_verify = m_page->addAction(tr("Verify"), "verifyButton");
  QPushButton* pdf = m_page->addAction(tr("Save PDF…"), "pdfButton");
  m_marked = m_page->addAction(tr("Save PDF marked unsound…"), "markedPdfButton");
  m_json = m_page->addAction(tr("Save JSON…"), "jsonButton");
  QPushButton* csv = m_page->addAction(tr("Save CSV…"), "csvButton");
  m_addendum = m_page->addAction(tr("Later note…"), "addendumButton");
  m_promote = m_page->addAction(tr("Make a sheet of it…"), "promoteButton");
  connect(m_seal, &QPushButton::clicked, this, &RecordsPlace::askSeal);
  connect(m_verify, &QPushButton::clicked, this, &RecordsPlace::verify);
  connect(m_addendum, &QPushButton::clicked, this, &RecordsPlace::askAddendum);
  connect(m_promote, &QPushButton::clicked, this, &RecordsPlace::askPromotion);
  connect(pdf, &QPushButton::clicked, this,
          [this] { ask(tr("Save the record to hand over"), &RecordsPlace::savePdf); });
  connect(m_marked, &QPushButton::clicked, this,
          [this] { ask(tr("Save pages that say that they are unsound"), &RecordsPlace::saveMarkedPdf); });
  connect(m_json, &QPushButton::clicked, this,
          [this] { saveJson(askPath(tr("Save the sealed record"), QStringLiteral("json"))); });
  connect(csv, &QPushButton::clicked, this,
          [this] { saveCsv(askPath(tr("Save the tightenings"), QStringLiteral("csv"))); });
}

JobQuery RecordsPlace::query() const {
  JobQuery out;
  out.words = fromQt(m_page->search()->text());
  out.most = kMostShown;
  out.states = {JobState::Finished, JobState::Sealed, JobState::CalledOff, JobState::Disposed};
  if (const QVariant state = m_state->currentData(); state.isValid())
    out.states = {static_cast<JobState>(state.toInt())};
  const QStringList named = m_named->currentData().toStringList();
  if (named.size() == 2) (named[0] == QLatin1String("tool") ? out.tool : out.person) = fromQt(named[1]);
  return out;
}

void RecordsPlace::reload() {
  m_stale = false;
  if (!m_workspace.hasShop()) return list({});
  auto rows = m_workspace.shop().findJobs(query());
  if (!rows) {
    list({});
    return m_page->count(worded(rows.error()));
  }
  list(std::move(*rows));
}

void RecordsPlace::list(Listed<JobRow> found) {
  std::vector<JobRow>& rows = found.rows;
  m_total = found.total;
  const std::optional<Id> before = m_shown ? std::optional(m_shown->row.job) : std::nullopt;
  m_page->count(found.cut()
                    ? tr("the latest %1 of %2; type more to see the others").arg(rows.size()).arg(found.total)
                    : tr("%n listed", nullptr, static_cast<int>(rows.size())));
  if (!rows.empty() && rows == m_model.rows()) return;
  const auto kept =
      std::find_if(rows.begin(), rows.end(), [&](const JobRow& row) { return row.job == before; });
  const int index = kept == rows.end() ? -1 : static_cast<int>(kept - rows.begin());
  m_model.setRows(std::move(rows));
  m_page->choose(index);
}

QString RecordsPlace::whenEmpty() const {
  if (!m_workspace.hasShop()) return tr("No shop file is open. Open one, and its records stand here.");
  const bool everything =
      m_page->search()->text().isEmpty() && m_state->currentIndex() == 0 && m_named->currentIndex() == 0;
  if (everything)
    return tr("No job is finished yet. Do one at the bench; finished and sealed, its record stands here.");
  return tr("Nothing fits. Search by fewer letters, or for anybody and any tool.");
}

/// A record that stays the chosen one while somebody types is neither read nor laid out again.
void RecordsPlace::show(int row) {
  if (row >= 0 && m_shown && m_shown->row == m_model.row(row)) return;
  m_page->say(QString());
  m_page->form()->close();
  m_shown.reset();
  if (row < 0) return m_page->presentNothing(whenEmpty());
  auto kept = keptRecord(m_workspace, m_model.row(row));
  if (!kept) return m_page->presentNothing(wordedWithPlace(kept.error()));
  m_shown = std::move(*kept);
  m_marked->hide();
  m_seal->setVisible(m_shown->row.state == JobState::Finished);
  for (QPushButton* button : {m_verify, m_json, m_addendum}) button->setVisible(m_shown->sealed());
  m_promote->setVisible(m_shown->sealed() && m_shown->row.quick);
  m_page->present(recordDocument(m_shown->content, inWindow));
}

void RecordsPlace::openRecord(const Id& job) {
  const QSignalBlocker quiet(m_page->search());
  m_page->search()->clear();
  m_state->setCurrentIndex(0);
  m_named->setCurrentIndex(0);
  reload();
  if (chooseJob(job)) return;
  JobQuery wanted;
  wanted.job = job;
  const auto found = m_workspace.shop().findJobs(wanted);
  if (!found) return m_page->sayTrouble(wordedWithPlace(found.error()));
  if (found->rows.empty() || found->rows.front().state == JobState::Open)
    return m_page->sayTrouble(tr("That job is not finished yet; go on with it at the bench."));
  // Older than the list goes back: it stands behind the others.
  std::vector<JobRow> rows = m_model.rows();
  rows.push_back(found->rows.front());
  list({std::move(rows), m_total});
  chooseJob(job);
}

bool RecordsPlace::chooseJob(const Id& job) {
  for (int row = 0; row < m_model.rowCount(); ++row)
    if (m_model.row(row).job == job) return m_page->choose(row), true;
  return false;
}

void RecordsPlace::verify() {
  const SealAnswer answer = verifyKept(*m_shown, m_workspace.shop().identity().key);
  answer.yes ? m_page->say(answer.sentence) : m_page->sayTrouble(answer.sentence);
}

void RecordsPlace::askSeal() {
  m_page->form()->ask(
      {tr("The record is sealed as it stands, in your name. It can be handed over then, and is "
          "never reopened."),
       tr("Seal it"),
       {}},
      [this, job = m_shown->row.job](const Signed& by) -> Result<void> {
        CW_CHECK(m_workspace.seal(job, by));
        m_page->say(tr("Sealed."));
        return {};
      });
}

void RecordsPlace::askAddendum() {
  m_page->form()->ask(
      {tr("The record stays as it was sealed. What turned out later is sealed beside it, and "
          "shown and printed with it."),
       tr("Seal this note"), tr("What turned out, and what it is now")},
      [this, job = m_shown->row.job](const Signed& by) { return m_workspace.addAddendum(job, by); });
}

void RecordsPlace::askPromotion() {
  m_page->form()->ask(
      {tr("This quick joint becomes a draft sheet, for a trainer to go on with; its record stays as "
          "it was sealed."),
       tr("Make it a draft"),
       {}},
      [this, job = m_shown->row.job](const Signed& by) -> Result<void> {
        CW_CHECK(m_workspace.promoteQuickJoint(job, by));
        return {};
      });
}

QString RecordsPlace::proposedName() const {
  return toQt(m_shown->row.workOrder + " " + m_shown->row.machine)
      .replace(QLatin1Char('/'), QLatin1Char('-'));
}

QString RecordsPlace::askPath(const QString& what, const QString& extension) {
  return QFileDialog::getSaveFileName(this, what, proposedName() + QLatin1Char('.') + extension,
                                      QStringLiteral("*.") + extension);
}

void RecordsPlace::ask(const QString& what, void (RecordsPlace::*save)(const PdfTarget&)) {
  if (const auto target = askPdf(this, what, proposedName())) (this->*save)(*target);
}

SealAnswer RecordsPlace::judge() const {
  if (!m_shown->sealed()) return {true, QString()};
  return verifyKept(*m_shown, m_workspace.shop().identity().key);
}

bool RecordsPlace::mayLeave() {
  const SealAnswer answer = judge();
  m_marked->setVisible(!answer.yes);
  if (!answer.yes) m_page->sayTrouble(tr("Nothing was saved. Does it verify? %1").arg(answer.sentence));
  return answer.yes;
}

void RecordsPlace::savePdf(const PdfTarget& target) {
  if (mayLeave()) savePages(target, {});
}

void RecordsPlace::saveMarkedPdf(const PdfTarget& target) {
  savePages(target, judge().stamp);
}

void RecordsPlace::savePages(const PdfTarget& target, const Stamp& stamp) {
  const RecordPages pages = recordPages(m_workspace, *m_shown, target.size, stamp);
  save(toQt(target.path), pages.pdf, pages.standing);
}

void RecordsPlace::saveJson(const QString& path) {
  if (!path.isEmpty() && mayLeave()) save(path, m_shown->record);
}

void RecordsPlace::saveCsv(const QString& path) {
  if (!path.isEmpty() && mayLeave()) save(path, csvOfTightenings(m_shown->content));
}

void RecordsPlace::save(const QString& path, const std::string& bytes, const QString& standing) {
  if (const auto written = writeFile(fromQt(path), bytes, Existing::Replaced); !written)
    return m_page->sayTrouble(wordedWithPlace(written.error()));
  const QString saved = tr("Saved as %1.").arg(path);
  m_page->say(standing.isEmpty() ? saved : saved + QLatin1Char(' ') + standing);
}

QWidget* makeRecordsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent) {
  return new RecordsPlace(workspace, navigator, parent);
}

}  // namespace cw
