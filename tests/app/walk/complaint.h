#pragma once
#include <QString>
#include <vector>

class QWidget;

namespace cw {

/// One slip: which check, on which widget, with the numbers.
struct Complaint {
  QString check, widget, what;
};
using Complaints = std::vector<Complaint>;

/// Class and object name, with the nearest named parent where it has none of its own.
QString nameOf(const QWidget* widget);

}  // namespace cw
