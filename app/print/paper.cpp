#include "app/print/paper.h"

#include <QPaintDevice>

#include "app/look/measures.h"

namespace cw {
namespace {

constexpr double kSideMargin = 18, kTopMargin = 12, kBottomMargin = 11;  // mm
constexpr double kHeadHeight = 12, kFootHeight = 10;                     // mm

}  // namespace

QPageSize qtPageSize(PageSize size) {
  return QPageSize(size == PageSize::Letter ? QPageSize::Letter : QPageSize::A4);
}

Result<PageSize> pageSizeFrom(std::string_view word) {
  if (word == "letter") return PageSize::Letter;
  if (word == "a4") return PageSize::A4;
  return fail(ErrorCode::InvalidInput, "paper", word, {"“%1” is no paper of ours", {shown(word)}},
              "write letter or a4");
}

Paper::Paper(QPaintDevice& device)
    : m_device(device),
      m_dotsPerPoint(device.logicalDpiX() / 72.0),
      m_page(0, 0, device.width(), device.height()) {
  m_page.adjust(millimetres(kSideMargin), millimetres(kTopMargin), -millimetres(kSideMargin),
                -millimetres(kBottomMargin));
}

QRectF Paper::whole() const {
  return m_page;
}

QRectF Paper::above() const {
  constexpr double kUnprintable = 4.5, kGap = 0.5;  // mm
  return QRectF(m_page.left(), m_page.top() - millimetres(kTopMargin - kUnprintable), m_page.width(),
                millimetres(kTopMargin - kUnprintable - kGap));
}

QRectF Paper::body() const {
  return m_page.adjusted(0, millimetres(kHeadHeight), 0, -millimetres(kFootHeight));
}

QRectF Paper::head() const {
  return QRectF(m_page.topLeft(), QSizeF(m_page.width(), millimetres(kHeadHeight)));
}

QRectF Paper::footer() const {
  const double height = millimetres(kFootHeight);
  return QRectF(m_page.left(), m_page.bottom() - height, m_page.width(), height);
}

QFont Paper::text(double size, QFont::Weight weight) const {
  QFont font(textFamily());
  font.setPixelSize(qRound(points(size)));
  font.setWeight(weight);
  return font;
}

}  // namespace cw
