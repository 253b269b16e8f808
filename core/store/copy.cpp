#include "core/store/copy.h"

#include "core/store/database.h"
#include "core/store/file_system.h"
#include "core/store/output_place.h"

#include <unistd.h>

namespace cw {
namespace {

namespace fs = std::filesystem;

/// A file that is gone when its owner is, unless it was moved away before.
class Unfinished {
 public:
  explicit Unfinished(fs::path file) : m_file(std::move(file)) {}
  ~Unfinished() {
    std::error_code ignored;
    fs::remove(m_file, ignored);
  }
  Unfinished(const Unfinished&) = delete;
  Unfinished& operator=(const Unfinished&) = delete;
  const fs::path& file() const { return m_file; }

 private:
  fs::path m_file;
};

}  // namespace

Result<void> copyTo(Connection& connection, const fs::path& target,
                    const std::function<Result<void>(Connection&)>& judge) {
  std::error_code hidden;  // a folder that may not be looked into refuses the file below
  if (fs::exists(target, hidden))
    return fail(ErrorCode::AlreadyDone, target.string(), "", "there is a file of this name already",
                "choose another name; nothing was replaced");
  CW_CHECK(outputPlace(target.string(), Existing::Kept));
  const Unfinished part(target.string() + ".part-" + std::to_string(::getpid()));
  CW_CHECK(claim(part.file()));
  CW_CHECK(connection.run("VACUUM INTO ?", {part.file().string()}));
  {
    CW_TRY(copy, Connection::open(part.file(), Connection::Access::Read, kPatience));
    CW_CHECK(judge(*copy));
  }
  CW_CHECK(flush(part.file()));
  return moveTo(part.file(), target);
}

Result<std::vector<std::string>> integrityFaults(Connection& connection) {
  CW_TRY(answers,
         collect(connection, "PRAGMA integrity_check", {}, [](const SqlRows& row) { return row.text(0); }));
  std::erase(answers, "ok");
  return answers;
}

}  // namespace cw
