#pragma once
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

// The words that stand for our enumerations in files and on the command line.
std::string_view word(FastenerKind kind);  ///< "bolt", "screw", "stud", "nut"
std::string_view word(Reading reading);    ///< "value", "range", "maximum", "words"
std::string_view word(Method method);      ///< "torque", "torque-and-angle"
std::string_view word(StepKind kind);      ///< "act", "check", "measure", "apply", "tighten", "hold"
std::string_view word(Witness witness);    ///< "watched", "independent"
std::string_view word(Ungrounded reason);  ///< "plug", "bearing-preload", "unmarked", "gasket", "plastic"
std::string_view word(NoSecondTurn bar);   ///< "set-threadlocker", "cured-sealant", "angle", "soft-gasket"

/// The value that `word` stands for. InvalidInput listing the known words otherwise.
template <class Enum>
Result<Enum> fromWord(std::string_view word);
template <>
Result<FastenerKind> fromWord(std::string_view word);
template <>
Result<Reading> fromWord(std::string_view word);
template <>
Result<Method> fromWord(std::string_view word);
template <>
Result<StepKind> fromWord(std::string_view word);
template <>
Result<Witness> fromWord(std::string_view word);
template <>
Result<Ungrounded> fromWord(std::string_view word);
template <>
Result<NoSecondTurn> fromWord(std::string_view word);

}  // namespace cw
