#include "core/store/migrations.h"

#include <algorithm>

#include "core/base/resource.h"

namespace cw {
namespace {

constexpr std::string_view kSeparator = "\n-- next\n";

std::vector<std::string_view> statementsOf(std::string_view file) {
  std::vector<std::string_view> out;
  for (std::size_t end = file.find(kSeparator); end != std::string_view::npos; end = file.find(kSeparator)) {
    out.push_back(file.substr(0, end));
    file.remove_prefix(end + kSeparator.size());
  }
  out.push_back(file);
  return out;
}

Result<void> step(Connection& connection, std::string_view file, int version) {
  CW_TRY(transaction, Transaction::begin(connection));
  CW_TRY(found, connection.pragmaNumber("user_version"));
  if (found >= version) return {};  // another program was waiting to do the same, and was first
  for (const std::string_view statement : statementsOf(file)) CW_CHECK(connection.run(statement));
  CW_CHECK(connection.setPragma("user_version", std::to_string(version)));
  return transaction.commit();
}

}  // namespace

int newestVersion() {
  return static_cast<int>(resourcesBelow("schema/").size());
}

Result<void> migrate(Connection& connection, int target) {
  const auto files = resourcesBelow("schema/");
  CW_TRY(found, connection.pragmaNumber("user_version"));
  for (int version = std::max(static_cast<int>(found), 0) + 1; version <= target; ++version)
    CW_CHECK(step(connection, resource(files[static_cast<std::size_t>(version - 1)]), version));
  return {};
}

Result<std::map<std::string, std::string>> schemaOf(Connection& connection) {
  CW_TRY(rows, collect(connection, "SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL", {},
                       [](const SqlRows& row) { return std::pair(row.text(0), row.text(1)); }));
  return std::map<std::string, std::string>(rows.begin(), rows.end());
}

}  // namespace cw
