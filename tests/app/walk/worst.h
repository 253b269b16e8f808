#pragma once
#include <algorithm>
#include <array>
#include <limits>

namespace cw {

enum class TextRole { Number, Text, SideLabel, Desk };

/// The least of what was seen.
class Least {
 public:
  double see(double value) {
    m_value = std::min(m_value, value);
    return value;
  }
  bool seen() const { return m_value < std::numeric_limits<double>::infinity(); }
  double value() const { return m_value; }

 private:
  double m_value = std::numeric_limits<double>::infinity();
};

/// The worst numbers of one state in all its sizes and schemes; lengths in millimetres.
struct Worst {
  std::array<Least, 4> height;  ///< by TextRole
  Least contrast, outline, target, gap;
  std::size_t texts = 0;
};

}  // namespace cw
