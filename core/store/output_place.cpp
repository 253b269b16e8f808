#include "core/store/output_place.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cstdint>
#include <cstring>
#include <string_view>

#include "core/store/file_system.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using About = struct stat;

tl::unexpected<Error> forbidden(const std::string& path, Message why) {
  return fail(ErrorCode::InvalidInput, path, path, std::move(why), "name another file; nothing was replaced");
}

/// Is it one of the files that this program holds open? Such a file is not even looked into: closing it again
/// would let go of the locks that the database has on it.
Result<bool> isHeldOpen(const About& file) {
  std::error_code trouble;
  for (fs::directory_iterator each("/proc/self/fd", trouble), end; !trouble && each != end;
       each.increment(trouble)) {
    About open{};
    const int handle = std::stoi(each->path().filename().string());
    if (::fstat(handle, &open) == 0 && open.st_dev == file.st_dev && open.st_ino == file.st_ino) return true;
  }
  if (trouble)
    return fail(ErrorCode::Storage, "/proc/self/fd", "",
                {"which files are in use cannot be told: %1", {trouble.message()}}, "mount /proc");
  return false;
}

Result<std::string> beginningOf(const fs::path& file, std::size_t most) {
  const int handle = ::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
  if (handle < 0) return systemError(file);
  std::string out(most, '\0');
  const ssize_t count = ::read(handle, out.data(), most);
  ::close(handle);
  if (count < 0) return systemError(file);
  out.resize(static_cast<std::size_t>(count));
  return out;
}

/// What SQLite's documentation of its file formats gives as the first bytes of its four kinds of file.
bool isOfDatabase(std::string_view bytes) {
  using namespace std::string_view_literals;
  const std::uint32_t walIndex = 3007000;  // in this machine's own order
  std::array<char, sizeof walIndex> shared;
  std::memcpy(shared.data(), &walIndex, sizeof walIndex);
  return bytes.starts_with("SQLite format 3\0"sv) ||
         bytes.starts_with("\xd9\xd5\x05\xf9\x20\xa1\x63\xd7"sv) || bytes.starts_with("\x37\x7f\x06\x82"sv) ||
         bytes.starts_with("\x37\x7f\x06\x83"sv) ||
         bytes.starts_with(std::string_view(shared.data(), shared.size()));
}

/// The file that a name with one of SQLite's endings belongs to, if there is such a file.
std::optional<fs::path> ownerOfCompanion(const fs::path& file) {
  const std::string name = file.string();
  for (const std::string_view ending : {"-wal", "-shm", "-journal"}) {
    if (!name.ends_with(ending)) continue;
    const fs::path owner = name.substr(0, name.size() - ending.size());
    std::error_code none;
    if (fs::is_regular_file(owner, none)) return owner;
  }
  return std::nullopt;
}

Result<void> checkName(const std::string& path, const fs::path& file) {
  const auto owner = ownerOfCompanion(file);
  if (!owner) return {};
  return forbidden(path, {"this name belongs to the database %1", {owner->string()}});
}

Result<void> checkContents(const std::string& path, const fs::path& file, const About& about) {
  constexpr std::size_t kLargestKey = 4096;
  CW_TRY(held, isHeldOpen(about));
  if (held) return forbidden(path, "this program has that file open, a shop file or one of its companions");
  CW_TRY(bytes, beginningOf(file, kLargestKey));
  if (isOfDatabase(bytes)) return forbidden(path, "this is a shop file, a backup or another database");
  const bool holdsKey = static_cast<std::size_t>(about.st_size) <= kLargestKey &&
                        bytes.find("clampwright.secret-key") != std::string::npos;
  if (holdsKey || file.string().ends_with(".secret-key")) return forbidden(path, "this is a secret key file");
  return {};
}

/// A name that no file has yet.
Result<OutputPlace> freeName(const std::string& path) {
  const fs::path file(path);
  std::error_code none;
  const fs::path folder = fs::absolute(file, none).parent_path();
  if (!file.has_filename() || !fs::is_directory(folder, none))
    return fail(ErrorCode::ReadOnly, path, path, {"there is no folder %1", {folder.string()}},
                "name a folder that exists, can be written and has room");
  CW_CHECK(checkName(path, fs::canonical(folder, none) / file.filename()));
  return OutputPlace{file, std::nullopt};
}

}  // namespace

Result<OutputPlace> outputPlace(const std::string& path, Existing existing) {
  if (path.empty() || path.find('\0') != std::string::npos)
    return fail(ErrorCode::InvalidInput, "file", path, "no file is named", "name the file to write");
  About about{};
  if (::lstat(path.c_str(), &about) != 0) {
    if (errno == ENOENT || errno == ENOTDIR) return freeName(path);
    return systemError(path);
  }
  std::error_code trouble;
  const fs::path file = fs::canonical(path, trouble);
  if (trouble || ::stat(file.c_str(), &about) != 0)
    return forbidden(path, "this is a link that leads nowhere");
  if (S_ISDIR(about.st_mode)) return forbidden(path, "this is a folder");
  if (!S_ISREG(about.st_mode)) return forbidden(path, "this is no ordinary file");
  CW_CHECK(checkName(path, file));
  CW_CHECK(checkContents(path, file, about));
  if (existing == Existing::Kept)
    return fail(ErrorCode::AlreadyDone, path, path, "there is a file of this name already",
                "name another, or add --force to replace it");
  if (::access(file.c_str(), W_OK) != 0)
    return fail(ErrorCode::ReadOnly, path, path, "the file cannot be written",
                "ask for the right to write it, or name another");
  return OutputPlace{file, static_cast<fs::perms>(about.st_mode & 0777)};
}

}  // namespace cw
