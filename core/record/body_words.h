#pragma once
#include "core/base/words.h"

namespace cw {

/// Why the job is done.
enum class Reason { NewWork, Warranty, Comeback, RetorqueDue };
/// How a tightening is known. A click says that the setting was reached, never a value.
enum class Known { Clicked, Read, Instrument };
/// What became of a check.
enum class Answer { Yes, No };
/// Why a step has nothing written against it.
enum class Absence { NotApplicable, NotRecorded };
/// How a second person took part. Self is the check after a break in a shop with one active person.
enum class Manner { Watched, Independent, Self };
/// What stopped a wrench that was in use.
enum class Stop { Dropped, Quarantined, Retired };

template <>
struct Words<Reason> {
  static constexpr std::array<std::pair<Reason, std::string_view>, 4> kAll{
      {{Reason::NewWork, "new-work"},
       {Reason::Warranty, "warranty"},
       {Reason::Comeback, "comeback"},
       {Reason::RetorqueDue, "retorque-due"}}};
};
template <>
struct Words<Known> {
  static constexpr std::array<std::pair<Known, std::string_view>, 3> kAll{
      {{Known::Clicked, "clicked"}, {Known::Read, "read"}, {Known::Instrument, "instrument"}}};
};
template <>
struct Words<Answer> {
  static constexpr std::array<std::pair<Answer, std::string_view>, 2> kAll{
      {{Answer::Yes, "yes"}, {Answer::No, "no"}}};
};
template <>
struct Words<Absence> {
  static constexpr std::array<std::pair<Absence, std::string_view>, 2> kAll{
      {{Absence::NotApplicable, "not-applicable"}, {Absence::NotRecorded, "not-recorded"}}};
};
template <>
struct Words<Manner> {
  static constexpr std::array<std::pair<Manner, std::string_view>, 3> kAll{
      {{Manner::Watched, "watched"}, {Manner::Independent, "independent"}, {Manner::Self, "self"}}};
};
template <>
struct Words<Stop> {
  static constexpr std::array<std::pair<Stop, std::string_view>, 3> kAll{
      {{Stop::Dropped, "dropped"}, {Stop::Quarantined, "quarantined"}, {Stop::Retired, "retired"}}};
};

}  // namespace cw
