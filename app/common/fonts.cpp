#include "app/common/fonts.h"

#include <fontconfig/fontconfig.h>

namespace cw {

void tellFontsApart() {
  static constexpr char kRules[] =
      "<?xml version='1.0'?><!DOCTYPE fontconfig SYSTEM 'fonts.dtd'><fontconfig>"
      "<selectfont><rejectfont><glob>*/B612Mono-*</glob></rejectfont></selectfont></fontconfig>";
  FcConfig* config = FcInitLoadConfig();
  if (config == nullptr) return;
  const bool understood =
      FcConfigParseAndLoadFromMemory(config, reinterpret_cast<const FcChar8*>(kRules), FcTrue) == FcTrue;
  // Whatever fails here costs looks only: textFamily() falls back to the system's sans.
  if (!understood || FcConfigBuildFonts(config) == FcFalse || FcConfigSetCurrent(config) == FcFalse)
    FcConfigDestroy(config);
}

}  // namespace cw
