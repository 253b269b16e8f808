#pragma once
#include <fmt/format.h>

#include "tests/support/raw_sqlite.h"

namespace cw::test {

/// Rows of the list of jobs as the program's own insert leaves them, later than those of a sample shop and
/// all by its sheet. They have no entries: open, or disposed of.
inline void addJobs(const std::filesystem::path& file, int count, bool disposed = false) {
  const std::string id = fmt::format("printf('0190000{}-0000-7000-8000-%012d', i)", disposed ? 1 : 0);
  const std::string numbers =
      fmt::format("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {}) ", count);
  sqlite(file, "BEGIN;" + numbers +
                   "INSERT INTO job(id, digest, sheet, revision, title, work_order, machine, model, serial, "
                   "started) SELECT " +
                   id +
                   ", r.digest, r.sheet, r.revision, r.title, 'WO ' || i, 'P-' || i, r.model, 'S-' || i, "
                   "'2027-01-01T08:00:00.000Z' FROM n, (SELECT * FROM sheet_revision LIMIT 1) r;" +
                   (disposed ? numbers + "INSERT INTO disposal(job, at, by, reason) SELECT " + id +
                                   ", '2027-06-01T08:00:00.000Z', 'lena', 'kept long enough' FROM n;"
                             : "") +
                   "COMMIT;");
}

}  // namespace cw::test
