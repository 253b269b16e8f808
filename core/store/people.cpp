#include "core/store/people.h"

#include <algorithm>

#include "core/base/found.h"
#include "core/shop/shop_json.h"
#include "core/store/cached.h"
#include "core/store/database.h"
#include "core/store/register_pages.h"

namespace cw {
namespace {

Result<void> check(const Person& person) {
  CW_CHECK(checkSign(person.sign));
  if (person.name.find_first_not_of(' ') != std::string::npos) return {};
  return fail(ErrorCode::InvalidInput, "name", person.name, "the name is missing", "write the printed name");
}

}  // namespace

People::People(Database& database) : m_database(database), m_cache(std::make_unique<Cached<Person>>()) {}
People::~People() = default;

Result<std::vector<Person>> People::read() {
  CW_TRY(rows, collect(m_database.connection(), "SELECT sign, page, pin_hash FROM person ORDER BY sign", {},
                       [](const SqlRows& row) { return std::tuple(row.text(0), row.text(1), row.text(2)); }));
  std::vector<Person> out;
  for (auto& [sign, page, pinHash] : rows) {
    CW_TRY(person, personOfPage(sign, page));
    person.pinHash = std::move(pinHash);
    out.push_back(std::move(person));
  }
  return out;
}

Result<std::span<const Person>> People::all() {
  CW_TRY(people, m_cache->get(m_database.connection(), [&] { return read(); }));
  return std::span<const Person>(*people);
}

Result<Person> People::find(const std::string& sign) {
  CW_TRY(people, all());
  for (const Person& person : people)
    if (person.sign == sign) return person;
  return fail(ErrorCode::NotFound, "sign", sign, {"nobody here signs as “%1”", {shown(sign)}},
              "write the sign of a person of this shop");
}

Result<int> People::activeCount() {
  CW_TRY(people, all());
  return static_cast<int>(
      std::count_if(people.begin(), people.end(), [](const Person& p) { return p.active; }));
}

Result<void> People::add(const Person& person) {
  CW_CHECK(check(person));
  if (person.pinHash.empty())
    return fail(ErrorCode::InvalidInput, "PIN", "", "there is no PIN", "choose 4 to 12 digits");
  CW_TRY(known, ifFound(find(person.sign)));
  if (known)
    return fail(ErrorCode::AlreadyDone, "sign", person.sign, {"“%1” is taken", {person.sign}},
                "choose another sign");
  CW_CHECK(m_database.connection().run(
      "INSERT INTO person(sign, page, active, pin_hash) VALUES (?, ?, ?, ?)",
      {person.sign, canonical(personToJson(person)), person.active, person.pinHash}));
  m_cache->forget();
  return {};
}

Result<void> People::change(const Person& person) {
  CW_CHECK(check(person));
  CW_TRY(before, find(person.sign));
  CW_CHECK(
      m_database.connection().run("UPDATE person SET page = ?, active = ?, pin_hash = ? WHERE sign = ?",
                                  {canonical(personToJson(person)), person.active,
                                   person.pinHash.empty() ? before.pinHash : person.pinHash, person.sign}));
  m_cache->forget();
  return {};
}

Result<Person> People::require(const std::string& sign, std::initializer_list<Role> roles) {
  CW_TRY(person, find(sign));
  if (!person.active)
    return fail(ErrorCode::NotPermitted, "sign", sign, {"%1 no longer works here", {person.name}},
                "let somebody who does sign");
  if (std::any_of(roles.begin(), roles.end(), [&](Role role) { return person.may(role); })) return person;
  std::string wanted;
  for (const Role role : roles) wanted += (wanted.empty() ? "" : " or ") + std::string(wordOf(role));
  return fail(ErrorCode::NotPermitted, "sign", sign, {"%1 may not do this", {person.name}},
              {"it takes the role %1", {wanted}});
}

}  // namespace cw
