#include "core/fastener/refusals.h"

#include <algorithm>

#include "core/base/near_name.h"
#include "core/fastener/folded_name.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace cw {
namespace {

template <class Row>
std::vector<std::string_view> namesOf(const std::vector<Row>& rows) {
  std::vector<std::string_view> names;
  for (const Row& row : rows) {
    names.push_back(row.name);
    names.insert(names.end(), row.aliases.begin(), row.aliases.end());
  }
  return names;
}

/// "did you mean …", or the given examples where nothing is near.
Message nearOr(std::string_view written, const std::vector<std::string_view>& known, Message examples) {
  const std::string near = didYouMean(nearNames(written, known));
  return near.empty() ? examples : Message("%1", {near});
}

tl::unexpected<Error> notThere(std::string place, std::string_view written, Message expected) {
  return fail(ErrorCode::NotFound, place, written, {"the library has no %1 “%2”", {place, shown(written)}},
              std::move(expected));
}

/// Everything in front of the pitch: "M8" of "M8X0.9", "3/8" of "3/8-16UNC".
std::string_view sizePart(std::string_view key) {
  return key.starts_with('M') ? key.substr(0, key.find('X')) : key.substr(0, key.rfind('-'));
}

/// A size in the words of its thread system: "M16", "1 in".
std::string sizeName(Length size, ThreadSystem system) {
  return system == ThreadSystem::Metric ? "M" + significant(inMillimetres(size), 4) : text(size, kInch, 4);
}

}  // namespace

tl::unexpected<Error> noThread(std::string_view written, const Library& library) {
  const std::string key = foldedThread(written).key;
  std::vector<std::string> ofThatSize;
  std::vector<std::string_view> all;
  for (const Thread& thread : library.threads) {
    all.push_back(thread.designation);
    const std::string own = foldedThread(thread.designation).key;
    if (!key.empty() && (sizePart(own) == sizePart(key) || sizePart(own) == key))
      ofThatSize.push_back(thread.designation);
  }
  if (!ofThatSize.empty())
    return notThere("thread", written, {"in that size it has %1", {listed(ofThatSize)}});
  return notThere("thread", written, nearOr(written, all, "write it like M8, M8x1, 3/8-16 or #10-32"));
}

tl::unexpected<Error> noGrade(std::string_view written, const Library& library) {
  return notThere(
      "grade", written,
      nearOr(written, namesOf(library.grades), "it has for example 8.8, A2-70, SAE 5 and ASTM A193 B7"));
}

tl::unexpected<Error> noCondition(std::string_view written, const Library& library) {
  return notThere(
      "condition", written,
      nearOr(written, namesOf(library.conditions), "it has for example dry, oiled and moly paste"));
}

tl::unexpected<Error> noMaterial(std::string_view written, const Library& library) {
  return notThere(
      "material", written,
      nearOr(written, namesOf(library.materials), "it has for example grey iron, brass and steel S235"));
}

tl::unexpected<Error> otherSystem(std::string_view written, const Grade& grade, const Thread& thread) {
  const bool inchGrade = grade.system == ThreadSystem::Unified;
  return fail(ErrorCode::OutOfRange, "grade", written,
              {inchGrade ? "%1 is a grade for inch threads and %2 is metric"
                         : "%1 is a grade for metric threads and %2 is an inch thread",
               {grade.name, thread.designation}},
              inchGrade ? "take a metric grade such as 8.8 or A2-70"
                        : "take an inch grade such as SAE 5 or ASTM A193 B7");
}

tl::unexpected<Error> notInThatSize(std::string_view written, const Grade& grade, const Thread& thread,
                                    Length from, Length upTo) {
  const std::string largest = sizeName(upTo, thread.system);
  return fail(ErrorCode::OutOfRange, "grade", written,
              {"%1 does not exist for %2", {grade.name, thread.designation}},
              from.si() > 0 ? Message("it is made from %1 to %2", {sizeName(from, thread.system), largest})
                            : Message("it is made up to %1", {largest}));
}

tl::unexpected<Error> noHead(std::string_view kind, const Thread& thread, const Library& library) {
  std::vector<std::string> kinds;
  for (const Head& head : library.heads) {
    const bool listedAlready = std::find(kinds.begin(), kinds.end(), head.kind) != kinds.end();
    if (head.system == thread.system && !listedAlready) kinds.push_back(head.kind);
  }
  for (const std::string& known : kinds)
    if (foldedName(known) == foldedName(kind))
      return fail(ErrorCode::OutOfRange, "bearing face", kind,
                  {"the library has no %1 for %2", {known, thread.designation}},
                  "state the bearing diameter, or add a row");
  return notThere("bearing face", kind, {"for such a thread it has %1", {listed(kinds)}});
}

}  // namespace cw
