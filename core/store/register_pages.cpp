#include "core/store/register_pages.h"

#include "core/shop/shop_json.h"

namespace cw {
namespace {

tl::unexpected<Error> badPage(const std::string& place, Message why) {
  return fail(ErrorCode::Corrupt, place, "", std::move(why), "put back a backup");
}

template <class Thing>
Result<Thing> thingOfPage(const std::string& place, const std::string& page,
                          Result<Thing> (*read)(const Json&, const std::string&)) {
  const auto json = parseJson(page);
  if (!json) return badPage(place, {"its page cannot be read: %1", {sentence(json.error())}});
  auto thing = read(*json, place);
  if (!thing && thing.error().code == ErrorCode::NewerVersion) return thing;
  if (!thing) return badPage(place, {"its page cannot be read: %1", {sentence(thing.error())}});
  return thing;
}

}  // namespace

Result<Person> personOfPage(const std::string& sign, const std::string& page) {
  const std::string place = "person " + sign;
  CW_TRY(person, thingOfPage<Person>(place, page, personFromJson));
  if (person.sign == sign) return std::move(person);
  return badPage(place, {"its page is that of “%1”", {shown(person.sign)}});
}

Result<TorqueTool> toolOfPage(const std::string& id, const std::string& page) {
  const std::string place = "tool " + id;
  CW_TRY(tool, thingOfPage<TorqueTool>(place, page, toolFromJson));
  if (tool.id == id) return std::move(tool);
  return badPage(place, {"its page is that of “%1”", {shown(tool.id)}});
}

}  // namespace cw
