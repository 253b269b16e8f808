#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/store/connection.h"

namespace cw {

/// A register that is read often and written seldom, kept in memory until this program or another one changes
/// the file.
template <class Row>
class Cached {
 public:
  /// The rows, read anew by `read` if anything may have changed.
  template <class Read>
  Result<const std::vector<Row>*> get(Connection& connection, Read read) {
    CW_TRY(version, connection.pragma("data_version"));
    if (!m_rows || version != m_version) {
      CW_TRY(rows, read());
      m_rows = std::move(rows);
      m_version = version;
    }
    return &*m_rows;
  }
  /// To be called after each write of this program's own, which data_version does not count.
  void forget() { m_rows.reset(); }

 private:
  std::optional<std::vector<Row>> m_rows;
  std::string m_version;
};

}  // namespace cw
