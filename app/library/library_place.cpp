#include "app/library/library_place.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/documents/desk_page.h"
#include "app/fields/sign_form.h"
#include "app/library/row_form.h"
#include "app/library/row_words.h"
#include "core/base/found.h"
#include "core/report/describe.h"

namespace cw {
namespace {

constexpr std::size_t kRowsListed = 200;

/// What tells a row from others of its name: the sizes of a grade, "coarse", what a condition is.
QString tellingPart(const SearchEntry& row) {
  const bool saysItsKind =
      row.kind == RowKind::Head || row.kind == RowKind::SizeLimits || row.kind == RowKind::PrevailingTorque;
  return saysItsKind ? QString() : toQt(row.note.substr(0, row.note.find("; ")));
}

std::vector<RowModel<LibraryHit>::Column> libraryColumns() {
  return {{LibraryPlace::tr("Name"),
           [](const LibraryHit& hit) {
             const QString part = tellingPart(hit.entry);
             return part.isEmpty() ? toQt(hit.entry.name) : toQt(hit.entry.name) + QLatin1Char('\n') + part;
           },
           [](const LibraryHit& hit) { return toQt(hit.entry.name); }},
          {LibraryPlace::tr("Kind"), [](const LibraryHit& hit) {
             const QString kind = kindText(hit.entry.kind);
             return hit.shopRow == 0 ? kind : kind + QLatin1Char('\n') + LibraryPlace::tr("the shop's own");
           }}};
}

QString revisionText(const std::string& event) {
  if (event == "added") return LibraryPlace::tr("Added");
  return event == "changed" ? LibraryPlace::tr("Changed") : LibraryPlace::tr("Withdrawn");
}

/// Who wrote which state of a row of the shop, the latest first.
Section statesOf(const std::vector<LibraryRevision>& history) {
  Table table{{{fromQt(LibraryPlace::tr("When")), 28},
               {fromQt(LibraryPlace::tr("What")), 16},
               {fromQt(LibraryPlace::tr("Who")), 16},
               {fromQt(LibraryPlace::tr("Remark")), 40}},
              {}};
  for (auto each = history.rbegin(); each != history.rend(); ++each)
    table.rows.push_back({{timeText(each->deed.at)},
                          {fromQt(revisionText(each->event))},
                          {each->deed.by},
                          {each->deed.remark}});
  return {fromQt(LibraryPlace::tr("History")), {std::move(table)}, false};
}

}  // namespace

LibraryPlace::LibraryPlace(Workspace& workspace, QWidget* parent)
    : QWidget(parent), m_workspace(workspace), m_model(libraryColumns()) {
  m_page = new DeskPage(workspace, m_model,
                        {tr("Library"), tr("Search thread, grade, condition, material, torque"), {}});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_page);
  passFocusOn(*this, *m_page);
  m_form = new RowForm;
  m_whose = new QComboBox;
  m_whose->setObjectName(QStringLiteral("whoseChoice"));
  m_whose->setAccessibleName(tr("Whose rows"));
  m_whose->addItem(tr("All rows"));
  m_whose->addItem(tr("The shop's own rows"));
  m_whose->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  m_page->addBesideSearch(m_whose);
  makeActions();
  makeFoot();
  connect(m_whose, &QComboBox::activated, this, &LibraryPlace::reload);
  connect(m_page->search(), &QLineEdit::textChanged, this, &LibraryPlace::reload);
  connect(m_page, &DeskPage::chosen, this, &LibraryPlace::show);
  for (const auto changed : {&Workspace::shopChanged, &Workspace::libraryChanged})
    connect(&workspace, changed, this, &LibraryPlace::reload);
  reload();
}

void LibraryPlace::reload() {
  for (QWidget* widget : std::initializer_list<QWidget*>{m_whose, m_kind, m_add, m_import})
    widget->setVisible(m_workspace.hasShop());
  auto found = hits();
  if (found) return list(std::move(*found));
  list({});
  m_page->count(worded(found.error()));
}

Result<Listed<LibraryHit>> LibraryPlace::hits() {
  const std::string typed = fromQt(m_page->search()->text());
  ShopLibrary* own = m_workspace.hasShop() ? &m_workspace.shop().library() : nullptr;
  if (own != nullptr && m_whose->currentIndex() == 1) return own->find(typed, kRowsListed);
  if (!m_shipped) {
    CW_TRY(made, LibrarySearch::of(shippedCatalogue().rows()));
    m_shipped = std::move(made);
  }
  return findInLibrary(*m_shipped, own, typed, kRowsListed);
}

void LibraryPlace::list(Listed<LibraryHit> found) {
  const int count = static_cast<int>(found.rows.size());
  m_page->count(found.cut()
                    ? tr("the first %1 of %2; type more to see the others").arg(count).arg(found.total)
                    : tr("%n listed", nullptr, count));
  m_model.setRows(std::move(found.rows));
  m_page->choose(-1);
}

void LibraryPlace::show(int row) {
  m_page->say(QString());
  m_page->form()->close();
  if (row >= 0) return present(m_model.row(row));
  const bool ownOnly = m_whose->currentIndex() == 1 && m_page->search()->text().isEmpty();
  m_page->presentNothing(
      ownOnly ? tr("The shop has no rows of its own yet. Copy one that came with the program, add one, "
                   "or import a table.")
              : tr("Nothing fits. Search by fewer letters."));
}

void LibraryPlace::present(const LibraryHit& hit) {
  const bool own = hit.shopRow != 0;
  m_export->show();
  m_copy->setVisible(m_workspace.hasShop());
  m_change->setVisible(own);
  m_withdraw->setVisible(own);
  const auto catalogue = m_workspace.catalogue();
  if (!catalogue) return m_page->presentNothing(wordedWithPlace(catalogue.error()));
  if (!own) return m_page->present(rowDocument(**catalogue, hit.entry.kind, hit.entry.row));
  ShopLibrary& library = m_workspace.shop().library();
  const auto at = ifFound(library.place(hit.shopRow));
  if (!at) return m_page->presentNothing(wordedWithPlace(at.error()));
  const auto history = library.history(hit.shopRow);
  if (!history) return m_page->presentNothing(wordedWithPlace(history.error()));
  Document document;
  if (*at) {
    document = rowDocument(**catalogue, (*at)->kind, (*at)->row);
  } else {
    document.title = hit.entry.name;
    document.notice =
        fromQt(tr("Not in use: the library that came with the program now has this name. Change "
                  "its name, or withdraw it."));
  }
  document.sections.push_back(statesOf(*history));
  m_page->present(std::move(document));
}

const LibraryHit& LibraryPlace::shown() const {
  return m_model.row(m_page->chosenRow());
}

QWidget* makeLibraryPlace(Workspace& workspace, Navigator&, QWidget* parent) {
  return new LibraryPlace(workspace, parent);
}

}  // namespace cw
