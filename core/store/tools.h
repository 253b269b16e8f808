#pragma once
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/shop/tool.h"
#include "core/store/deed.h"

namespace cw {

class Database;
class People;
template <class Row>
class Cached;

/// One line of a tool's history, with its page as it was from then on.
struct ToolEvent {
  std::string event;  ///< entered, changed, calibrated, dropped, quarantined, released, retired
  Deed deed;
  TorqueTool tool;
};

/// The tool crib: each tool's page, and every page it ever had.
class Tools {
 public:
  Tools(Database& database, People& people);
  ~Tools();

  /// Every tool by id, the retired included. Valid until the next call.
  Result<std::span<const TorqueTool>> all();
  Result<TorqueTool> find(const std::string& id);  ///< NotFound
  Result<std::vector<ToolEvent>> history(const std::string& id);

  /// AlreadyDone if the id is taken; InvalidInput or OutOfRange for a field.
  Result<void> add(const TorqueTool& tool, const Deed& deed);
  /// What is marked on it, range and deviation; NotFound.
  Result<void> change(const TorqueTool& tool, const Deed& deed);

  // What happens to a tool; NotFound for each.
  /// Appends a calibration, which ends a doubt and starts the count of cycles anew. InvalidInput if it is
  /// older than the last one or due before its own date.
  Result<void> calibrate(const std::string& id, const Calibration& calibration, const Deed& deed);
  /// Dropped or doubted: due at once.
  Result<void> drop(const std::string& id, const Deed& deed);
  Result<void> quarantine(const std::string& id, const Deed& deed);
  /// Ends a quarantine, by a shop lead. NotPermitted for anybody else; OutOfTurn if it is in none.
  Result<void> release(const std::string& id, const Deed& deed);
  Result<void> retire(const std::string& id, const Deed& deed);

 private:
  Result<std::vector<TorqueTool>> read();
  Result<void> write(const TorqueTool& tool, std::string_view event, const Deed& deed);
  Database& m_database;
  People& m_people;
  std::unique_ptr<Cached<TorqueTool>> m_cache;
};

}  // namespace cw
