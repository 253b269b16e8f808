#include "core/store/file_io.h"

#include <fmt/format.h>

#include <QFile>
#include <QFileInfo>
#include <random>

#include "core/store/file_system.h"

namespace cw {
namespace {

QString qt(const std::string& path) {
  return QString::fromStdString(path);
}

tl::unexpected<Error> unreadable(const std::string& path, Message why) {
  return fail(ErrorCode::Storage, path, path, std::move(why), "name a file that can be read");
}

/// A name in the same folder that no other file has and no writer before left behind.
std::filesystem::path nameBeside(const std::filesystem::path& file) {
  std::random_device random;
  std::filesystem::path out = file;
  return out.replace_filename(fmt::format(".clampwright-{:08x}{:08x}.part", random(), random()));
}

std::filesystem::perms rightsFor(const OutputPlace& place, Access access) {
  using std::filesystem::perms;
  if (access == Access::OwnerOnly) return perms::owner_read | perms::owner_write;
  return place.old.value_or(perms(0666));  // less what the user's mask takes away
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

Result<void> writeFile(const std::string& path, std::string_view bytes, Existing existing, Access access) {
  CW_TRY(place, outputPlace(path, existing));
  const std::filesystem::path part = nameBeside(place.file);
  const auto about = [&](Error error) {
    error.place = path;
    return fail(std::move(error));
  };
  if (const auto made = make(part, bytes, rightsFor(place, access)); !made) return about(made.error());
  std::error_code kept;
  if (place.old) std::filesystem::permissions(part, *place.old, kept);
  const auto named = place.old ? moveOnto(part, place.file) : moveTo(part, place.file);
  if (named) return {};
  std::filesystem::remove(part, kept);
  return about(named.error());
}

}  // namespace cw
