#include "app/look/fonts.h"

#include <fontconfig/fontconfig.h>

namespace cw {

void tellFontsApart() {
  static constexpr char kRules[] =
      "<?xml version='1.0'?><!DOCTYPE fontconfig SYSTEM 'fonts.dtd'><fontconfig>"
      "<selectfont><rejectfont><glob>*/B612Mono-*</glob></rejectfont></selectfont></fontconfig>";
  // The system's and the user's own rules first. FcInitLoadConfig() would read them too, and all those that
  // nobody has switched on as well, which doubles the time.
  FcConfig* config = FcConfigCreate();
  if (config == nullptr) return;
  const bool understood =
      FcConfigParseAndLoad(config, nullptr, FcTrue) == FcTrue &&
      FcConfigParseAndLoadFromMemory(config, reinterpret_cast<const FcChar8*>(kRules), FcTrue) == FcTrue;
  // Whatever fails here costs looks only: textFamily() falls back to the system's sans.
  if (understood && FcConfigBuildFonts(config) == FcTrue) FcConfigSetCurrent(config);
  FcConfigDestroy(config);
}

}  // namespace cw
