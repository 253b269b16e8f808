#pragma once
#include <QWidget>
#include <optional>

#include "app/common/navigator.h"
#include "app/common/row_model.h"
#include "app/common/workspace.h"

class QComboBox;
class QPushButton;

namespace cw {

class DeskPage;
class RowForm;
struct SignQuestion;

/// Library: every thread, grade, face, condition, material and torque that has a name here, found as one
/// types; on the right one of them with all its values. A shop adds its own, copies what came with the
/// program under another name, and takes tables in and out.
class LibraryPlace final : public QWidget {
  Q_OBJECT

 public:
  explicit LibraryPlace(Workspace& workspace, QWidget* parent = nullptr);

  DeskPage* page() const { return m_page; }
  /// Says what an import of the file would do, and asks for name and PIN if nothing is wrong with it.
  void importFrom(const QString& path);
  /// Writes the table that the shown row stands in: the shop's own rows, or those that came with the program.
  void exportTo(const QString& path);

 signals:
  void imported();  ///< or refused: the answer stands in the page

 private:
  void makeActions();
  void makeFoot();
  void reload();
  Result<Listed<LibraryHit>> hits();
  void list(Listed<LibraryHit> found);
  void show(int row);
  void present(const LibraryHit& hit);
  const LibraryHit& shown() const;
  std::vector<std::string> shownCells();
  void askNew();
  void askCopy();
  void askChange();
  void askWithdraw();
  void ask(RowKind kind, const std::vector<std::string>& cells, std::int64_t row, const QString& states);
  void signRow();
  void showRehearsal(const QString& path, const std::string& csv, const ImportRehearsal& rehearsal);

  Workspace& m_workspace;
  RowModel<LibraryHit> m_model;
  DeskPage* m_page;
  RowForm* m_form;
  std::int64_t m_changed = 0;  ///< row that the form changes; 0: it adds one
  QComboBox *m_whose, *m_kind;
  QPushButton *m_copy, *m_change, *m_withdraw, *m_add, *m_import, *m_export;
  std::optional<LibrarySearch> m_shipped;
};

QWidget* makeLibraryPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
