#include "app/library/library_place.h"

#include <QLineEdit>
#include <QVBoxLayout>

#include "app/common/desk_page.h"
#include "app/common/wording.h"
#include "app/library/row_words.h"
#include "core/fastener/catalogue.h"

namespace cw {
namespace {

constexpr std::size_t kRowsListed = 200;

/// What tells a row from others of its name: the sizes of a grade, "coarse", what a condition is.
QString tellingPart(const SearchEntry& row) {
  const bool saysItsKind =
      row.kind == RowKind::Head || row.kind == RowKind::SizeLimits || row.kind == RowKind::PrevailingTorque;
  return saysItsKind ? QString() : toQt(row.note.substr(0, row.note.find("; ")));
}

std::vector<RowModel<SearchEntry>::Column> libraryColumns() {
  return {{LibraryPlace::tr("Name"),
           [](const SearchEntry& row) {
             const QString part = tellingPart(row);
             return part.isEmpty() ? toQt(row.name) : toQt(row.name) + QLatin1Char('\n') + part;
           },
           [](const SearchEntry& row) { return toQt(row.name); }},
          {LibraryPlace::tr("Kind"), [](const SearchEntry& row) { return kindText(row.kind); }}};
}

}  // namespace

LibraryPlace::LibraryPlace(Workspace& workspace, QWidget* parent)
    : QWidget(parent), m_workspace(workspace), m_model(libraryColumns()) {
  m_page = new DeskPage(workspace, m_model,
                        {tr("Library"), tr("Search thread, grade, condition, material, torque"), {}});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_page);
  setFocusProxy(m_page);
  connect(m_page->search(), &QLineEdit::textChanged, this, &LibraryPlace::reload);
  connect(m_page, &DeskPage::chosen, this, &LibraryPlace::show);
  connect(&workspace, &Workspace::shopChanged, this, &LibraryPlace::reload);
  reload();
}

void LibraryPlace::reload() {
  if (!m_shipped) {
    auto made = LibrarySearch::of(shippedCatalogue().rows());
    if (!made) return m_page->count(worded(made.error()));
    m_shipped = std::move(*made);
  }
  const auto found = m_shipped->find(fromQt(m_page->search()->text()), kRowsListed);
  if (!found) return m_page->count(worded(found.error()));
  std::vector<SearchEntry> rows;
  for (const FoundRow& each : *found)
    rows.push_back(m_shipped->entries()[static_cast<std::size_t>(each.number)]);
  list(std::move(rows));
}

void LibraryPlace::list(std::vector<SearchEntry> rows) {
  const bool cut = rows.size() == kRowsListed;
  const int count = static_cast<int>(rows.size());
  m_page->count(cut ? tr("the first %n; type more to see the others", nullptr, count)
                    : tr("%n listed", nullptr, count));
  m_model.setRows(std::move(rows));
  m_page->choose(-1);
}

void LibraryPlace::show(int row) {
  if (row < 0) return m_page->presentNothing(tr("Nothing fits. Search by fewer letters."));
  const SearchEntry& entry = m_model.row(row);
  m_page->present(rowDocument(shippedCatalogue(), entry.kind, entry.row));
}

QWidget* makeLibraryPlace(Workspace& workspace, Navigator&, QWidget* parent) {
  return new LibraryPlace(workspace, parent);
}

}  // namespace cw
