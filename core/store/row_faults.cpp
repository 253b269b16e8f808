#include "core/store/row_faults.h"

#include <array>
#include <string>

#include "core/base/clock.h"
#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/fastener/tables.h"
#include "core/store/connection.h"
#include "core/store/migrations.h"
#include "core/store/register_pages.h"

namespace cw {
namespace {

/// A value as it stands in its column; `key` names its row.
struct Held {
  std::string key, type, text;
};

using Fits = Result<void> (*)(const Held& held);

template <class T>
Result<void> done(const Result<T>& read) {
  if (!read) return fail(read.error());
  return {};
}

Result<void> anyText(const Held&) {
  return {};
}
Result<void> anId(const Held& held) {
  return done(Id::parse(held.text));
}
Result<void> aDigest(const Held& held) {
  return done(digestFromHex(held.text));
}
Result<void> aTime(const Held& held) {
  return done(parseRfc3339(held.text));
}
Result<void> aPerson(const Held& held) {
  return done(personOfPage(held.key, held.text));
}
Result<void> aTool(const Held& held) {
  return done(toolOfPage(held.key, held.text));
}
Result<void> aTable(const Held& held) {
  if (kindNamed(held.text)) return {};
  return fail(ErrorCode::Corrupt, "", held.text, {"“%1” is no table of the library", {shown(held.text)}});
}

struct Column {
  const char *table, *key, *name, *type;
  Fits fits;
};

constexpr std::array kColumnsThatAreJudged{
    Column{"shop", "one", "id", "text", anId},
    Column{"shop", "one", "name", "text", anyText},
    Column{"shop", "one", "public_key", "text", aDigest},
    Column{"person", "sign", "page", "text", aPerson},
    Column{"person", "sign", "active", "integer", anyText},
    Column{"person", "sign", "pin_hash", "text", anyText},
    Column{"tool", "id", "page", "text", aTool},
    Column{"tool_history", "tool", "page", "text", aTool},
    Column{"tool_history", "number", "at", "text", aTime},
    Column{"tool_history", "number", "by", "text", anyText},
    Column{"tool_history", "number", "event", "text", anyText},
    Column{"machine", "id", "model", "text", anyText},
    Column{"machine", "id", "serial", "text", anyText},
    Column{"machine", "id", "hours", "text", anyText},
    Column{"sheet_text", "digest", "digest", "text", aDigest},
    Column{"sheet_text", "digest", "bytes", "blob", anyText},
    Column{"sheet_revision", "sheet || ' ' || revision", "sheet", "text", anId},
    Column{"sheet_revision", "sheet || ' ' || revision", "digest", "text", aDigest},
    Column{"sheet_history", "number", "sheet", "text", anId},
    Column{"sheet_history", "number", "at", "text", aTime},
    Column{"sheet_history", "number", "by", "text", anyText},
    Column{"job", "id", "id", "text", anId},
    Column{"job", "id", "digest", "text", aDigest},
    Column{"job", "id", "sheet", "text", anId},
    Column{"job", "id", "started", "text", aTime},
    Column{"record", "job", "job", "text", anId},
    Column{"record", "job", "bytes", "blob", anyText},
    Column{"record", "job", "sealed", "text", aTime},
    Column{"addendum", "job || ' ' || number", "job", "text", anId},
    Column{"addendum", "job || ' ' || number", "bytes", "blob", anyText},
    Column{"disposal", "job", "job", "text", anId},
    Column{"disposal", "job", "at", "text", aTime},
    Column{"disposal", "job", "by", "text", anyText},
    Column{"sign_in", "number", "sign", "text", anyText},
    Column{"sign_in", "number", "at", "text", aTime},
    Column{"library_revision", "number", "kind", "text", aTable},
    Column{"library_revision", "number", "line", "text", anyText},
    Column{"library_revision", "number", "at", "text", aTime}};

/// Bytes are judged elsewhere and not brought here.
std::string statementFor(const Column& column) {
  const std::string value = column.fits == anyText ? "''" : column.name;
  return std::string("SELECT ") + column.key + ", typeof(" + column.name + "), " + value + " FROM " +
         column.table;
}

Finding fault(const Column& column, const Held& held, Message problem) {
  return blocking("row", std::string(column.table) + " " + shown(held.key) + ", " + column.name,
                  std::move(problem), "put back a backup");
}

Result<void> judge(Connection& connection, const Column& column, Findings& out) {
  CW_TRY(rows, connection.query(statementFor(column)));
  while (true) {
    CW_TRY(more, rows.next());
    if (!more) return {};
    const Held held{rows.text(0), rows.text(1), rows.text(2)};
    if (held.type != column.type)
      out.push_back(fault(column, held, {"it holds %1 in place of %2", {held.type, column.type}}));
    else if (const auto fits = column.fits(held); !fits)
      out.push_back(fault(column, held, fits.error().problem));
  }
}

}  // namespace

Result<Findings> rowFaults(Connection& connection) {
  CW_TRY(schema, schemaOf(connection));
  Findings out;
  for (const Column& column : kColumnsThatAreJudged) {
    if (!schema.contains(column.table)) continue;  // an older file, or a finding of its schema
    if (const auto judged = judge(connection, column, out); !judged)
      out.push_back(blocking("row", column.table + std::string(", ") + column.name, judged.error().problem,
                             judged.error().expected));
  }
  return out;
}

}  // namespace cw
