#include "app/library/import_words.h"

#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/library/column_words.h"
#include "app/library/row_words.h"

namespace cw {
namespace {

/// So many fit on the screen without ado; the command line lists them all.
constexpr std::size_t kRefusalsShown = 500;

struct ImportText {
  Q_DECLARE_TR_FUNCTIONS(ImportWords)
};

std::vector<Cell> refusalCells(const Error& error) {
  const std::size_t comma = error.place.find(", ");
  const std::string column = comma == std::string::npos ? "" : error.place.substr(comma + 2);
  return {{error.place.substr(0, comma)},
          {column.empty() ? "" : fromQt(columnText(column))},
          {shown(error.value)},
          {fromQt(worded(error))}};
}

}  // namespace

Document rehearsalDocument(const ImportRehearsal& rehearsal, const QString& fileName) {
  Document out;
  out.title = fromQt(fileName);
  const int rows = static_cast<int>(rehearsal.rows), refused = static_cast<int>(rehearsal.refused.size());
  if (rehearsal.kind)
    out.subtitle =
        fromQt(ImportText::tr("%1, rows in the file: %2").arg(kindText(*rehearsal.kind)).arg(rows));
  Section section{"", {}, false};
  if (rehearsal.clean()) {
    section.blocks.push_back(Paragraph{
        fromQt(ImportText::tr("Nothing is wrong with it. Rows that are taken in when somebody signs: %1.")
                   .arg(rows)),
        Tone::Lead});
    out.sections.push_back(std::move(section));
    return out;
  }
  section.blocks.push_back(Paragraph{
      fromQt(ImportText::tr(
                 "Rows that cannot be taken in: %1. So none is; mend them in the file and choose it again.")
                 .arg(refused)),
      Tone::Lead});
  Table table{{{fromQt(ImportText::tr("Where")), 12},
               {fromQt(ImportText::tr("Column")), 20},
               {fromQt(ImportText::tr("Value")), 20},
               {fromQt(ImportText::tr("What is wrong, and what would be right")), 48}},
              {}};
  for (std::size_t i = 0; i < std::min(kRefusalsShown, rehearsal.refused.size()); ++i)
    table.rows.push_back(refusalCells(rehearsal.refused[i]));
  section.blocks.push_back(std::move(table));
  if (rehearsal.refused.size() > kRefusalsShown)
    section.blocks.push_back(Paragraph{
        fromQt(ImportText::tr("The first %1 are shown; clampwright library import --dry-run lists them all.")
                   .arg(kRefusalsShown)),
        Tone::Quiet});
  out.sections.push_back(std::move(section));
  return out;
}

}  // namespace cw
