#pragma once
#include "app/bench/bench_form.h"
#include "app/bench/quick_fields.h"
#include "app/common/workspace.h"
#include "core/record/tool_offer.h"

namespace cw {

class JointView;
class LayoutInput;

/// A joint that has no sheet: layout, specification and source, entered by somebody qualified and judged by
/// the guard before work may start.
class LeadFields;

class QuickPanel final : public BenchForm {
  Q_OBJECT

 public:
  explicit QuickPanel(Workspace& workspace, QWidget* parent = nullptr);
  void present();  ///< empties the form and reads machines and people anew

  /// The picture of the source's line, from a file. The errors of readFile and `photograph`.
  Result<void> attach(const QString& path);

 signals:
  void started(const cw::Id& job, const cw::Worker& worker);

 private:
  void addJoint();
  void addSource();
  void addWho();
  QWidget* makeJudgement();
  void choosePhotograph();
  void propose();  ///< what the printed line says goes into least, aim and most
  Result<void> fill();
  void judge();
  QuickFields fields() const;
  Result<QuickJoint> joint() const;
  void showVerdict(const QuickVerdict& verdict);
  void start();

  Workspace& m_workspace;
  LayoutInput* m_layout;
  JointView* m_drawing;
  QComboBox *m_machine, *m_grade, *m_condition, *m_limit, *m_passes, *m_person;
  LeadFields* m_lead;
  QLineEdit *m_workOrder, *m_name, *m_thread, *m_printed, *m_low, *m_aim, *m_high, *m_document, *m_page,
      *m_revision, *m_pin;
  QPushButton* m_photographButton;
  QLabel* m_verdict;
  std::optional<Photograph> m_photograph;
};

}  // namespace cw
