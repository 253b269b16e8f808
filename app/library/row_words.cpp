#include "app/library/row_words.h"

#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/library/row_facts.h"
#include "core/fastener/catalogue.h"
#include "core/fastener/search_entry.h"

namespace cw {
namespace {

struct RowText {
  Q_DECLARE_TR_FUNCTIONS(RowWords)
};

Section origin(const Provenance& provenance, const std::string& note) {
  Facts facts;
  facts.rows.push_back({fromQt(RowText::tr("Source")), provenance.source});
  facts.rows.push_back({fromQt(RowText::tr("How it is known")),
                        fromQt(provenance.seen ? RowText::tr("seen in the source")
                                               : RowText::tr("from memory, check your edition"))});
  facts.rows.push_back({fromQt(RowText::tr("Added by")), provenance.author.empty()
                                                             ? fromQt(RowText::tr("came with the program"))
                                                             : provenance.author});
  if (!note.empty()) facts.rows.push_back({fromQt(RowText::tr("Remark")), note});
  return {fromQt(RowText::tr("Where it is from")), {std::move(facts)}, false};
}

template <class Row>
Document documentOf(const Catalogue& catalogue, const Row& row, RowKind kind, std::string name) {
  Document out;
  out.title = std::move(name);
  out.subtitle = fromQt(kindText(kind));
  out.sections = sectionsOf(catalogue, row);
  if (!row.provenance.seen)
    out.sections.front().blocks.insert(
        out.sections.front().blocks.begin(),
        Paragraph{fromQt(RowText::tr("From memory: check your edition before you rely on it.")),
                  Tone::Strong});
  out.sections.push_back(origin(row.provenance, row.note));
  return out;
}

}  // namespace

QString kindText(RowKind kind) {
  switch (kind) {
    case RowKind::Thread:
      return RowText::tr("Thread");
    case RowKind::Grade:
      return RowText::tr("Strength grade");
    case RowKind::Condition:
      return RowText::tr("Condition");
    case RowKind::Material:
      return RowText::tr("Tapped material");
    case RowKind::Head:
      return RowText::tr("Bearing face");
    case RowKind::ClearanceHole:
      return RowText::tr("Clearance hole");
    case RowKind::SizeLimits:
      return RowText::tr("Limits of size");
    case RowKind::PrevailingTorque:
      return RowText::tr("Prevailing torque");
    case RowKind::ToolClass:
      return RowText::tr("Torque tool class");
  }
  return {};
}

Document rowDocument(const Catalogue& catalogue, RowKind kind, std::size_t row) {
  const Library& rows = catalogue.rows();
  const auto written = [&](const auto& each) {
    return documentOf(catalogue, each, kind, searchEntry(rows, kind, row).name);
  };
  switch (kind) {
    case RowKind::Thread:
      return written(rows.threads.at(row));
    case RowKind::Grade:
      return written(rows.grades.at(row));
    case RowKind::Condition:
      return written(rows.conditions.at(row));
    case RowKind::Material:
      return written(rows.materials.at(row));
    case RowKind::Head:
      return written(rows.heads.at(row));
    case RowKind::ClearanceHole:
      return written(rows.holes.at(row));
    case RowKind::SizeLimits:
      return written(rows.limits.at(row));
    case RowKind::PrevailingTorque:
      return written(rows.prevailingTorques.at(row));
    case RowKind::ToolClass:
      return written(rows.toolClasses.at(row));
  }
  return {};
}

}  // namespace cw
