#pragma once
#include "app/bench/bench_form.h"
#include "app/common/workspace.h"

namespace cw {

class DocumentView;

/// An open job that a trial version began: it can be read, and called off.
class TrialPanel final : public BenchForm {
  Q_OBJECT
 public:
  explicit TrialPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present(const Id& job);

 signals:
  void calledOff(const cw::Id& job);

 private:
  void callOff();

  Workspace& m_workspace;
  Id m_job;
  DocumentView* m_document;
  QLineEdit *m_reason, *m_pin;
  QComboBox* m_person;
};

}  // namespace cw
