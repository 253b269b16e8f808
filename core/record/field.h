#pragma once
#include <compare>
#include <concepts>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/base/json.h"
#include "core/units/stated.h"

namespace cw {

// What the fields of an entry are made of. Each kind lists its typed fields once; what an entry names, what the
// program works out, what a correction may change, and how it is read and written all follow from the types.

/// A name of something: of whom or of what, the tag says.
template <class Tag>
struct Name {
  std::string text;

  Name() = default;
  Name(std::string name) : text(std::move(name)) {}
  Name(const char* name) : text(name) {}

  operator const std::string&() const { return text; }
  operator std::string_view() const { return text; }
  bool empty() const { return text.empty(); }
  auto operator<=>(const Name&) const = default;
  template <std::convertible_to<std::string_view> S>
  friend bool operator==(const Name& name, const S& other) {
    return name.text == std::string_view(other);
  }
};

using PersonSign = Name<struct PersonTag>;      ///< of a person of the shop
using ToolId = Name<struct ToolTag>;            ///< as marked on the tool
using StepId = Name<struct StepTag>;            ///< of a step of the job's sheet
using PositionLabel = Name<struct PositionTag>;  ///< as on the part

/// What the program works out of the job, the sheet and the rest of the entry; nobody states it, and a chain
/// that says otherwise is refused.
template <class T>
struct Derived {
  T value{};
  operator const T&() const { return value; }
  bool operator==(const Derived&) const = default;
};

/// How something stood in the shop at that moment: taken when the entry is written, believed when it is read.
template <class T>
struct AsAtUse {
  T value{};
  operator const T&() const { return value; }
  bool operator==(const AsAtUse&) const = default;
};

/// Whether a correction may give an entry of a kind other values. What it may not touch is done anew instead.
enum class Correction { Never, Values };

// Closed lists: a new type of field gets its line here and in each visitor, or nothing compiles.

/// Names nobody and nothing.
template <class T>
inline constexpr bool kPlain = std::is_enum_v<T>;
template <>
inline constexpr bool kPlain<std::string> = true;
template <>
inline constexpr bool kPlain<bool> = true;
template <>
inline constexpr bool kPlain<int> = true;
template <>
inline constexpr bool kPlain<Json> = true;
template <>
inline constexpr bool kPlain<StatedTorque> = true;
template <>
inline constexpr bool kPlain<StatedLength> = true;
template <class T>
inline constexpr bool kPlain<std::optional<T>> = kPlain<T>;
template <class T>
inline constexpr bool kPlain<std::vector<T>> = kPlain<T>;
template <class T>
concept Plain = kPlain<T>;

/// What a correction may not touch: which step, position or person it speaks of, and what is worked out.
template <class T>
inline constexpr bool kStays = false;
template <class Tag>
inline constexpr bool kStays<Name<Tag>> = true;
template <class T>
inline constexpr bool kStays<Derived<T>> = true;
template <class T>
inline constexpr bool kStays<AsAtUse<T>> = true;

}  // namespace cw
