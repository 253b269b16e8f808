#pragma once
#include <chrono>
#include <string>
#include <string_view>

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/base/result.h"

namespace cw {

class Database;
class People;

/// So many wrong PINs in a row, and the next is not even tried for a while.
inline constexpr int kWrongPins = 5;
inline constexpr std::chrono::minutes kLockOut{15};

/// Checks name and PIN, and keeps the log of every attempt.
class PinGate {
 public:
  PinGate(Database& database, People& people) : m_database(database), m_people(people) {}

  /// NotFound for an unknown sign, WrongPin, NotPermitted while locked out. The attempt is in the log before
  /// the answer is given; an empty PIN is none.
  Result<void> check(const std::string& sign, std::string_view pin, const Id& job, const Moment& now);

 private:
  Result<void> checkLockOut(const std::string& sign, const Id& job, const Moment& now);
  Result<void> log(const std::string& sign, const Id& job, const Moment& now, std::string_view outcome);
  Database& m_database;
  People& m_people;
};

}  // namespace cw
