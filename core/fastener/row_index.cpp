#include "core/fastener/row_index.h"

namespace cw {
namespace {

bool overlap(const Grade& a, const Grade& b) {
  return a.from < b.upTo && b.from < a.upTo;
}

Result<void> checkShared(const Library& library, RowKind kind, std::size_t row, std::size_t other,
                         const std::string& key) {
  if (row == other) return {};
  if (kind != RowKind::Grade || library.grades[row].name != library.grades[other].name)
    return fail(ErrorCode::Conflict, std::string(nameOf(kind)), key,
                {"two rows answer to “%1”", {shown(key)}}, "give one of them another name");
  if (overlap(library.grades[row], library.grades[other]))
    return fail(ErrorCode::Conflict, std::string(nameOf(kind)), key,
                {"two rows of “%1” hold for the same sizes", {library.grades[row].name}},
                "let one end where the next begins");
  return {};
}

}  // namespace

Result<void> RowIndex::add(const Library& library, RowKind kind, std::size_t row) {
  const std::vector<std::string> keys = keysOf(library, kind, row);
  for (const std::string& key : keys)
    for (const std::size_t other : find(kind, key)) CW_CHECK(checkShared(library, kind, row, other, key));
  for (const std::string& key : keys) {
    auto& rows = m_rows[static_cast<std::size_t>(kind)][key];
    if (rows.empty() || rows.back() != row) rows.push_back(row);
  }
  return {};
}

const std::vector<std::size_t>& RowIndex::find(RowKind kind, const std::string& key) const {
  static const std::vector<std::size_t> kNone;
  const auto& rows = m_rows[static_cast<std::size_t>(kind)];
  const auto found = rows.find(key);
  return found == rows.end() ? kNone : found->second;
}

}  // namespace cw
