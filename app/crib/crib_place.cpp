#include "app/crib/crib_place.h"

#include <QFileDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/crib/tool_words.h"
#include "app/documents/desk_page.h"
#include "app/fields/sign_form.h"
#include "core/report/record_words.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

QString dueText(const TorqueTool& tool) {
  const Calibration* last = tool.lastCalibration();
  return last == nullptr ? CribPlace::tr("never calibrated") : toQt(isoDate(last->due));
}

std::vector<RowModel<TorqueTool>::Column> columns(const std::function<std::chrono::year_month_day()>& today) {
  const Qt::Alignment right = Qt::AlignRight | Qt::AlignVCenter;
  return {{CribPlace::tr("Tool"),
           [](const TorqueTool& tool) { return toQt(tool.id) + QLatin1Char('\n') + toQt(tool.kind); }},
          {CribPlace::tr("Range"), rangeOf,
           [](const TorqueTool& tool) { return in(kNewtonMetre, tool.scales.front().high.value()); }, right},
          {CribPlace::tr("Due"), dueText},
          {CribPlace::tr("Standing"), [today](const TorqueTool& tool) { return standingOf(tool, today()); }}};
}

}  // namespace

CribPlace::CribPlace(Workspace& workspace, QWidget* parent)
    : QWidget(parent), m_workspace(workspace), m_model(columns([this] { return today(); })) {
  m_page = new DeskPage(workspace, m_model, {tr("Torque tools"), tr("Search id, kind, range, standing"), {}});
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->addWidget(m_page);
  passFocusOn(*this, *m_page);
  makeActions();
  makeImport();
  connect(m_page->search(), &QLineEdit::textChanged, m_page, &DeskPage::filter);
  connect(m_page, &DeskPage::chosen, this, &CribPlace::show);
  connect(&workspace, &Workspace::toolsChanged, this, &CribPlace::reload);
  connect(&workspace, &Workspace::shopChanged, this, &CribPlace::reload);
  reload();
}

std::chrono::year_month_day CribPlace::today() const {
  return localDate(m_workspace.clock().now());
}

void CribPlace::makeActions() {
  m_drop = m_page->addAction(tr("Dropped"), "dropButton");
  m_quarantine = m_page->addAction(tr("Quarantine…"), "quarantineButton");
  m_release = m_page->addAction(tr("Release…"), "releaseButton");
  connect(m_drop, &QPushButton::clicked, this, [this] {
    ask({tr("%1 was dropped or is in doubt: it is due for calibration at once.").arg(tool()),
         tr("It was dropped"), tr("What happened (may stay empty)")},
        &Tools::drop);
  });
  connect(m_quarantine, &QPushButton::clicked, this, [this] {
    ask({tr("%1 goes into quarantine: nobody is offered it until it is released.").arg(tool()),
         tr("Put in quarantine"), tr("Why")},
        &Tools::quarantine);
  });
  connect(m_release, &QPushButton::clicked, this, [this] {
    ask({tr("%1 leaves quarantine. It is still judged by its calibration.").arg(tool()), tr("Release"),
         tr("What was found")},
        &Tools::release);
  });
}

void CribPlace::makeImport() {
  m_import = new QPushButton(tr("Take in a register…"));
  m_import->setObjectName(QStringLiteral("registerButton"));
  m_import->setToolTip(tr("Adds people, tools and machines"));
  m_page->addBelowList(m_import);
  connect(m_import, &QPushButton::clicked, this, [this] {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Register to take in"), QString(), tr("Registers (*.json)"));
    if (!path.isEmpty()) importFrom(path);
  });
}

void CribPlace::importFrom(const QString& path) {
  const auto bytes = readFile(fromQt(path));
  if (!bytes) return m_page->sayTrouble(wordedWithPlace(bytes.error()));
  m_page->say(QString());
  m_page->form()->ask(
      {tr("The people, tools and machines of %1 are added to the shop.").arg(path), tr("Take them in"), {}},
      [this, file = *bytes](const Signed& by) -> Result<void> {
        CW_TRY(counts, m_workspace.takeInRegister(file, by));
        m_page->say(tr("Added %1 people, %2 tools and %3 machines.")
                        .arg(counts.people)
                        .arg(counts.tools)
                        .arg(counts.machines));
        return {};
      });
}

void CribPlace::ask(const SignQuestion& question, ToolDeed deed) {
  m_page->form()->ask(question, [this, deed, id = fromQt(tool())](const Signed& by) {
    return m_workspace.doToTool(deed, id, by);
  });
}

QString CribPlace::tool() const {
  return toQt(m_model.row(m_page->chosenRow()).id);
}

void CribPlace::reload() {
  m_import->setVisible(m_workspace.hasShop());
  if (!m_workspace.hasShop()) return list({});
  const auto tools = m_workspace.shop().tools().all();
  if (tools) return list({tools->begin(), tools->end()});
  list({});
  m_page->count(worded(tools.error()));
}

void CribPlace::list(std::vector<TorqueTool> tools) {
  const int before = m_page->chosenRow();
  const std::string shown = before < 0 ? std::string() : m_model.row(before).id;
  const auto still =
      std::find_if(tools.begin(), tools.end(), [&](const TorqueTool& each) { return each.id == shown; });
  const int index = still == tools.end() ? -1 : static_cast<int>(still - tools.begin());
  m_page->count(tr("%n listed", nullptr, static_cast<int>(tools.size())));
  m_model.setRows(std::move(tools));
  m_page->choose(index);
}

QString CribPlace::whenEmpty() const {
  if (!m_workspace.hasShop()) return tr("No shop file is open. Open one, and its tools stand here.");
  if (m_model.rowCount() > 0) return tr("No tool fits. Search by fewer letters.");
  return tr("The crib is empty. Add the shop's tools from a register file; DEVELOPERS.md shows one.");
}

void CribPlace::show(int row) {
  m_page->form()->close();
  if (row < 0) return m_page->presentNothing(whenEmpty());
  showTool(m_model.row(row));
}

void CribPlace::showTool(const TorqueTool& tool) {
  auto history = m_workspace.shop().tools().history(tool.id);
  if (!history) return m_page->presentNothing(wordedWithPlace(history.error()));
  m_drop->setVisible(tool.status != ToolStatus::Retired && !tool.dueNow);
  m_quarantine->setVisible(tool.status == ToolStatus::InUse);
  m_release->setVisible(tool.status == ToolStatus::Quarantined);
  m_page->present(toolDocument(tool, *history, today()));
}

QWidget* makeCribPlace(Workspace& workspace, Navigator&, QWidget* parent) {
  return new CribPlace(workspace, parent);
}

}  // namespace cw
