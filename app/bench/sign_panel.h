#pragma once
#include "app/bench/bench_form.h"
#include "app/common/workspace.h"
#include "core/record/tool_offer.h"

namespace cw {

/// Who goes on with a job that was left open or paused, or was left alone for a while.
class SignPanel final : public BenchForm {
  Q_OBJECT
 public:
  explicit SignPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present(const Id& job);

 signals:
  void signedIn(const cw::Id& job, const cw::Worker& worker);

 private:
  void refresh();
  void goOn();
  Result<Worker> worker() const;
  Result<Receipt> signIn(const Worker& who);

  Workspace& m_workspace;
  Id m_job;
  bool m_paused = false;
  QComboBox *m_person, *m_supervisor;
  QLineEdit *m_pin, *m_supervisorPin;
};

}  // namespace cw
