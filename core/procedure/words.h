#pragma once
#include "core/base/words.h"
#include "core/procedure/sheet.h"

namespace cw {

// The words that stand for a sheet's enumerations in files and on the command line.

template <>
struct Words<FastenerKind> {
  static constexpr std::array<std::pair<FastenerKind, std::string_view>, 4> kAll{
      {{FastenerKind::Bolt, "bolt"},
       {FastenerKind::Screw, "screw"},
       {FastenerKind::Stud, "stud"},
       {FastenerKind::Nut, "nut"}}};
};

template <>
struct Words<Reading> {
  static constexpr std::array<std::pair<Reading, std::string_view>, 4> kAll{{{Reading::Value, "value"},
                                                                             {Reading::Range, "range"},
                                                                             {Reading::Maximum, "maximum"},
                                                                             {Reading::Words, "words"}}};
};

template <>
struct Words<Method> {
  static constexpr std::array<std::pair<Method, std::string_view>, 2> kAll{
      {{Method::TorqueOnly, "torque"}, {Method::TorqueAndAngle, "torque-and-angle"}}};
};

template <>
struct Words<StepKind> {
  static constexpr std::array<std::pair<StepKind, std::string_view>, 6> kAll{{{StepKind::Act, "act"},
                                                                              {StepKind::Check, "check"},
                                                                              {StepKind::Measure, "measure"},
                                                                              {StepKind::Apply, "apply"},
                                                                              {StepKind::Tighten, "tighten"},
                                                                              {StepKind::Hold, "hold"}}};
};

template <>
struct Words<Witness> {
  static constexpr std::array<std::pair<Witness, std::string_view>, 2> kAll{
      {{Witness::Watched, "watched"}, {Witness::Independent, "independent"}}};
};

template <>
struct Words<Ungrounded> {
  static constexpr std::array<std::pair<Ungrounded, std::string_view>, 5> kAll{
      {{Ungrounded::Plug, "plug"},
       {Ungrounded::BearingPreload, "bearing-preload"},
       {Ungrounded::UnmarkedFastener, "unmarked"},
       {Ungrounded::LimitedByGasket, "gasket"},
       {Ungrounded::LimitedByPlastic, "plastic"}}};
};

template <>
struct Words<NoSecondTurn> {
  static constexpr std::array<std::pair<NoSecondTurn, std::string_view>, 4> kAll{
      {{NoSecondTurn::SetThreadlocker, "set-threadlocker"},
       {NoSecondTurn::CuredSealant, "cured-sealant"},
       {NoSecondTurn::AngleTightening, "angle"},
       {NoSecondTurn::SoftGasket, "soft-gasket"}}};
};

template <>
struct Words<IfItLetsGo> {
  static constexpr std::array<std::pair<IfItLetsGo, std::string_view>, 4> kAll{
      {{IfItLetsGo::Nuisance, "nuisance"},
       {IfItLetsGo::Leak, "leak"},
       {IfItLetsGo::Damage, "damage"},
       {IfItLetsGo::Injury, "injury"}}};
};

}  // namespace cw
