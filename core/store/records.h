#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/record/key.h"
#include "core/record/vouch.h"
#include "core/store/deed.h"
#include "core/store/pin_gate.h"

namespace cw {

class Database;
class Ledger;
class People;
struct ShopIdentity;

/// Who seals: by sign, with the PIN, or signed in to the job in this process.
struct Sealer {
  std::string sign;
  std::optional<std::string> pin{};
};

/// A sealed record and its addenda in their order, byte for byte.
struct KeptFiles {
  std::string record;
  std::vector<std::string> addenda;
};

/// Sealed records with their addenda, byte for byte.
class Records {
 public:
  Records(Database& database, const ShopIdentity& shop, People& people, Ledger& ledger, Clock& clock);

  /// Seals a finished job, verifies what it made, stores it and answers with its bytes. `program`: the
  /// version that seals. OutOfTurn if the job is not finished, AlreadyDone if it is sealed, NotPermitted for
  /// a key that is not this shop's or for somebody who may not seal, WrongPin, Corrupt if the record would not
  /// verify.
  Result<std::string> seal(const Id& job, const Sealer& by, const SecretKey& key, const std::string& program);

  Result<std::string> bytes(const Id& job);  ///< NotFound
  Result<KeptFiles> files(const Id& job);    ///< as of one moment; NotFound without a record

  /// Seals what turned out later and answers with its bytes. Name and PIN as in Ledger; InvalidInput without
  /// a text; NotFound without a record.
  Result<std::string> addAddendum(const Id& job, const std::string& sign, std::string_view pin,
                                  const std::string& text, const SecretKey& key);

  /// Deletes entries, record and addenda of a job whose time to be kept is over. The job stays listed, and
  /// the log says who did it and why. NotPermitted unless by a shop lead; InvalidInput without a reason.
  Result<void> dispose(const Id& job, const Deed& deed);

 private:
  Result<void> checkKey(const SecretKey& key) const;
  Result<Voucher> sealer(const Id& job, const Sealer& by);
  Result<std::string> make(const Id& job, const Voucher& by, const SecretKey& key, const std::string& program);

  Database& m_database;
  const ShopIdentity& m_shop;
  People& m_people;
  Ledger& m_ledger;
  Clock& m_clock;
  PinGate m_gate;
};

}  // namespace cw
