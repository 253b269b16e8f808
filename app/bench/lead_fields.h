#pragma once
#include "app/common/workspace.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace cw {

class BenchForm;

/// In a form that starts a job: the lead who allows it all the same, with the PIN or by phone, and why.
class LeadFields final : public QObject {
  Q_OBJECT

 public:
  LeadFields(BenchForm& form, const QString& label);

  void clear();
  Result<void> fill(Shop& shop);
  void setShown(bool shown);
  /// Puts what is filled in where it is shown: into the start's own fields, and the PIN beside them.
  void addTo(Beginning& beginning, PersonSign& allowedBy, std::string& reason) const;

 private:
  void showPin();

  BenchForm& m_form;
  QComboBox* m_lead;
  QCheckBox* m_byPhone;
  QLineEdit *m_pin, *m_reason;
  bool m_shown = false;
};

}  // namespace cw
