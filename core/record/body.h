#pragma once
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/record/body_course.h"
#include "core/record/body_tighten.h"
#include "core/record/body_work.h"

namespace cw {

/// What an entry states: one struct for each kind.
using Body = std::variant<JobStarted, SignedIn, WarningsRead, ActDone, CheckMade, Measured, Applied,
                          HandStarted, ConditionConfirmed, ToolSet, PassCounted, GapsRead, Tightened,
                          CheckPassMade, Witnessed, SetAside, LeftBlank, Deviated, Corrected, Reopened,
                          Confirmed, Paused, Resumed, TakenApart, Repaired, ToolStopped, ClockWentBack,
                          CalledOff, Finished>;

/// Where a body comes from. A line states only what somebody may state; a chain brings all of it.
enum class From { Line, Chain };

/// Calls `f.template operator()<T>()` for each kind.
template <class F, std::size_t... I>
void forEachKind(F&& f, std::index_sequence<I...>) {
  (f.template operator()<std::variant_alternative_t<I, Body>>(), ...);
}
template <class F>
void forEachKind(F&& f) {
  forEachKind(std::forward<F>(f), std::make_index_sequence<std::variant_size_v<Body>>());
}

/// An overload set for std::visit. Lists that must know every kind have no generic case.
template <class... F>
struct Overloaded : F... {
  using F::operator()...;
};
template <class... F>
Overloaded(F...) -> Overloaded<F...>;

/// File word of a body's kind: "tightened".
std::string_view kindOf(const Body& body);

/// Every kind's word.
std::vector<std::string_view> bodyKinds();

/// May a correction give an entry of this kind other values?
bool isCorrectable(const Body& body);

/// The fields of a body; absent optional values and empty texts are left out, so that the canonical form
/// does not grow with fields that say nothing.
Json bodyToJson(const Body& body);

/// Reads a body of that kind. InvalidInput naming the field for an unknown kind, field, word or unit, and, in
/// a line, for a field that the program works out.
Result<Body> bodyFromJson(std::string_view kind, const Json& json, const std::string& place, From from);

/// `body` with the fields in `typed` put over it, those that are left out staying as they are.
/// InvalidInput naming a field that a correction may not touch, or that cannot be read.
Result<Body> overlaid(Body body, const Json& typed, const std::string& place);

/// The step a body speaks of, or empty.
const std::string& stepOf(const Body& body);

}  // namespace cw
