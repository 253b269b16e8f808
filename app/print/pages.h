#pragma once
#include <QRectF>
#include <functional>
#include <vector>

class QPainter;

namespace cw {

/// Draws one piece of a page with its top left corner at the origin.
using Drawing = std::function<void(QPainter&)>;

/// What has been set so far, page by page, before anything is painted: so that "page 2 of 7" is known on
/// page 1.
class Pages {
 public:
  explicit Pages(const QRectF& body) : m_body(body), m_pages(1) {}

  double width() const { return m_body.width(); }
  double room() const { return m_body.height() - m_cursor; }  ///< left on this page
  double height() const { return m_body.height(); }           ///< of an empty page
  std::size_t count() const { return m_pages.size(); }

  /// Puts a piece below the last one.
  void put(double height, Drawing drawing);
  /// Leaves space, unless a page has just begun.
  void skip(double height);
  void breakPage();
  /// Breaks the page if less than `height` is left of it and a fresh one has more.
  void need(double height);

  /// A place to come back to, if what was put since is better put elsewhere.
  struct Mark {
    std::size_t pages = 0, pieces = 0;
    double cursor = 0;
  };
  Mark mark() const { return {m_pages.size(), m_pages.back().size(), m_cursor}; }
  void rewind(const Mark& mark);

  void paint(QPainter& painter, std::size_t page) const;

 private:
  struct Piece {
    double y;
    Drawing drawing;
  };
  QRectF m_body;
  double m_cursor = 0;
  std::vector<std::vector<Piece>> m_pages;
};

}  // namespace cw
