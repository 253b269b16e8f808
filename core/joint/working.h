#pragma once
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace cw {

/// How a result came about, so that a stranger can recompute it with pen and paper: what was given, each
/// step as a formula over the symbols above it, where it holds and who says so. Formulas are plain text
/// with + − · / √ ² ³ ^ π and function names tan, cos, exp, ln, min, max; numbers carry the unit beside
/// them and every formula is right in exactly those units.
struct Working {
  struct Given {
    std::string symbol;
    Message meaning;
    std::string value;   ///< six significant digits at most
    std::string unit;    ///< symbol; empty for a plain number
    std::string source;  ///< standard, table or whoever stated it
  };
  struct Step {
    std::string symbol;
    std::string formula;  ///< right-hand side
    std::string value;
    std::string unit;
  };

  std::string formula;  ///< the governing relation, in symbols
  std::vector<Given> given;
  std::vector<Step> steps;
  std::vector<Message> validity;
  std::vector<std::string> sources;
  std::vector<Message> cautions;

  template <class Tag>
  Working& give(std::string symbol, Message meaning, Quantity<Tag> value, const Unit<Tag>& unit,
                std::string source) {
    given.push_back({std::move(symbol), std::move(meaning), significant(in(unit, value), kDigits),
                     std::string(unit.symbol), std::move(source)});
    return *this;
  }
  Working& give(std::string symbol, Message meaning, double value, std::string source);

  template <class Tag>
  Working& step(std::string symbol, std::string rightSide, Quantity<Tag> value, const Unit<Tag>& unit) {
    steps.push_back({std::move(symbol), std::move(rightSide), significant(in(unit, value), kDigits),
                     std::string(unit.symbol)});
    return *this;
  }
  Working& step(std::string symbol, std::string rightSide, double value);

  /// Takes over what another working gives, derives and rests on; a symbol already given is kept once.
  Working& include(const Working& other);

  static constexpr int kDigits = 6;
};

/// A result together with its working.
template <class T>
struct Worked {
  T value;
  Working working;
};

/// The working as lines of English text, for the command line and for tests.
std::vector<std::string> lines(const Working& working);

}  // namespace cw
