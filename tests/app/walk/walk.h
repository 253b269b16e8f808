#pragma once
#include <QSize>
#include <map>
#include <set>
#include <vector>

#include "app/common/colours.h"
#include "app/shell/main_window.h"
#include "tests/app/walk/complaint.h"
#include "tests/app/walk/worst.h"

namespace cw {

/// How the window is looked at.
struct WalkLook {
  Scheme scheme = Scheme::Light;
  double scale = 1;
  QString text() const;
};

/// What the walk found, of all its runs together: a row a state, and each slip with where it was seen.
class WalkReport {
 public:
  static WalkReport& theOne();

  Worst& measured(const QString& page, const QString& state) { return m_rows[{page, state}]; }
  void complain(const QString& page, const QString& state, const QString& where,
                const Complaints& complaints);
  /// Slips of which no line of the file of known ones is the beginning.
  std::size_t unknown() const { return m_unknown.size(); }
  QString table() const;
  /// The unknown slips, or with `known` all, each with where it was seen.
  QString slips(std::size_t most, bool known) const;

 private:
  std::map<std::pair<QString, QString>, Worst> m_rows;
  std::map<QString, std::set<QString>> m_slips;  ///< by the slip: where it was seen
  std::set<QString> m_unknown;
};

/// A window that is taken from state to state; in each it is resized, measured, and pictures are taken.
class Walk {
 public:
  Walk(MainWindow& window, WalkLook manner) : m_window(window), m_look(manner) {}

  /// Checks the window as it stands, under this name. Pictures go to the build's folder.
  void look(const QString& page, const QString& state);
  MainWindow& window() { return m_window; }

 private:
  std::vector<QSize> sizes() const;
  Complaints check(Worst& measured, const QImage& picture) const;
  Complaints checkScrolledDown(Worst& measured) const;
  void save(const QString& page, const QString& state, const QSize& size, const QImage& picture) const;

  MainWindow& m_window;
  WalkLook m_look;
};

/// Lets wrapped text and scroll bars come to rest.
void settle();

}  // namespace cw
