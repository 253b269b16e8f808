#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QLabel;
class QPushButton;

namespace cw {

class DocumentView;

/// A finished job: what its record will say, and the seal.
class FinishedPanel final : public QWidget {
  Q_OBJECT
 public:
  explicit FinishedPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present(const Id& job);

 signals:
  void recordWanted(const cw::Id& job);
  void left();

 private:
  void seal();
  Workspace& m_workspace;
  Id m_job;
  QLabel *m_title, *m_said;
  DocumentView* m_document;
  QPushButton* m_seal;
};

}  // namespace cw
