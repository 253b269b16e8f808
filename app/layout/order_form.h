#pragma once
#include <QWidget>

#include "core/pattern/pattern.h"

class QCheckBox;
class QComboBox;
class QSpinBox;
class QVBoxLayout;

namespace cw {

class InputField;
class NumberField;

/// How a layout is tightened: rule or order by hand, loosening, tools, passes. What cannot be taken is said
/// beside its field.
class OrderForm final : public QWidget {
  Q_OBJECT

 public:
  explicit OrderForm(QWidget* parent = nullptr);

  void present(const Pattern& pattern);

 signals:
  void edited(const cw::Pattern& pattern);
  void clickingWanted();  ///< the order is to be clicked on the drawing

 private:
  template <class Widget>
  Widget* add(Widget* widget, const char* name, const QString& heading = {});
  void addOrder();
  void addPasses();
  void read();
  bool readPasses(PassPlan& into);
  void sayFindings();

  Pattern m_pattern;
  QVBoxLayout* m_column;
  QComboBox* m_rule;
  InputField *m_byHand, *m_shares;
  NumberField *m_snug, *m_rounds, *m_wait;
  QCheckBox *m_loosens, *m_fingers, *m_checks, *m_retorques;
  QSpinBox* m_tools;
};

/// "Star", "star, later convention" …: a rule's name for people.
QString ruleName(OrderRule rule);

}  // namespace cw
