#pragma once
#include <QFont>
#include <QPageSize>
#include <QRectF>

#include <string_view>

#include "core/base/result.h"

class QPaintDevice;

namespace cw {

/// The two papers that shops print on.
enum class PageSize { Letter, A4 };

QPageSize qtPageSize(PageSize size);

/// "letter" or "a4". InvalidInput otherwise.
Result<PageSize> pageSizeFrom(std::string_view word);

/// Measures of a page, in the device's dots.
class Paper {
 public:
  explicit Paper(QPaintDevice& device);

  double points(double value) const { return value * m_dotsPerPoint; }
  double millimetres(double value) const { return points(value * 72 / 25.4); }

  QRectF whole() const;   ///< from margin to margin
  QRectF above() const;   ///< the margin over the head, as far as printers reach
  QRectF body() const;    ///< between head and foot
  QRectF head() const;    ///< one line and the notice
  QRectF footer() const;  ///< hash, count and page number

  /// The program's running face, so many points high.
  QFont text(double size, QFont::Weight weight = QFont::Normal) const;

  QPaintDevice& device() const { return m_device; }

 private:
  QPaintDevice& m_device;
  double m_dotsPerPoint;
  QRectF m_page;
};

}  // namespace cw
