#include "core/store/shop.h"

#include "core/base/digest.h"
#include "core/store/connection.h"
#include "core/store/identity.h"
#include "core/store/inspect.h"

namespace cw {
namespace {

std::string hexOf(const PublicKey& key) {
  return hex(std::string_view(reinterpret_cast<const char*>(key.bytes.data()), key.bytes.size()));
}

}  // namespace

Shop::Shop(Database database, ShopIdentity identity, Clock& clock, const ShopSettings& settings)
    : m_database(std::move(database)),
      m_identity(std::move(identity)),
      m_people(m_database),
      m_tools(m_database, m_people),
      m_machines(m_database),
      m_sheets(m_database, m_people),
      m_library(m_database, m_people),
      m_ledger({m_database, m_people, m_tools, m_machines, m_sheets, m_library, clock, m_identity.id,
                settings.idle}),
      m_records(m_database, m_identity, m_people, m_ledger, clock) {}

Result<std::unique_ptr<Shop>> Shop::create(const std::filesystem::path& file, const std::string& name,
                                           const PublicKey& key, Clock& clock, const ShopSettings& settings) {
  if (name.find_first_not_of(' ') == std::string::npos)
    return fail(ErrorCode::InvalidInput, "name", name, "the shop has no name",
                "write the name that records print");
  ShopIdentity identity{Id::make(clock.now()), name, key};
  CW_TRY(database, Database::create(file, settings.patience));
  CW_CHECK(database.connection().run("INSERT INTO shop(one, id, name, public_key) VALUES (1, ?, ?, ?)",
                                     {identity.id.text(), identity.name, hexOf(key)}));
  return std::unique_ptr<Shop>(new Shop(std::move(database), std::move(identity), clock, settings));
}

Result<std::unique_ptr<Shop>> Shop::open(const std::filesystem::path& file, Clock& clock,
                                         const ShopSettings& settings) {
  CW_TRY(database, Database::open(file, clock.now(), settings.patience));
  CW_TRY(identity, readIdentity(database.connection()));
  return std::unique_ptr<Shop>(new Shop(std::move(database), std::move(identity), clock, settings));
}

Result<void> Shop::backUpTo(const std::filesystem::path& target) {
  return backUp(m_database.connection(), target);
}

Result<Listed<JobRow>> Shop::findJobs(const JobQuery& query) {
  return cw::findJobs(m_database, query);
}

}  // namespace cw
