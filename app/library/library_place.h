#pragma once
#include <QWidget>
#include <optional>

#include "app/common/navigator.h"
#include "app/common/row_model.h"
#include "app/common/workspace.h"
#include "core/store/library_search.h"

namespace cw {

class DeskPage;

/// Library: every thread, grade, face, condition, material and torque that the program knows by name, found
/// as one types; on the right one of them with all its values.
class LibraryPlace final : public QWidget {
  Q_OBJECT

 public:
  explicit LibraryPlace(Workspace& workspace, QWidget* parent = nullptr);

  DeskPage* page() const { return m_page; }

 private:
  void reload();
  void list(std::vector<SearchEntry> rows);
  void show(int row);

  Workspace& m_workspace;
  RowModel<SearchEntry> m_model;
  DeskPage* m_page;
  std::optional<LibrarySearch> m_shipped;
};

QWidget* makeLibraryPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
