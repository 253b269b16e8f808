#pragma once
#include "app/bench/bench_form.h"
#include "app/common/workspace.h"
#include "core/record/tool_offer.h"

namespace cw {

class LeadFields;

/// Work order, machine, reason, sheet, and who does it.
class StartPanel final : public BenchForm {
  Q_OBJECT
 public:
  explicit StartPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present();  ///< empties the form and reads sheets, machines and people anew

 signals:
  void started(const cw::Id& job, const cw::Worker& worker);

 private:
  void start();
  void refresh();
  void offerSheets();  ///< those for this machine first
  void judgeSheet();
  Result<void> fill();
  Result<std::string> machineModel() const;
  const SheetRow* chosenSheet() const;
  Result<const Sheet*> read(const SheetRow& row);

  Workspace& m_workspace;
  QComboBox *m_sheet, *m_machine, *m_reason, *m_parent, *m_person, *m_supervisor;
  QLineEdit *m_workOrder, *m_hours, *m_pin, *m_supervisorPin;
  LeadFields* m_lead;
  std::vector<SheetRow> m_issued;
  std::string m_readDigest;  ///< of the sheet read last
  Sheet m_read;
};

}  // namespace cw
