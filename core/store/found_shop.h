#pragma once
#include <filesystem>
#include <memory>
#include <string>

#include "core/shop/person.h"
#include "core/store/shop.h"

namespace cw {

/// Makes a new shop: its file and, apart from it, its secret sealing key, which nobody but the owner may
/// read. AlreadyDone if there is a file of either name; InvalidInput for a name
/// that belongs to a database; the errors of Shop::create and writeFile. A key file
/// without a shop file may be left behind, never the other way round.
Result<std::unique_ptr<Shop>> foundShop(const std::filesystem::path& file, const std::string& name,
                                        const std::filesystem::path& secretFile, Clock& clock);

/// The person who leads a new shop, and may do everything in it until others are added. InvalidInput for a
/// bad sign, an empty name or a PIN that is not 4 to 12 digits.
Result<Person> founder(const std::string& sign, const std::string& name, const std::string& pin);

/// Where the secret key of a shop file lies unless it is put elsewhere.
std::filesystem::path usualKeyFile(const std::filesystem::path& shopFile);

}  // namespace cw
