#pragma once
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "core/base/resource.h"
#include "core/procedure/sheet_file.h"
#include "core/units/parse.h"

namespace cw {

inline StatedTorque torque(std::string_view text) {
  return *parse<TorqueTag>(text);
}

/// A sheet that reads and reviews well, to be changed by the test that needs it otherwise.
inline Sheet sheetFrom(std::string_view bytes) {
  auto sheet = readSheet(bytes);
  if (!sheet) ADD_FAILURE() << sentence(sheet.error());
  return sheet ? *sheet : Sheet();
}

inline Sheet flangeExample() {
  return sheetFrom(resource("examples/flange_nps4_class150.json"));
}
inline Sheet pumpCover() {
  return sheetFrom(resource("demo/sheets/pump_cover.json"));
}

/// Every sheet below resources/, by its path.
inline std::vector<std::string_view> shippedSheets() {
  auto out = resourcesBelow("demo/sheets/");
  for (const auto path : resourcesBelow("examples/"))
    if (resource(path).find(kSheetFormat) != std::string_view::npos) out.push_back(path);
  return out;
}

/// tests/data/sheets/small.json
inline std::string smallSheetText() {
  std::ifstream file(CW_TEST_DATA "/sheets/small.json", std::ios::binary);
  std::ostringstream out;
  out << file.rdbuf();
  return out.str();
}
inline Sheet smallSheet() {
  return sheetFrom(smallSheetText());
}

/// `text` with its first `from` replaced; fails the test if it has none.
inline std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const auto at = text.find(from);
  if (at == std::string::npos) {
    ADD_FAILURE() << "nothing to replace: " << from;
    return text;
  }
  return text.replace(at, from.size(), to);
}

}  // namespace cw
