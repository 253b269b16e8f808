#pragma once
#include <string>

#include "core/fastener/catalogue.h"
#include "core/joint/capacity.h"

namespace CLI {
class App;
}

namespace cw {

/// The words that name a fastener and the state it is in.
struct FastenerOptions {
  std::string thread, grade, face;
  std::string condition, friction, bearingFriction, nutFactor;
  std::string tapped, engagement, threadLength, fit;
};

// Each adds options to a command that takes a fastener.
void addThreadOption(CLI::App& app, FastenerOptions& into);      ///< --thread, required
void addGradeOption(CLI::App& app, FastenerOptions& into);       ///< --grade
void addFaceOption(CLI::App& app, FastenerOptions& into);        ///< --face
void addConditionOptions(CLI::App& app, FastenerOptions& into);  ///< --condition, --friction … --nut-factor
void addHoleOptions(CLI::App& app, FastenerOptions& into);       ///< --tapped, --engagement …

/// The fastener they name, out of that library. NotFound and OutOfRange as the catalogue has them;
/// InvalidInput for a tapped material without an engagement, or more than one condition. What is not given
/// is left open.
Result<FastenerCase> fastenerCase(const FastenerOptions& given, const Catalogue& catalogue);

}  // namespace cw
