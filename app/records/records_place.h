#pragma once
#include <QWidget>
#include <optional>

#include "app/common/navigator.h"
#include "app/common/row_model.h"
#include "app/common/workspace.h"
#include "app/print/ask_pdf.h"
#include "app/records/kept_record.h"

class QComboBox;
class QPushButton;

namespace cw {

class DeskPage;

/// Records: the jobs that are finished, found by what stands in them; on the right the record as a document,
/// to verify, to hand over, to add to.
class RecordsPlace final : public QWidget {
  Q_OBJECT

 public:
  RecordsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent = nullptr);

  DeskPage* page() const { return m_page; }
  /// Writes the shown record into a file, unless it is sealed and does not verify; says in the page what came
  /// of it.
  void savePdf(const PdfTarget& target);
  void saveJson(const QString& path);
  void saveCsv(const QString& path);
  /// The pages of a record that does not verify, each saying so.
  void saveMarkedPdf(const PdfTarget& target);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void makeActions();
  void makeFilters();
  void fillNamed();
  void openOther();
  void reload();
  JobQuery query() const;
  void list(Listed<JobRow> found);
  QString whenEmpty() const;
  void show(int row);
  void openRecord(const Id& job);
  bool chooseJob(const Id& job);
  void verify();
  void askSeal();
  void askAddendum();
  void askPromotion();
  QString proposedName() const;
  QString askPath(const QString& what, const QString& extension);
  void ask(const QString& what, void (RecordsPlace::*save)(const PdfTarget&));
  /// What verifying the shown record found; good for a job that is not sealed.
  SealAnswer judge() const;
  bool mayLeave();
  void savePages(const PdfTarget& target, const Stamp& stamp);
  void save(const QString& path, const std::string& bytes, const QString& standing = {});

  Workspace& m_workspace;
  RowModel<JobRow> m_model;
  DeskPage* m_page;
  QComboBox *m_state, *m_named;
  QPushButton *m_seal, *m_verify, *m_json, *m_addendum, *m_promote, *m_marked;
  std::optional<KeptRecord> m_shown;
  std::size_t m_total = 0;  ///< records that fit, listed or not
  bool m_stale = false;     ///< a job changed since the list was read
};

QWidget* makeRecordsPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
