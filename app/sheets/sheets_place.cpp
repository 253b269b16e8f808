#include "app/sheets/sheets_place.h"

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
#include "app/print/document_pdf.h"
#include "core/procedure/bench_limits.h"
#include "core/procedure/sheet_file.h"
#include "core/report/paper_sheet.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

std::vector<RowModel<SheetRow>::Column> sheetColumns() {
  return {{SheetsPlace::tr("Sheet"), [](const SheetRow& row) { return toQt(row.title); }},
          {SheetsPlace::tr("For"), [](const SheetRow& row) { return toQt(row.model); }},
          {SheetsPlace::tr("Revision"), [](const SheetRow& row) { return toQt(row.revision); }},
          {SheetsPlace::tr("Status"), [](const SheetRow& row) { return statusText(row.status); }}};
}

}  // namespace

SheetsPlace::SheetsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent)
    : QWidget(parent), m_workspace(workspace), m_model(sheetColumns()) {
  m_page = new DeskPage(workspace, m_model, {tr("Sheets"), tr("Search title, model, revision, status"), {}});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_page);
  passFocusOn(*this, *m_page);
  makeActions(navigator);
  makeImport();
  connect(&navigator, &Navigator::inHandWanted, this, [this, &navigator](const QString& place) {
    if (place == QLatin1String("sheets") && m_shown && m_joint->count() > 0) openFigures(navigator);
  });
  connect(m_page->search(), &QLineEdit::textChanged, m_page, &DeskPage::filter);
  connect(m_page, &DeskPage::chosen, this, &SheetsPlace::show);
  for (const auto changed : {&Workspace::sheetsChanged, &Workspace::toolsChanged, &Workspace::peopleChanged,
                             &Workspace::shopChanged})
    connect(&workspace, changed, this, &SheetsPlace::reload);
  reload();
}

void SheetsPlace::makeActions(Navigator& navigator) {
  m_submit = m_page->addAction(tr("Submit for review"), "submitButton");
  m_issue = m_page->addAction(tr("Issue"), "issueButton");
  m_sendBack = m_page->addAction(tr("Send back"), "sendBackButton");
  m_withdraw = m_page->addAction(tr("Withdraw"), "withdrawButton");
  QPushButton* paper = m_page->addAction(tr("Save for paper…"), "paperButton");
  m_joint = new QComboBox;
  m_joint->setObjectName(QStringLiteral("jointChoice"));
  m_joint->setAccessibleName(tr("Joint whose specification Figures shows"));
  m_page->addAction(m_joint);
  m_figures = m_page->addAction(tr("Open in Figures"), "figuresButton");
  for (QPushButton* main : {m_submit, m_issue}) main->setProperty(kMainProperty, true);
  connect(m_figures, &QPushButton::clicked, this, [this, &navigator] { openFigures(navigator); });
  connect(paper, &QPushButton::clicked, this, [this] {
    const QString name = toQt(m_shown->sheet.title + " " + m_shown->sheet.revision);
    if (const auto target = askPdf(this, tr("Save the sheet for paper"), name)) savePdf(*target);
  });
  connect(m_submit, &QPushButton::clicked, this, [this] {
    askMove(tr("It goes to somebody else to be reviewed and issued."), tr("Submit"), &Sheets::submit);
  });
  connect(m_issue, &QPushButton::clicked, this, &SheetsPlace::askIssue);
  connect(m_sendBack, &QPushButton::clicked, this,
          [this] { askMove(tr("It becomes a draft again."), tr("Send back"), &Sheets::sendBack); });
  connect(m_withdraw, &QPushButton::clicked, this, [this] {
    askMove(tr("No job can start by this revision any more."), tr("Withdraw"), &Sheets::withdraw);
  });
}

void SheetsPlace::makeImport() {
  m_import = new QPushButton(tr("Import a sheet file…"));
  m_import->setObjectName(QStringLiteral("importButton"));
  m_page->addBelowList(m_import);
  connect(m_import, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Sheet to take in"), QString(), tr("Sheets (*.json)"));
    if (!path.isEmpty()) importFrom(path);
  });
}

void SheetsPlace::importFrom(const QString& path) {
  const auto bytes = readFile(fromQt(path));
  if (!bytes) return m_page->sayTrouble(wordedWithPlace(bytes.error()));
  const auto sheet = readSheet(*bytes);
  if (!sheet) return m_page->sayTrouble(wordedWithPlace(sheet.error()));
  m_page->say(QString());
  m_page->form()->ask(
      {tr("“%1”, revision %2, is taken in as a draft.").arg(toQt(sheet->title), toQt(sheet->revision)),
       tr("Take it in"),
       {}},
      [this, file = *bytes](const Signed& by) -> Result<void> {
        CW_CHECK(m_workspace.importSheet(file, by));
        return {};
      });
}

void SheetsPlace::reload() {
  m_import->setVisible(m_workspace.hasShop());
  if (!m_workspace.hasShop()) return list({});
  auto rows = m_workspace.shop().sheets().all();
  if (rows) return list(std::move(*rows));
  list({});
  m_page->count(worded(rows.error()));
}

void SheetsPlace::list(std::vector<SheetRow> rows) {
  const auto same = [&](const SheetRow& row) {
    return m_shown && row.sheet == m_shown->row.sheet && row.revision == m_shown->row.revision;
  };
  const auto kept = std::find_if(rows.begin(), rows.end(), same);
  const int index = kept == rows.end() ? -1 : static_cast<int>(kept - rows.begin());
  m_page->count(tr("%n listed", nullptr, static_cast<int>(rows.size())));
  m_model.setRows(std::move(rows));
  m_page->choose(index);
}

QString SheetsPlace::whenEmpty() const {
  if (!m_workspace.hasShop()) return tr("No shop file is open. Open one, and its sheets stand here.");
  if (m_model.rowCount() > 0) return tr("No sheet fits. Search by fewer letters.");
  return tr("No sheet yet. Import a sheet file; it becomes a draft, to be reviewed and issued.");
}

void SheetsPlace::show(int row) {
  m_page->say(QString());
  m_page->form()->close();
  m_shown.reset();
  if (row < 0) return m_page->presentNothing(whenEmpty());
  auto kept = keptSheet(m_workspace.shop(), m_model.row(row));
  if (!kept) return m_page->presentNothing(wordedWithPlace(kept.error()));
  m_shown = std::move(*kept);
  offerActions();
  fillJoints();
  m_page->present(documentOf(*m_shown));
}

void SheetsPlace::offerActions() {
  const SheetStatus status = m_shown->row.status;
  m_submit->setVisible(status == SheetStatus::Draft);
  m_issue->setVisible(status == SheetStatus::InReview);
  m_sendBack->setVisible(status == SheetStatus::InReview);
  m_withdraw->setVisible(status == SheetStatus::Issued);
}

void SheetsPlace::fillJoints() {
  m_joint->clear();
  for (const Joint& joint : m_shown->sheet.joints) m_joint->addItem(toQt(joint.name), toQt(joint.id));
  m_joint->setVisible(m_joint->count() > 1);
  m_figures->setVisible(m_joint->count() > 0);
}

void SheetsPlace::openFigures(Navigator& navigator) {
  const Sheet& sheet = m_shown->sheet;
  const Joint& joint = *sheet.joint(fromQt(m_joint->currentData().toString()));
  navigator.openFigures(*sheet.specification(joint.specification), *sheet.fastener(joint.fastener));
}

void SheetsPlace::savePdf(const PdfTarget& target) {
  if (const auto can = checkBenchCan(m_shown->sheet); !can)
    return m_page->sayTrouble(wordedWithPlace(can.error()));
  const Document document = backupSheet(m_shown->sheet, m_shown->row.digest, inWindow);
  if (const auto written = writeDocumentPdf(document, target.path, target.size, Existing::Replaced); !written)
    return m_page->sayTrouble(wordedWithPlace(written.error()));
  m_page->say(tr("Saved as %1.").arg(toQt(target.path)));
}

void SheetsPlace::askMove(const QString& states, const QString& button, SheetMove way) {
  m_page->form()->ask(
      {states, button, tr("Remark (may stay empty)")},
      [this, way, row = m_shown->row](const Signed& by) { return m_workspace.moveSheet(way, row, by); });
}

void SheetsPlace::askIssue() {
  m_page->form()->ask(
      {tr("Jobs start by this revision from now on; the one before is superseded. Whoever "
          "issues it had no hand in it."),
       tr("Issue"), tr("Remark (may stay empty)")},
      [this, row = m_shown->row](const Signed& by) { return m_workspace.issueSheet(row, by); });
}

QWidget* makeSheetsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent) {
  return new SheetsPlace(workspace, navigator, parent);
}

}  // namespace cw
