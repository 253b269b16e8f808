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

template <class Row>
void append(std::vector<SearchEntry>& entries, RowKind kind, const std::vector<Row>& rows) {
  for (std::size_t row = 0; row < rows.size(); ++row) {
    EntryWords words = wordsOf(rows[row]);
    entries.push_back({kind, row, std::move(words.name), std::move(words.alias), std::move(words.note)});
  }
}

}  // namespace

std::vector<SearchEntry> searchEntries(const Library& library) {
  std::vector<SearchEntry> entries;
  append(entries, RowKind::Thread, library.threads);
  append(entries, RowKind::Grade, library.grades);
  append(entries, RowKind::Condition, library.conditions);
  append(entries, RowKind::Material, library.materials);
  append(entries, RowKind::Head, library.heads);
  append(entries, RowKind::ClearanceHole, library.holes);
  append(entries, RowKind::SizeLimits, library.limits);
  append(entries, RowKind::PrevailingTorque, library.prevailingTorques);
  append(entries, RowKind::ToolClass, library.toolClasses);
  return entries;
}

}  // namespace cw
