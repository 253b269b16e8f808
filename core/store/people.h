#pragma once
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/shop/person.h"

namespace cw {

class Database;
template <class Row>
class Cached;

/// Who works, or worked, in the shop. Nobody is ever deleted.
class People {
 public:
  explicit People(Database& database);
  ~People();

  /// Everybody by sign, the inactive included. Valid until the next call.
  Result<std::span<const Person>> all();
  Result<Person> find(const std::string& sign);  ///< NotFound
  Result<int> activeCount();

  /// AlreadyDone if the sign is taken; InvalidInput for a bad sign, an empty name or no PIN.
  Result<void> add(const Person& person);
  /// Name, roles and state; an empty `pinHash` leaves the PIN as it is. NotFound.
  Result<void> change(const Person& person);

  /// The person if active and holding one of the roles; NotFound or NotPermitted otherwise.
  Result<Person> require(const std::string& sign, std::initializer_list<Role> roles);

 private:
  Result<std::vector<Person>> read();
  Database& m_database;
  std::unique_ptr<Cached<Person>> m_cache;
};

}  // namespace cw
