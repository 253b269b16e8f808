#pragma once
#include <QSize>
#include <QStringList>
#include <map>
#include <vector>

#include "app/look/colours.h"
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
  void complain(const QString& where, const Complaints& complaints);
  QString table() const;
  /// The slips since the last call, a line each, with where they were seen.
  QString newSlips();

 private:
  std::map<std::pair<QString, QString>, Worst> m_rows;
  std::map<QString, QStringList> m_slips;  ///< by the slip: where it was seen
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
  void finishDocuments() const;
  Complaints check(Worst& measured, const QImage& picture) const;
  Complaints checkScrolledDown(Worst& measured) const;
  void save(const QString& page, const QString& state, const QSize& size, const QImage& picture) const;

  MainWindow& m_window;
  WalkLook m_look;
};

/// Lets wrapped text and scroll bars come to rest.
void settle();

/// Pictures are written beside the walk; returns when all of them are.
void waitForPictures();

}  // namespace cw
