#include "core/store/register_file.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/base/found.h"
#include "core/shop/shop_json.h"

namespace cw {
namespace {

struct Register {
  std::vector<Person> people;
  std::vector<TorqueTool> tools;
  std::vector<Machine> machines;
};

Result<Person> readPerson(const Json& json, const std::string& place, PinStrength strength) {
  CW_TRY(person, personFromJson(json, place));
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(pin, reader.nonEmpty("pin"));
  auto hash = hashPin(pin, strength);
  if (!hash) return fail(within(place + ".pin", hash.error()));
  person.pinHash = *hash;
  return person;
}

Result<Machine> readMachine(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(id, reader.nonEmpty("id"));
  CW_TRY(model, reader.textOr("model", ""));
  CW_TRY(serial, reader.textOr("serial", ""));
  CW_TRY(hours, reader.textOr("hours", ""));
  return Machine{id, model, serial, hours};
}

template <class T, class Read>
Result<void> readAll(JsonReader& reader, std::string_view key, std::vector<T>& out, Read read) {
  CW_TRY(list, reader.listOrEmpty(key));
  for (const Json& element : *list) {
    CW_TRY(one, read(element, fmt::format("{}[{}]", key, out.size())));
    out.push_back(std::move(one));
  }
  return {};
}

Result<Register> readRegister(std::string_view bytes, PinStrength strength) {
  CW_TRY(json, parseJson(bytes));
  CW_TRY(reader, JsonReader::of(json, ""));
  CW_TRY(format, reader.text("format"));
  if (format != "clampwright.register")
    return fail(ErrorCode::InvalidInput, "format", format, {"“%1” is no register", {shown(format)}},
                "a file of format clampwright.register");
  CW_CHECK(reader.integer("version", 1, 1));
  Register out;
  CW_CHECK(readAll(reader, "people", out.people, [&](const Json& one, const std::string& place) {
    return readPerson(one, place, strength);
  }));
  CW_CHECK(readAll(reader, "tools", out.tools, toolFromJson));
  CW_CHECK(readAll(reader, "machines", out.machines, readMachine));
  for (const auto& [key, value] : reader.rest())
    return fail(ErrorCode::InvalidInput, key, key, "this field is not known here",
                "write people, tools and machines");
  return out;
}

/// Every name once in the file, and none that the shop has already.
template <class T, class NameOf, class Find>
Result<void> checkNew(const std::vector<T>& all, const char* what, NameOf nameOf, Find find) {
  for (auto one = all.begin(); one != all.end(); ++one) {
    const std::string& name = nameOf(*one);
    const bool twice = std::any_of(all.begin(), one, [&](const T& other) { return nameOf(other) == name; });
    CW_TRY(known, ifFound(find(name)));
    if (twice || known)
      return fail(ErrorCode::AlreadyDone, what, name, {"“%1” is taken", {shown(name)}},
                  "choose another, or leave it out");
  }
  return {};
}

}  // namespace

Result<RegisterCounts> addRegister(Shop& shop, std::string_view bytes, const Deed& deed,
                                   PinStrength strength) {
  CW_TRY(active, shop.people().activeCount());
  if (active > 0) CW_CHECK(shop.people().require(deed.by, {Role::ShopLead}));
  CW_TRY(all, readRegister(bytes, strength));
  CW_CHECK(checkNew(
      all.people, "people", [](const Person& p) -> const std::string& { return p.sign; },
      [&](const std::string& sign) { return shop.people().find(sign); }));
  CW_CHECK(checkNew(
      all.tools, "tools", [](const TorqueTool& t) -> const std::string& { return t.id; },
      [&](const std::string& id) { return shop.tools().find(id); }));
  CW_CHECK(checkNew(
      all.machines, "machines", [](const Machine& m) -> const std::string& { return m.id; },
      [&](const std::string& id) { return shop.machines().find(id); }));
  for (const Person& person : all.people) CW_CHECK(shop.people().add(person));
  for (const TorqueTool& tool : all.tools) CW_CHECK(shop.tools().add(tool, deed));
  for (const Machine& machine : all.machines) CW_CHECK(shop.machines().add(machine));
  return RegisterCounts{static_cast<int>(all.people.size()), static_cast<int>(all.tools.size()),
                        static_cast<int>(all.machines.size())};
}

}  // namespace cw
