#include "core/store/identity.h"

#include "core/base/digest.h"
#include "core/store/database.h"
#include "core/store/migrations.h"

namespace cw {

Result<void> checkIdentity(Connection& connection) {
  CW_TRY(id, connection.pragma("application_id"));
  if (id != std::to_string(kApplicationId))
    return fail(ErrorCode::Corrupt, connection.file(), "", "this is no shop file",
                "name a file that Clampwright made as a shop file");
  CW_TRY(number, connection.pragmaNumber("user_version"));
  if (number <= newestVersion()) return {};
  const std::string version = std::to_string(number);
  return fail(ErrorCode::NewerVersion, connection.file(), version,
              {"a newer program wrote this shop file (version %1; this one knows %2)",
               {version, std::to_string(newestVersion())}},
              "use that program");
}

Result<ShopIdentity> readIdentity(Connection& connection) {
  struct Line {
    std::string id, name, key;
  };
  CW_TRY(line, first(connection, "SELECT id, name, public_key FROM shop", {}, [](const SqlRows& row) {
           return Line{row.text(0), row.text(1), row.text(2)};
         }));
  if (!line)
    return fail(ErrorCode::Corrupt, connection.file(), "", "the file names no shop", "put back a backup");
  CW_TRY(id, Id::parse(line->id));
  CW_TRY(key, digestFromHex(line->key));
  return ShopIdentity{id, line->name, PublicKey{key}};
}

}  // namespace cw
