#pragma once
#include "app/look/colours.h"

namespace cw {

/// How this user wants to see the window on this computer.
class LookSettings {
 public:
  Scheme scheme() const;
  void setScheme(Scheme scheme);

  double textScale() const;  ///< 1 to 2
  void setTextScale(double scale);

  double dotsPerMillimetre() const;  ///< as measured on the glass; 0: not measured
  void setDotsPerMillimetre(double dots);
};

}  // namespace cw
