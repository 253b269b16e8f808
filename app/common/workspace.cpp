#include "app/common/workspace.h"

#include "app/common/background.h"
#include "app/common/settings.h"
#include "app/common/wording.h"
#include "core/base/csv.h"
#include "core/store/file_io.h"
#include "core/store/found_shop.h"
#include "core/store/pin_gate.h"
#include "core/store/promote.h"
#include "core/store/sheet_review.h"

namespace cw {

Workspace::Workspace(Clock& clock, QObject* parent) : QObject(parent), m_clock(clock) {}

Workspace::~Workspace() = default;

Result<void> Workspace::openShop(const QString& file) {
  ShopSettings settings;
  settings.patience = kWindowPatience;
  CW_TRY(shop, Shop::open(fromQt(file), m_clock, settings));
  m_shop = std::move(shop);
  Settings().setShopFile(file);
  emit shopChanged();
  return {};
}

Result<Id> Workspace::startJob(Beginning beginning) {
  beginning.job = newId();
  beginning.entry = newId();
  CW_CHECK(m_shop->ledger().start(beginning));
  emit jobChanged(beginning.job);
  return beginning.job;
}

Result<Receipt> Workspace::enter(const Id& job, Draft draft, const Pins& pins) {
  draft.id = newId();
  auto receipt = m_shop->ledger().append(job, draft, pins);
  if (receipt) emit jobChanged(job);
  return receipt;
}

Result<void> Workspace::createShop(const NewShop& wanted) {
  CW_TRY(lead, founder(fromQt(wanted.leadSign), fromQt(wanted.leadName), fromQt(wanted.leadPin)));
  const QString keyFile = toQt(usualKeyFile(fromQt(wanted.file)).string());
  CW_TRY(shop, foundShop(fromQt(wanted.file), fromQt(wanted.name), fromQt(keyFile), m_clock));
  CW_CHECK(shop->people().add(lead));
  m_shop = std::move(shop);
  Settings().setShopFile(wanted.file);
  emit shopChanged();
  return {};
}

Result<RegisterCounts> Workspace::takeInRegister(std::string_view bytes, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_TRY(counts, addRegister(*m_shop, bytes, deed));
  emit peopleChanged();
  emit toolsChanged();
  return counts;
}

Result<SecretKey> Workspace::secretKey() const {
  std::string file = usualKeyFile(m_shop->file()).string();
  const QString elsewhere = Settings().keyFile();
  std::error_code hidden;
  if (!std::filesystem::exists(file, hidden) && !elsewhere.isEmpty()) file = fromQt(elsewhere);
  CW_TRY(text, readFile(file, 4096));
  return readSecretKey(text);
}

Result<void> Workspace::seal(const Id& job, const Signed& by) {
  CW_TRY(key, secretKey());
  CW_CHECK(m_shop->records().seal(job, {fromQt(by.sign), fromQt(by.pin)}, key, CW_VERSION));
  emit jobChanged(job);
  emit recordsChanged();
  return {};
}

Result<void> Workspace::addAddendum(const Id& job, const Signed& by) {
  CW_TRY(key, secretKey());
  CW_CHECK(m_shop->records().addAddendum(job, fromQt(by.sign), fromQt(by.pin), fromQt(by.remark), key));
  emit recordsChanged();
  return {};
}

Result<Deed> Workspace::deedOf(const Signed& by) {
  const Deed deed{fromQt(by.sign), m_clock.now(), fromQt(by.remark)};
  CW_CHECK(PinGate(m_shop->database(), m_shop->people()).check(deed.by, fromQt(by.pin), Id(), deed.at));
  return deed;
}

Result<void> Workspace::doToTool(ToolDeed what, const std::string& tool, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK((m_shop->tools().*what)(tool, deed));
  emit toolsChanged();
  return {};
}

Result<SheetRow> Workspace::importSheet(std::string_view bytes, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_TRY(row, m_shop->sheets().saveDraft(bytes, deed));
  emit sheetsChanged();
  return row;
}

Result<SheetRow> Workspace::promoteQuickJoint(const Id& job, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_TRY(row, cw::promoteQuickJoint(*m_shop, job, deed));
  emit sheetsChanged();
  return row;
}

Result<void> Workspace::moveSheet(SheetMove move, const SheetRow& row, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK((m_shop->sheets().*move)(row.sheet, row.revision, deed));
  emit sheetsChanged();
  return {};
}

Result<void> Workspace::issueSheet(const SheetRow& row, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK(issueReviewed(*m_shop, row.sheet, row.revision, deed));
  emit sheetsChanged();
  return {};
}

Result<const Catalogue*> Workspace::catalogue() {
  if (!m_shop) return &shippedCatalogue();
  return m_shop->library().catalogue();
}

Result<void> Workspace::importLibrary(std::string csv, const Signed& by,
                                      std::function<void(const Result<std::size_t>&)> then) {
  CW_TRY(deed, deedOf(by));
  inBackground(
      this,
      [csv = std::move(csv), deed, file = m_shop->file()]() -> Result<std::size_t> {
        SystemClock clock;
        CW_TRY(shop, Shop::open(file, clock));  // a connection stays on the thread that opened it
        return shop->library().import(csv, deed);
      },
      [this, then = std::move(then)](const Result<std::size_t>& taken) {
        if (taken) emit libraryChanged();
        then(taken);
      });
  return {};
}

Result<void> Workspace::addLibraryRow(RowKind kind, const std::vector<std::string>& cells, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK(m_shop->library().import(csvLine(columnsOf(kind)) + csvLine(cells), deed));
  emit libraryChanged();
  return {};
}

Result<void> Workspace::changeLibraryRow(std::int64_t row, const std::vector<std::string>& cells,
                                         const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK(m_shop->library().change(row, cells, deed));
  emit libraryChanged();
  return {};
}

Result<void> Workspace::withdrawLibraryRow(std::int64_t row, const Signed& by) {
  CW_TRY(deed, deedOf(by));
  CW_CHECK(m_shop->library().withdraw(row, deed));
  emit libraryChanged();
  return {};
}

Id Workspace::newId() {
  return Id::make(m_clock.now());
}

}  // namespace cw
