#pragma once
#include <QHash>
#include <QRgb>
#include <algorithm>
#include <optional>

namespace cw {

/// How often each colour stands in a part of a picture. Neighbours are mostly alike, so that a run of them is
/// looked up once.
class ColourCount {
 public:
  void see(QRgb colour) {
    if (m_at == nullptr || colour != m_last) m_at = &m_counts[m_last = colour];
    ++*m_at;
  }
  std::optional<QRgb> commonest() const {
    const auto found = std::max_element(m_counts.cbegin(), m_counts.cend());
    return found == m_counts.cend() ? std::nullopt : std::optional(found.key());
  }

 private:
  QHash<QRgb, int> m_counts;
  int* m_at = nullptr;
  QRgb m_last = 0;
};

}  // namespace cw
