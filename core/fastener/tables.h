#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/finding.h"
#include "core/fastener/library.h"

namespace cw {

/// The kinds of rows a library has, one table each.
enum class RowKind {
  Thread,
  Grade,
  Condition,
  Material,
  Head,
  ClearanceHole,
  SizeLimits,
  PrevailingTorque,
  ToolClass
};

inline constexpr std::array kRowKinds = {
    RowKind::Thread,        RowKind::Grade,      RowKind::Condition,        RowKind::Material, RowKind::Head,
    RowKind::ClearanceHole, RowKind::SizeLimits, RowKind::PrevailingTorque, RowKind::ToolClass};

/// "threads", "grades" …: the file's name without .csv.
std::string_view nameOf(RowKind kind);

/// The kind of that name, or nothing.
std::optional<RowKind> kindNamed(std::string_view name);

/// Its columns in the order of the file: what the kind has, then known, source, author and note.
std::vector<std::string> columnsOf(RowKind kind);

/// Number of rows of that kind.
std::size_t countOf(const Library& library, RowKind kind);

/// Takes the last row of that kind out again; there is one.
void dropLast(Library& library, RowKind kind);

/// What a row answers to, folded for comparing: a thread's designation with and without pitch or series,
/// name and aliases of the others, kind and size of a head. Empty for an index past the last row.
std::vector<std::string> keysOf(const Library& library, RowKind kind, std::size_t row);

/// Reads one table into the library; the header tells of which kind it is. Every row that is refused is one
/// Blocking finding (place "line n, column"); the others are added.
Findings addTable(Library& library, std::string_view csv);

/// The table of one kind with its header; addTable reads it back.
std::string tableOf(const Library& library, RowKind kind);

/// One row of that table, cell by cell.
std::vector<std::string> cellsOf(const Library& library, RowKind kind, std::size_t row);

}  // namespace cw
