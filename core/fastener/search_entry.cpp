#include "core/fastener/search_entry.h"

#include "core/fastener/csv_record.h"

namespace cw {
namespace {

struct EntryWords {
  std::string name;
  std::string alias;
  std::string note;
};

std::string sizeName(ThreadSystem system, Length diameter) {
  return system == ThreadSystem::Metric ? "M" + stated(diameter, kMillimetre)
                                        : stated(diameter, kInch) + " in";
}

/// "stated; remark", without the empty ones.
std::string remarks(std::vector<std::string> parts) {
  std::erase(parts, "");
  return joinedWords(parts);
}

EntryWords wordsOf(const Thread& thread) {
  const bool metric = thread.system == ThreadSystem::Metric;
  const std::string pitch = metric ? thread.designation.substr(0, thread.designation.find('x')) + "x" +
                                         stated(thread.pitch, kMillimetre)
                                   : thread.designation.substr(0, thread.designation.find(' '));
  return {thread.designation, pitch == thread.designation ? "" : pitch, thread.note};
}

EntryWords wordsOf(const Grade& grade) {
  const std::string sizes = stated(grade.from, *grade.sizeUnit) + " to " +
                            stated(grade.upTo, *grade.sizeUnit) + " " + std::string(grade.sizeUnit->code);
  return {grade.name, joinedWords(grade.aliases), remarks({sizes, grade.note})};
}

EntryWords wordsOf(const Condition& condition) {
  return {condition.name, joinedWords(condition.aliases), remarks({condition.label, condition.note})};
}

EntryWords wordsOf(const TappedMaterial& material) {
  return {material.name, joinedWords(material.aliases),
          remarks({material.family, material.caution, material.note})};
}

EntryWords wordsOf(const Head& head) {
  return {head.kind + " " + sizeName(head.system, head.diameter), "", remarks({"bearing face", head.note})};
}

EntryWords wordsOf(const ClearanceHole& hole) {
  return {"clearance hole " + sizeName(hole.system, hole.diameter), "", hole.note};
}

EntryWords wordsOf(const SizeLimits& limits) {
  return {limits.thread + " " + limits.toleranceClass, "", remarks({"limits of size", limits.note})};
}

EntryWords wordsOf(const PrevailingTorque& torque) {
  return {torque.thread + " " + torque.fastener, "", remarks({"prevailing torque", torque.note})};
}

EntryWords wordsOf(const ToolClass& tool) {
  return {"type " + tool.type + " class " + tool.letter, "ISO 6789", remarks({tool.description, tool.note})};
}

EntryWords wordsOfRow(const Library& library, RowKind kind, std::size_t row) {
  switch (kind) {
    case RowKind::Thread:
      return wordsOf(library.threads.at(row));
    case RowKind::Grade:
      return wordsOf(library.grades.at(row));
    case RowKind::Condition:
      return wordsOf(library.conditions.at(row));
    case RowKind::Material:
      return wordsOf(library.materials.at(row));
    case RowKind::Head:
      return wordsOf(library.heads.at(row));
    case RowKind::ClearanceHole:
      return wordsOf(library.holes.at(row));
    case RowKind::SizeLimits:
      return wordsOf(library.limits.at(row));
    case RowKind::PrevailingTorque:
      return wordsOf(library.prevailingTorques.at(row));
    case RowKind::ToolClass:
      return wordsOf(library.toolClasses.at(row));
  }
  return {};
}

}  // namespace

SearchEntry searchEntry(const Library& library, RowKind kind, std::size_t row) {
  EntryWords words = wordsOfRow(library, kind, row);
  return {kind, row, std::move(words.name), std::move(words.alias), std::move(words.note)};
}

std::vector<SearchEntry> searchEntries(const Library& library) {
  std::vector<SearchEntry> entries;
  for (const RowKind kind : kRowKinds)
    for (std::size_t row = 0; row < countOf(library, kind); ++row)
      entries.push_back(searchEntry(library, kind, row));
  return entries;
}

}  // namespace cw
