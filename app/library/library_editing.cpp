#include <QComboBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QPushButton>

#include "app/common/background.h"
#include "app/common/wording.h"
#include "app/documents/desk_page.h"
#include "app/fields/sign_form.h"
#include "app/library/import_words.h"
#include "app/library/library_place.h"
#include "app/library/row_form.h"
#include "app/library/row_words.h"
#include "core/store/file_io.h"

// How the library grows: rows added, copied, changed and withdrawn, tables taken in and out.

namespace cw {

void LibraryPlace::makeActions() {
  m_copy = m_page->addAction(tr("Copy and change…"), "copyRowButton");
  m_change = m_page->addAction(tr("Change…"), "changeRowButton");
  m_withdraw = m_page->addAction(tr("Withdraw…"), "withdrawRowButton");
  m_export = m_page->addAction(tr("Save this table as CSV…"), "exportTableButton");
  connect(m_copy, &QPushButton::clicked, this, &LibraryPlace::askCopy);
  connect(m_change, &QPushButton::clicked, this, &LibraryPlace::askChange);
  connect(m_withdraw, &QPushButton::clicked, this, &LibraryPlace::askWithdraw);
  connect(m_export, &QPushButton::clicked, this, [this] {
    const QString name = toQt(nameOf(shown().entry.kind)) + QLatin1String(".csv");
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the table"), name, tr("Tables (*.csv)"));
    if (!path.isEmpty()) exportTo(path);
  });
  connect(m_form, &RowForm::wanted, this, &LibraryPlace::signRow);
  connect(m_form, &RowForm::left, this, [this] { show(m_page->chosenRow()); });
}

void LibraryPlace::makeFoot() {
  m_kind = new QComboBox;
  m_kind->setObjectName(QStringLiteral("newKindChoice"));
  m_kind->setAccessibleName(tr("Kind of the row to add"));
  for (const RowKind kind : kRowKinds) m_kind->addItem(kindText(kind), static_cast<int>(kind));
  m_add = new QPushButton(tr("Add a row…"));
  m_add->setObjectName(QStringLiteral("addRowButton"));
  m_import = new QPushButton(tr("Import a CSV table…"));
  m_import->setObjectName(QStringLiteral("importTableButton"));
  for (QWidget* widget : std::initializer_list<QWidget*>{m_kind, m_add, m_import})
    m_page->addBelowList(widget);
  connect(m_add, &QPushButton::clicked, this, &LibraryPlace::askNew);
  connect(m_import, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Table to take in"), QString(), tr("Tables (*.csv)"));
    if (!path.isEmpty()) importFrom(path);
  });
}

std::vector<std::string> LibraryPlace::shownCells() {
  const LibraryHit& hit = shown();
  if (hit.shopRow == 0) return cellsOf(shippedCatalogue().rows(), hit.entry.kind, hit.entry.row);
  const auto history = m_workspace.shop().library().history(hit.shopRow);
  return history ? history->back().cells : std::vector<std::string>();
}

void LibraryPlace::askNew() {
  const auto kind = static_cast<RowKind>(m_kind->currentData().toInt());
  ask(kind, {}, 0, tr("A new row of the shop: %1").arg(kindText(kind)));
}

/// The name is left to be written anew: no row of the shop takes the name of another.
void LibraryPlace::askCopy() {
  std::vector<std::string> cells = shownCells();
  const std::vector<std::string> columns = columnsOf(shown().entry.kind);
  for (std::size_t i = 0; i < cells.size(); ++i)
    if (i == 0 || columns[i] == "aliases") cells[i].clear();
  ask(shown().entry.kind, cells, 0,
      tr("A copy of %1, under a name of its own").arg(toQt(shown().entry.name)));
}

void LibraryPlace::askChange() {
  ask(shown().entry.kind, shownCells(), shown().shopRow,
      tr("A new state of %1; the one before stays in its history").arg(toQt(shown().entry.name)));
}

void LibraryPlace::ask(RowKind kind, const std::vector<std::string>& cells, std::int64_t row,
                       const QString& states) {
  m_changed = row;
  m_page->say(QString());
  m_page->form()->close();
  m_page->presentForm(m_form);
  m_form->ask(kind, cells, states);
}

void LibraryPlace::signRow() {
  m_page->form()->ask(
      {tr("The row is found by name from now on, everywhere in this shop."), tr("Take it in"), {}},
      [this, row = m_changed](const Signed& by) -> Result<void> {
        CW_TRY(person, m_workspace.shop().people().find(fromQt(by.sign)));
        const std::vector<std::string> cells = m_form->cells(person.name);
        auto done = row == 0 ? m_workspace.addLibraryRow(m_form->kind(), cells, by)
                             : m_workspace.changeLibraryRow(row, cells, by);
        if (done)
          m_page->search()->setText(toQt(cells.front()));
        else
          m_form->showRefusal(done.error());
        return done;
      });
}

void LibraryPlace::askWithdraw() {
  m_page->form()->ask(
      {tr("%1 is no longer found by name. Its history stays.").arg(toQt(shown().entry.name)), tr("Withdraw"),
       tr("Why")},
      [this, row = shown().shopRow](const Signed& by) { return m_workspace.withdrawLibraryRow(row, by); });
}

void LibraryPlace::importFrom(const QString& path) {
  m_page->form()->close();
  m_page->say(tr("Reading %1 …").arg(QFileInfo(path).fileName()));
  struct Read {
    std::string csv;
    ImportRehearsal rehearsal;
  };
  inBackground(
      this,
      [file = m_workspace.shop().file(), from = fromQt(path)]() -> Result<Read> {
        CW_TRY(csv, readFile(from, kLargestLibraryTable));
        SystemClock clock;
        CW_TRY(shop, Shop::open(file, clock));
        CW_TRY(rehearsal, shop->library().rehearse(csv));
        return Read{std::move(csv), std::move(rehearsal)};
      },
      [this, path](const Result<Read>& read) {
        if (read)
          showRehearsal(path, read->csv, read->rehearsal);
        else
          m_page->sayTrouble(wordedWithPlace(read.error()));
        emit imported();
      });
}

void LibraryPlace::showRehearsal(const QString& path, const std::string& csv,
                                 const ImportRehearsal& rehearsal) {
  m_page->say(QString());
  m_page->present(rehearsalDocument(rehearsal, QFileInfo(path).fileName()));
  for (QPushButton* button : {m_copy, m_change, m_withdraw, m_export}) button->hide();
  if (!rehearsal.clean()) return;
  m_page->form()->ask(
      {tr("Rows taken into the shop's library: %1.").arg(rehearsal.rows), tr("Take them in"), {}},
      [this, csv](const Signed& by) {
        m_page->say(tr("Taking them in …"));
        return m_workspace.importLibrary(csv, by, [this](const Result<std::size_t>& taken) {
          if (taken)
            m_page->say(tr("Rows taken in: %1.").arg(*taken));
          else
            m_page->sayTrouble(wordedWithPlace(taken.error()));
          emit imported();
        });
      });
}

void LibraryPlace::exportTo(const QString& path) {
  const RowKind kind = shown().entry.kind;
  std::string table = tableOf(shippedCatalogue().rows(), kind);
  if (shown().shopRow != 0) {
    auto own = m_workspace.shop().library().table(kind);
    if (!own) return m_page->sayTrouble(wordedWithPlace(own.error()));
    table = std::move(*own);
  }
  if (const auto written = writeFile(fromQt(path), table, Existing::Replaced); !written)
    return m_page->sayTrouble(wordedWithPlace(written.error()));
  m_page->say(tr("Saved as %1.").arg(path));
}

}  // namespace cw
