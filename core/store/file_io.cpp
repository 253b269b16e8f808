#include "core/store/file_io.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace cw {
namespace {

QString qt(const std::string& path) {
  return QString::fromStdString(path);
}

tl::unexpected<Error> unreadable(const std::string& path, Message why) {
  return fail(ErrorCode::Storage, path, path, std::move(why), "name a file that can be read");
}

tl::unexpected<Error> unwritable(const std::string& path, const QFileDevice& file) {
  const bool full = file.error() == QFileDevice::ResourceError;
  const bool forbidden =
      file.error() == QFileDevice::PermissionsError || file.error() == QFileDevice::OpenError;
  return fail(full        ? ErrorCode::DiskFull
              : forbidden ? ErrorCode::ReadOnly
                          : ErrorCode::Storage,
              path, path, {"the file cannot be written: %1", {file.errorString().toStdString()}},
              "name a folder that exists, can be written and has room");
}

}  // namespace

Result<std::string> readFile(const std::string& path, std::int64_t most) {
  QFile file(qt(path));
  if (!file.exists()) return fail(ErrorCode::NotFound, path, path, "there is no such file", "check the path");
  if (QFileInfo(file).isDir()) return unreadable(path, "this is a folder");
  if (!file.open(QIODevice::ReadOnly))
    return unreadable(path, {"it cannot be read: %1", {file.errorString().toStdString()}});
  const QByteArray bytes = file.read(most + 1);
  if (bytes.size() > most)
    return fail(ErrorCode::OutOfRange, path, path,
                {"the file is larger than %1 bytes", {std::to_string(most)}}, "name the right file");
  return bytes.toStdString();
}

Result<void> writeFile(const std::string& path, std::string_view bytes, Access access) {
  QSaveFile file(qt(path));
  if (!file.open(QIODevice::WriteOnly)) return unwritable(path, file);
  if (access == Access::OwnerOnly) file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
  const auto size = static_cast<qint64>(bytes.size());
  if (file.write(bytes.data(), size) != size || !file.commit()) return unwritable(path, file);
  return {};
}

}  // namespace cw
