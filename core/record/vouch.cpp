#include "core/record/vouch.h"

namespace cw {

Json toJson(const Voucher& voucher) {
  Json::Array roles;
  for (const Role role : voucher.roles) roles.push_back(wordOf(role));
  Json out;
  out.set("person", voucher.person).set("name", voucher.name).set("roles", std::move(roles));
  if (voucher.apprentice) out.set("apprentice", true);
  return out.set("how", wordOf(voucher.how));
}

Result<Voucher> voucherFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  Voucher out;
  CW_TRY(person, reader.nonEmpty("person"));
  CW_TRY(name, reader.text("name"));
  CW_TRY(roles, reader.textsOrEmpty("roles"));
  for (const std::string& written : roles) {
    auto role = fromWord<Role>(written);
    if (!role) return fail(within(reader.placeOf("roles"), role.error()));
    out.roles.insert(*role);
  }
  CW_TRY(apprentice, reader.booleanOr("apprentice", false));
  CW_TRY(written, reader.text("how"));
  CW_TRY(how, fromWord<Vouch>(written, reader.placeOf("how")));
  CW_CHECK(reader.nothingElse());
  out.person = person, out.name = name, out.apprentice = apprentice, out.how = how;
  return out;
}

}  // namespace cw
