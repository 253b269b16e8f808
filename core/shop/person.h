#pragma once
#include <set>
#include <string>

#include "core/base/id.h"
#include "core/base/words.h"

namespace cw {

/// What somebody may do in the shop; a person can hold several.
enum class Role { Technician, ServiceWriter, Trainer, Inspector, ShopLead };

template <>
struct Words<Role> {
  static constexpr std::array<std::pair<Role, std::string_view>, 5> kAll{
      {{Role::Technician, "technician"},
       {Role::ServiceWriter, "service-writer"},
       {Role::Trainer, "trainer"},
       {Role::Inspector, "inspector"},
       {Role::ShopLead, "shop-lead"}}};
};

struct Person {
  std::string sign;  ///< short name they enter to sign, unique in the shop: "mira"; [a-z0-9-], 1 to 24
  std::string name;  ///< printed name
  std::set<Role> roles;
  bool apprentice = false;  ///< every entry needs a supervisor
  bool active = true;
  std::string pinHash;  ///< Argon2id string of libsodium; never leaves the shop file

  bool may(Role role) const { return roles.contains(role); }
};

/// InvalidInput unless 1 to 24 of a-z, 0-9 and '-'.
Result<void> checkSign(std::string_view sign);

/// How much work one PIN check costs. Interactive is for people; Quick is for tests and the demo's
/// invented people only, and is as weak as it sounds.
enum class PinStrength { Interactive, Quick };

/// Argon2id hash of a PIN of 4 to 12 digits (InvalidInput otherwise).
Result<std::string> hashPin(std::string_view pin, PinStrength strength = PinStrength::Interactive);
bool pinMatches(const std::string& hash, std::string_view pin);

}  // namespace cw
