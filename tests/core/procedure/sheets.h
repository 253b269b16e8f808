#pragma once
#include <gtest/gtest.h>

#include "core/base/resource.h"
#include "core/procedure/sheet_file.h"

namespace cw {

/// A shipped sheet, to be changed by the test that needs it otherwise.
inline Sheet shippedSheet(std::string_view path) {
  auto sheet = readSheet(resource(path));
  if (!sheet) ADD_FAILURE() << path << ": " << sentence(sheet.error());
  return sheet ? *sheet : Sheet();
}

inline Sheet flangeExample() {
  return shippedSheet("examples/flange_nps4_class150.json");
}

inline Sheet pumpCover() {
  return shippedSheet("demo/sheets/pump_cover.json");
}

}  // namespace cw
