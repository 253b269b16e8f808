#pragma once
#include <QObject>
#include <functional>
#include <memory>

#include "core/store/register_file.h"
#include "core/store/shop.h"

namespace cw {

/// A window does not stand still for longer than a hand waits, where another program is writing.
inline constexpr std::chrono::milliseconds kWindowPatience{1000};

/// What somebody says under their name and PIN.
struct Signed {
  QString sign, pin, remark;
};

/// A shop to make, and who leads it.
struct NewShop {
  QString file, name, leadName, leadSign, leadPin;
};

/// What can happen to a tool, and to a revision of a sheet: Tools::drop, Sheets::submit …
using ToolDeed = Result<void> (Tools::*)(const std::string& id, const Deed& deed);
using SheetMove = Result<void> (Sheets::*)(const Id& sheet, const std::string& revision, const Deed& deed);

/// The open shop and the one way to change it: places call here, and all places hear of it after the commit.
/// Reads go to `shop()` directly.
class Workspace final : public QObject {
  Q_OBJECT

 public:
  explicit Workspace(Clock& clock, QObject* parent = nullptr);
  ~Workspace() override;

  /// Opens or makes a shop file and forgets the one before. Errors of Shop, foundShop and founder.
  Result<void> openShop(const QString& file);
  Result<void> createShop(const NewShop& wanted);
  bool hasShop() const { return m_shop != nullptr; }
  Shop& shop() { return *m_shop; }
  Clock& clock() { return m_clock; }

  // The bench. Each answers after the entry is durable.
  Result<Id> startJob(Beginning beginning);
  /// What a draft states, under a new id; `pins` of those who give theirs for it.
  Result<Receipt> enter(const Id& job, Draft draft, const Pins& pins = {});
  /// Seals a finished job with the shop's secret key from the key file of the settings.
  Result<void> seal(const Id& job, const Signed& by);

  /// Seals what turned out after the record was sealed: the remark.
  Result<void> addAddendum(const Id& job, const Signed& by);

  // The registers. Errors of PinGate and of what is done.
  Result<RegisterCounts> takeInRegister(std::string_view bytes, const Signed& by);
  Result<void> doToTool(ToolDeed deed, const std::string& tool, const Signed& by);
  Result<SheetRow> importSheet(std::string_view bytes, const Signed& by);
  /// Makes the sheet of a sealed quick joint a draft.
  Result<SheetRow> promoteQuickJoint(const Id& job, const Signed& by);
  Result<void> moveSheet(SheetMove move, const SheetRow& row, const Signed& by);
  /// NotPermitted with the gravest finding if its review stops it.
  Result<void> issueSheet(const SheetRow& row, const Signed& by);

  // The library.
  /// What names mean: the shipped rows and those of the shop that is open. Valid until libraryChanged.
  /// The errors of ShopLibrary.
  Result<const Catalogue*> catalogue();
  /// Takes a table into the shop's library in the background, all of it or nothing; `then` hears how many
  /// rows it were. Answers at once for a wrong name or PIN.
  Result<void> importLibrary(std::string csv, const Signed& by,
                             std::function<void(const Result<std::size_t>&)> then);
  Result<void> addLibraryRow(RowKind kind, const std::vector<std::string>& cells, const Signed& by);
  Result<void> changeLibraryRow(std::int64_t row, const std::vector<std::string>& cells, const Signed& by);
  Result<void> withdrawLibraryRow(std::int64_t row, const Signed& by);

  /// The shop's sealing key, from the key file beside the shop file or else the one of the settings.
  Result<SecretKey> secretKey() const;

  Id newId();

 signals:
  void shopChanged();                  ///< another shop is open
  void jobChanged(const cw::Id& job);  ///< an entry more, or sealed
  void recordsChanged();
  void sheetsChanged();
  void toolsChanged();
  void peopleChanged();
  void libraryChanged();

 private:
  Result<Deed> deedOf(const Signed& by);

  Clock& m_clock;
  std::unique_ptr<Shop> m_shop;
};

}  // namespace cw
