#pragma once
#include <QString>
#include <QWidget>

namespace cw {

class Workspace;

/// One place of the window: what the rail shows and how it is made. Places know the workspace, never each
/// other; what one wants of another goes through Navigator.
struct Place {
  QString key;        ///< for settings and tests: "bench"
  const char* title;  ///< on the rail; translation context "places"
  QWidget* (*make)(Workspace& workspace, class Navigator& navigator, QWidget* parent);
};

}  // namespace cw
