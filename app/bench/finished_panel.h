#pragma once
#include <QWidget>

#include "app/common/workspace.h"

class QComboBox;
class QLineEdit;

namespace cw {

class BenchFoot;
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
  DocumentView* m_document;
  QComboBox* m_sealer;
  QLineEdit* m_pin;
  BenchFoot* m_foot;
};

}  // namespace cw
