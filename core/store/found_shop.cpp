#include "core/store/found_shop.h"

#include "core/record/key.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

Result<void> checkFree(const std::filesystem::path& file) {
  std::error_code none;
  if (!std::filesystem::exists(file, none)) {
    CW_CHECK(outputPlace(file.string(), Existing::Kept));
    return {};
  }
  return fail(ErrorCode::AlreadyDone, file.string(), "", "there is a file of this name already",
              "name another; nothing was replaced");
}

/// The database makes and deletes files of these names as it likes.
Result<void> checkApart(const std::filesystem::path& file, const std::filesystem::path& secretFile) {
  std::error_code none;
  const std::filesystem::path shop = std::filesystem::weakly_canonical(file, none);
  const std::filesystem::path secret = std::filesystem::weakly_canonical(secretFile, none);
  for (const char* ending : {"", "-wal", "-shm", "-journal"})
    if (secret == shop.string() + ending)
      return fail(ErrorCode::InvalidInput, secretFile.string(), "",
                  {"this name belongs to the database %1", {file.string()}},
                  "name another for the secret key");
  return {};
}

}  // namespace

Result<std::unique_ptr<Shop>> foundShop(const std::filesystem::path& file, const std::string& name,
                                        const std::filesystem::path& secretFile, Clock& clock) {
  CW_CHECK(checkFree(file));
  CW_CHECK(checkFree(secretFile));
  CW_CHECK(checkApart(file, secretFile));
  const SecretKey key = makeKey();
  CW_CHECK(writeFile(secretFile.string(), writeSecretKey(key), Existing::Kept, Access::OwnerOnly));
  auto shop = Shop::create(file, name, publicOf(key), clock);
  std::error_code kept;
  if (!shop) std::filesystem::remove(secretFile, kept);
  return shop;
}

Result<Person> founder(const std::string& sign, const std::string& name, const std::string& pin) {
  CW_CHECK(checkSign(sign));
  if (name.find_first_not_of(' ') == std::string::npos)
    return fail(ErrorCode::InvalidInput, "name", name, "the name is empty",
                "write the name that records print");
  CW_TRY(hash, hashPin(pin));
  Person out;
  out.sign = sign;
  out.name = name;
  out.roles = {Role::Technician, Role::ServiceWriter, Role::Trainer, Role::Inspector, Role::ShopLead};
  out.pinHash = hash;
  return out;
}

std::filesystem::path usualKeyFile(const std::filesystem::path& shopFile) {
  return shopFile.string() + ".secret-key";
}

}  // namespace cw
