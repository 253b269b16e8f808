#pragma once
#include <QWidget>
#include <optional>

#include "core/settling/settling_way.h"

class QComboBox;
class QLabel;
class QSpinBox;

namespace cw {

class DocumentView;
class InputField;
class LoadView;

/// One of the two ways that are compared: its order and passes, the loads as a picture, the passes in
/// numbers.
class WayPanel final : public QWidget {
  Q_OBJECT

 public:
  /// `name` begins the names of its widgets: "left", "right".
  WayPanel(const QString& name, const QString& title, const SettlingWay& way, QWidget* parent = nullptr);

  void setWay(const SettlingWay& way);
  /// Nothing while what is typed cannot be read, which is then said.
  std::optional<SettlingWay> way();
  /// Says why there is nothing to show.
  void refuse(const QString& sentence);
  /// Takes the usual rule where the chosen one does not fit the bolts.
  void fitRule(const Layout& bolts);
  void present(const Layout& bolts, const SettlingOutcome& outcome);
  void showAfter(std::size_t steps);
  std::size_t steps() const;

 signals:
  void edited();

 private:
  QWidget* makeForm(const QString& name, const SettlingWay& way);

  QComboBox* m_rule;
  InputField* m_shares;
  QSpinBox* m_rounds;
  LoadView* m_loads;
  QLabel* m_caption;
  DocumentView* m_passes;
  std::optional<SettlingOutcome> m_outcome;
};

}  // namespace cw
