#include "core/fastener/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/base/near_name.h"
#include "core/base/resource.h"
#include "core/fastener/folded_name.h"
#include "core/units/format.h"

namespace cw {
namespace {

using Index = std::unordered_map<std::string, std::vector<std::size_t>>;

const std::vector<std::size_t>& rowsNamed(const Index& index, const std::string& key) {
  static const std::vector<std::size_t> kNone;
  const auto found = index.find(key);
  return found == index.end() ? kNone : found->second;
}

/// All keys one thread answers to: "M8" and "M8X1.25"; "3/8-16UNC" and "3/8-16".
std::vector<std::string> keysOf(const Thread& thread) {
  std::vector<std::string> keys = {foldedThread(thread.designation).key};
  if (thread.system == ThreadSystem::Metric && keys[0].find('X') == std::string::npos)
    keys.push_back(keys[0] + "X" + significant(inMillimetres(thread.pitch), 6));
  if (const std::size_t series = thread.designation.find(' '); series != std::string::npos)
    keys.push_back(foldedThread(thread.designation.substr(0, series)).key);
  return keys;
}

template <class Row>
std::vector<std::string_view> namesOf(const std::vector<Row>& rows) {
  std::vector<std::string_view> names;
  for (const Row& row : rows) {
    names.push_back(row.name);
    names.insert(names.end(), row.aliases.begin(), row.aliases.end());
  }
  return names;
}

/// Everything in front of the pitch: "M8" of "M8X0.9", "3/8" of "3/8-16UNC".
std::string_view sizePart(std::string_view key) {
  if (key.starts_with('M')) return key.substr(0, key.find('X'));
  return key.substr(0, key.rfind('-'));
}

tl::unexpected<Error> noThread(std::string_view written, const std::vector<Thread>& threads) {
  const std::string key = foldedThread(written).key;
  std::vector<std::string> ofThatSize;
  std::vector<std::string_view> all;
  for (const Thread& thread : threads) {
    all.push_back(thread.designation);
    const std::string own = foldedThread(thread.designation).key;
    if (!key.empty() && (sizePart(own) == sizePart(key) || sizePart(own) == key))
      ofThatSize.push_back(thread.designation);
  }
  const std::string given = shown(written);
  if (!ofThatSize.empty())
    return fail(ErrorCode::NotFound, "thread", written, {"the library has no thread “%1”", {given}},
                {"in that size it has %1", {listed(ofThatSize)}});
  const std::string near = didYouMean(nearNames(written, all));
  return fail(ErrorCode::NotFound, "thread", written, {"the library has no thread “%1”", {given}},
              near.empty() ? Message("write it like M8, M8x1, 3/8-16 or #10-32") : Message("%1", {near}));
}

tl::unexpected<Error> noName(std::string place, std::string_view written, Message problem,
                             const std::vector<std::string_view>& known, std::string examples) {
  const std::string near = didYouMean(nearNames(written, known));
  return fail(
      ErrorCode::NotFound, std::move(place), written, std::move(problem),
      near.empty() ? Message("known are for example %1", {std::move(examples)}) : Message("%1", {near}));
}

/// A size in the words of its thread system: "M16", "1 in".
std::string sizeName(Length size, ThreadSystem system) {
  return system == ThreadSystem::Metric ? "M" + significant(inMillimetres(size), 4) : text(size, kInch, 4);
}

}  // namespace

Result<Catalogue> Catalogue::make(Library library) {
  Catalogue made;
  made.m_library = std::move(library);
  const auto twice = [](std::string_view name) {
    return fail(ErrorCode::Conflict, "library", name, {"two rows answer to “%1”", {shown(name)}},
                "give one of them another name");
  };
  const auto& threads = made.m_library.threads;
  for (std::size_t i = 0; i < threads.size(); ++i)
    for (const std::string& key : keysOf(threads[i])) {
      if (made.m_threads.contains(key)) return twice(threads[i].designation);
      made.m_threads[key].push_back(i);
    }
  const auto& grades = made.m_library.grades;
  for (std::size_t i = 0; i < grades.size(); ++i) {
    made.m_grades[foldedName(grades[i].name)].push_back(i);
    for (const std::string& alias : grades[i].aliases) made.m_grades[foldedName(alias)].push_back(i);
  }
  const auto& conditions = made.m_library.conditions;
  for (std::size_t i = 0; i < conditions.size(); ++i) {
    std::vector<std::string> names = conditions[i].aliases;
    names.push_back(conditions[i].name);
    for (const std::string& name : names) {
      auto& rows = made.m_conditions[foldedName(name)];
      if (!rows.empty()) return twice(name);
      rows.push_back(i);
    }
  }
  return made;
}

Result<Thread> Catalogue::thread(std::string_view written) const {
  const FoldedThread folded = foldedThread(written);
  const auto& found = rowsNamed(m_threads, folded.key);
  if (found.empty()) return noThread(written, m_library.threads);
  Thread thread = m_library.threads[found.front()];
  if (folded.leftHand) {
    thread.hand = Hand::Left;
    thread.designation += "-LH";
  }
  return thread;
}

Result<Grade> Catalogue::grade(std::string_view written, const Thread& thread) const {
  const auto& found = rowsNamed(m_grades, foldedName(written));
  const std::string given = shown(written);
  if (found.empty())
    return noName("grade", written, {"the library has no grade “%1”", {given}}, namesOf(m_library.grades),
                  "8.8, A2-70, SAE 5 and ASTM A193 B7");
  const Grade& first = m_library.grades[found.front()];
  if (first.system && *first.system != thread.system) {
    const bool inchGrade = *first.system == ThreadSystem::Unified;
    return fail(ErrorCode::OutOfRange, "grade", written,
                {inchGrade ? "%1 is a grade for inch threads and %2 is metric"
                           : "%1 is a grade for metric threads and %2 is an inch thread",
                 {first.name, thread.designation}},
                inchGrade ? Message("take a metric grade such as 8.8 or A2-70")
                          : Message("take an inch grade such as SAE 5 or ASTM A193 B7"));
  }
  const Grade* smallestThatFits = nullptr;
  Length from = first.from, upTo = first.upTo;
  for (const std::size_t row : found) {
    const Grade& grade = m_library.grades[row];
    from = std::min(from, grade.from);
    upTo = std::max(upTo, grade.upTo);
    if (thread.diameter >= grade.from && thread.diameter <= grade.upTo &&
        (smallestThatFits == nullptr || grade.upTo < smallestThatFits->upTo))
      smallestThatFits = &grade;
  }
  if (smallestThatFits != nullptr) return *smallestThatFits;
  const std::string largest = sizeName(upTo, thread.system);
  return fail(ErrorCode::OutOfRange, "grade", written,
              {"%1 does not exist for %2", {first.name, thread.designation}},
              from.si() > 0 ? Message("it is made from %1 to %2", {sizeName(from, thread.system), largest})
                            : Message("it is made up to %1", {largest}));
}

Result<Condition> Catalogue::condition(std::string_view written) const {
  const auto& found = rowsNamed(m_conditions, foldedName(written));
  if (!found.empty()) return m_library.conditions[found.front()];
  return noName("condition", written, {"the library has no condition “%1”", {shown(written)}},
                namesOf(m_library.conditions), "dry, oiled and moly paste");
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
