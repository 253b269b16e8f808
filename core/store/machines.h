#pragma once
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/shop/machine.h"

namespace cw {

class Database;

/// The customers' units that the shop knows.
class Machines {
 public:
  explicit Machines(Database& database) : m_database(database) {}

  Result<std::vector<Machine>> all();           ///< by id
  Result<Machine> find(const std::string& id);  ///< NotFound
  Result<void> add(const Machine& machine);     ///< AlreadyDone if the id is taken; InvalidInput without one
  Result<void> change(const Machine& machine);  ///< NotFound

 private:
  Database& m_database;
};

}  // namespace cw
