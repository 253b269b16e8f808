#include "core/fastener/catalogue.h"

#include <algorithm>

#include "core/base/resource.h"
#include "core/fastener/folded_name.h"
#include "core/fastener/refusals.h"
#include "core/fastener/row_keys.h"

namespace cw {
namespace {

template <class Row>
void append(std::vector<Row>& rows, const std::vector<Row>& more) {
  rows.insert(rows.end(), more.begin(), more.end());
}

std::optional<Length> holeOfFit(const ClearanceHole& hole, HoleFit fit) {
  if (fit == HoleFit::Normal) return hole.normal;
  return fit == HoleFit::Close ? hole.close : hole.loose;
}

}  // namespace

Result<Catalogue> Catalogue::make(Library library) {
  Catalogue made;
  made.m_library = std::move(library);
  for (const RowKind kind : kRowKinds)
    for (std::size_t row = 0; row < countOf(made.m_library, kind); ++row)
      CW_CHECK(made.m_index.add(made.m_library, kind, row));
  return made;
}

Result<Catalogue> Catalogue::with(const Library& more) const {
  Library all = m_library;
  append(all.threads, more.threads);
  append(all.grades, more.grades);
  append(all.conditions, more.conditions);
  append(all.materials, more.materials);
  append(all.heads, more.heads);
  append(all.holes, more.holes);
  append(all.limits, more.limits);
  append(all.prevailingTorques, more.prevailingTorques);
  append(all.toolClasses, more.toolClasses);
  return make(std::move(all));
}

bool Catalogue::answers(RowKind kind, const std::string& key) const {
  return !m_index.find(kind, key).empty();
}

Result<Thread> Catalogue::thread(std::string_view written) const {
  const FoldedThread folded = foldedThread(written);
  const auto& rows = m_index.find(RowKind::Thread, folded.key);
  if (rows.empty()) return noThread(written, m_library);
  Thread thread = m_library.threads[rows.front()];
  if (folded.leftHand) {
    thread.hand = Hand::Left;
    thread.designation += "-LH";
  }
  return thread;
}

Result<Grade> Catalogue::grade(std::string_view written, const Thread& thread) const {
  const auto& rows = m_index.find(RowKind::Grade, foldedName(written));
  if (rows.empty()) return noGrade(written, m_library);
  const Grade& first = m_library.grades[rows.front()];
  if (first.system && *first.system != thread.system) return otherSystem(written, first, thread);

  const Grade* smallestThatFits = nullptr;
  Length from = first.from, upTo = first.upTo;
  for (const std::size_t row : rows) {
    const Grade& grade = m_library.grades[row];
    from = std::min(from, grade.from);
    upTo = std::max(upTo, grade.upTo);
    const bool fits = thread.diameter >= grade.from && thread.diameter <= grade.upTo;
    if (fits && (smallestThatFits == nullptr || grade.upTo < smallestThatFits->upTo))
      smallestThatFits = &grade;
  }
  if (smallestThatFits == nullptr) return notInThatSize(written, first, thread, from, upTo);
  return *smallestThatFits;
}

Result<Condition> Catalogue::condition(std::string_view written) const {
  const auto& rows = m_index.find(RowKind::Condition, foldedName(written));
  if (rows.empty()) return noCondition(written, m_library);
  return m_library.conditions[rows.front()];
}

Result<TappedMaterial> Catalogue::material(std::string_view written) const {
  const auto& rows = m_index.find(RowKind::Material, foldedName(written));
  if (rows.empty()) return noMaterial(written, m_library);
  return m_library.materials[rows.front()];
}

Result<Head> Catalogue::head(std::string_view kind, const Thread& thread) const {
  const auto& rows = m_index.find(RowKind::Head, headKey(kind, thread.system, thread.diameter));
  if (rows.empty()) return noHead(kind, thread, m_library);
  return m_library.heads[rows.front()];
}

Result<ClearanceHole> Catalogue::clearanceHole(const Thread& thread) const {
  const auto& rows = m_index.find(RowKind::ClearanceHole, sizeKey(thread.system, thread.diameter));
  if (rows.empty())
    return fail(ErrorCode::NotFound, "clearance hole", thread.designation,
                {"the library has no clearance hole for %1", {thread.designation}},
                "state its diameter, or add a row");
  return m_library.holes[rows.front()];
}

Result<BearingFace> Catalogue::bearingFace(std::string_view kind, const Thread& thread, HoleFit fit) const {
  CW_TRY(head, this->head(kind, thread));
  CW_TRY(hole, clearanceHole(thread));
  const auto inside = holeOfFit(hole, fit);
  if (!inside)
    return fail(ErrorCode::NotFound, "clearance hole", thread.designation,
                {"the library has no hole of this fit for %1", {thread.designation}}, "take the normal fit");
  return BearingFace{head.kind,
                     thread.designation,
                     head.bearing,
                     *inside,
                     {head.provenance.source + "; hole: " + hole.provenance.source,
                      head.provenance.seen && hole.provenance.seen, head.provenance.author}};
}

Result<SizeLimits> Catalogue::sizeLimits(const Thread& thread, std::string_view toleranceClass) const {
  const auto& rows = m_index.find(RowKind::SizeLimits, limitsKey(thread.designation, toleranceClass));
  if (rows.empty())
    return fail(ErrorCode::NotFound, "tolerance class", toleranceClass,
                {"the library has no limits %1 for %2", {shown(toleranceClass), thread.designation}},
                "6g or 6H of a coarse metric thread, or 2B of a tabulated unified one");
  return m_library.limits[rows.front()];
}

Result<PrevailingTorque> Catalogue::prevailingTorque(const Thread& thread, std::string_view fastener) const {
  const auto& rows = m_index.find(RowKind::PrevailingTorque, prevailingKey(thread.designation, fastener));
  if (rows.empty())
    return fail(
        ErrorCode::NotFound, "prevailing torque", fastener,
        {"the library has no least prevailing torque of “%1” on %2", {shown(fastener), thread.designation}},
        "state what the fastener's maker prints");
  return m_library.prevailingTorques[rows.front()];
}

Result<ToolClass> Catalogue::toolClass(std::string_view type, std::string_view letter) const {
  const auto& rows = m_index.find(RowKind::ToolClass, toolClassKey(type, letter));
  if (rows.empty())
    return fail(ErrorCode::NotFound, "tool class", letter,
                {"ISO 6789-1 has no class %1 of type %2", {shown(letter), shown(type)}},
                "type I has classes A to E, type II A to G");
  return m_library.toolClasses[rows.front()];
}

const Catalogue& shippedCatalogue() {
  static const Catalogue kCatalogue = [] {
    Library library;
    for (const std::string_view path : resourcesBelow("library/")) addTable(library, resource(path));
    return std::move(Catalogue::make(std::move(library))).value();
  }();
  return kCatalogue;
}

}  // namespace cw
