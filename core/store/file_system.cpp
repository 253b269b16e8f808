#include "core/store/file_system.h"

#include <fcntl.h>
#include <stdio.h>
#include <sys/statfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>

namespace cw {
namespace {

namespace fs = std::filesystem;

fs::path folderOf(const fs::path& file) {
  return fs::absolute(file).parent_path();
}

/// fsync of a file or folder.
Result<void> sync(const fs::path& path) {
  const int handle = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (handle < 0) return systemError(path);
  const int answer = ::fsync(handle);
  ::close(handle);
  if (answer != 0) return systemError(path);
  return {};
}

/// Writes all of it to an open file and brings it to the disk.
bool writeAll(int handle, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t count = ::write(handle, bytes.data(), bytes.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return false;
    bytes.remove_prefix(static_cast<std::size_t>(count));
  }
  return ::fsync(handle) == 0;
}

}  // namespace

tl::unexpected<Error> systemError(const fs::path& file) {
  const int number = errno;
  const std::string words = std::strerror(number);
  if (number == EEXIST)
    return fail(ErrorCode::AlreadyDone, file.string(), "", "there is a file of this name already",
                "choose another name; nothing was replaced");
  if (number == ENOSPC || number == EDQUOT || number == EFBIG)
    return fail(ErrorCode::DiskFull, file.string(), "", "there is no room left on the disk", "make room");
  if (number == EACCES || number == EPERM || number == EROFS)
    return fail(ErrorCode::ReadOnly, file.string(), "", "this place cannot be written",
                "ask for the right to write there, or choose another folder");
  return fail(ErrorCode::Storage, file.string(), "", {"%1", {words}}, "check disk and folder");
}

bool isNetworkFileSystem(std::uint32_t type) {
  // Magic numbers of linux/magic.h and of the file systems' own sources.
  static constexpr std::array<std::uint32_t, 14> kNetwork{
      0x6969,      // nfs
      0x517b,      // smb
      0xfe534d42,  // smb2
      0xff534d42,  // cifs
      0x01021997,  // 9p
      0x65735546,  // fuse
      0x5346414f,  // afs
      0x00c36400,  // ceph
      0x73757245,  // coda
      0x0bd00bd0,  // lustre
      0x01161970,  // gfs2
      0x7461636f,  // ocfs2
      0x786f4256,  // vboxsf
      0xbacbacbc,  // vmhgfs
  };
  return std::find(kNetwork.begin(), kNetwork.end(), type) != kNetwork.end();
}

Result<std::uint32_t> fileSystemType(const fs::path& path) {
  struct statfs about {};
  if (::statfs(path.c_str(), &about) != 0) return systemError(path);
  return static_cast<std::uint32_t>(about.f_type);
}

Result<void> checkReadable(const fs::path& file) {
  std::error_code none;
  const fs::file_status status = fs::status(file, none);
  if (status.type() == fs::file_type::not_found)
    return fail(ErrorCode::Storage, file.string(), "", "there is no such file",
                "name a shop file that is there, or make a new one");
  if (status.type() != fs::file_type::regular)
    return fail(ErrorCode::Storage, file.string(), "",
                status.type() == fs::file_type::directory ? Message("this is a folder")
                                                          : Message("this is no ordinary file"),
                "name a shop file");
  if (::access(file.c_str(), R_OK) != 0)
    return fail(ErrorCode::ReadOnly, file.string(), "", "the shop file cannot be read",
                "ask for the right to read it");
  return {};
}

Result<void> checkWritable(const fs::path& file) {
  CW_CHECK(checkReadable(file));
  if (::access(file.c_str(), W_OK) != 0)
    return fail(ErrorCode::ReadOnly, file.string(), "", "the shop file cannot be written",
                "ask for the right to write it");
  if (::access(folderOf(file).c_str(), W_OK) != 0)
    return fail(ErrorCode::ReadOnly, folderOf(file).string(), "",
                "the folder of the shop file cannot be written", "ask for the right to write in it");
  return {};
}

Result<void> claim(const fs::path& file) {
  const int handle = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
  if (handle < 0) return systemError(file);
  ::close(handle);
  return sync(folderOf(file));
}

Result<void> make(const fs::path& file, std::string_view bytes, fs::perms rights) {
  const int handle =
      ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, static_cast<mode_t>(rights));
  if (handle < 0) return systemError(file);
  Result<void> out;
  if (!writeAll(handle, bytes)) out = systemError(file);
  if (::close(handle) != 0 && out) out = systemError(file);
  if (!out) ::unlink(file.c_str());
  return out;
}

Result<void> flush(const fs::path& file) {
  return sync(file);
}

Result<void> moveTo(const fs::path& from, const fs::path& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0)
    return sync(folderOf(to));
  // Network file systems do not know that flag; a second name is refused there as well if it is taken.
  if (errno != EINVAL || ::link(from.c_str(), to.c_str()) != 0) return systemError(to);
  if (::unlink(from.c_str()) != 0) return systemError(from);
  return sync(folderOf(to));
}

Result<void> moveOnto(const fs::path& from, const fs::path& to) {
  if (::rename(from.c_str(), to.c_str()) != 0) return systemError(to);
  return sync(folderOf(to));
}

}  // namespace cw
