#pragma once
#include <set>
#include <string>
#include <vector>

#include "core/record/body_fields.h"
#include "core/shop/person.h"

namespace cw {

/// How somebody named in an entry stood behind it.
enum class Vouch {
  Session,  ///< signed in to this job with name and PIN, and at work on it since
  Pin,      ///< gave the PIN for this very entry
  Phone,    ///< said so by phone, as the person who entered it says
  Written,  ///< was named by the person who entered it
};

template <>
struct Words<Vouch> {
  static constexpr std::array<std::pair<Vouch, std::string_view>, 4> kAll{{{Vouch::Session, "session"},
                                                                         {Vouch::Pin, "pin"},
                                                                         {Vouch::Phone, "phone"},
                                                                         {Vouch::Written, "written"}}};
};

/// A person as they stood in the shop when the entry was made, and how they vouched for it.
struct Voucher {
  std::string person;  ///< sign
  std::string name;    ///< printed name
  std::set<Role> roles;
  bool apprentice = false;
  Vouch how = Vouch::Written;

  bool may(Role role) const { return roles.contains(role); }
  /// Was here: gave the PIN, for this entry or in this session.
  bool here() const { return how == Vouch::Session || how == Vouch::Pin; }
  bool operator==(const Voucher&) const = default;
};

/// {"apprentice","how","name","person","roles"}.
Json toJson(const Voucher& voucher);
/// InvalidInput with the place.
Result<Voucher> voucherFromJson(const Json& json, const std::string& place);

}  // namespace cw
