#pragma once
#include <QWidget>
#include <vector>

#include "core/pattern/layout.h"
#include "core/units/parse.h"

class QLabel;
class QTableWidget;
class QTableWidgetItem;

namespace cw {

class InputField;

/// Free positions by their coordinates in the part's own frame: one line to type on, Enter adds; a table to
/// change them in; Delete takes one away.
class PointTable final : public QWidget {
  Q_OBJECT

 public:
  explicit PointTable(QWidget* parent = nullptr);

  void present(const Layout& layout);
  bool refuse(const Error& error);

 signals:
  void edited(const std::vector<cw::Point>& points);
  void removed(std::size_t position);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void addTyped();
  void change(QTableWidgetItem* item);
  void removeCurrent();

  std::vector<Point> m_points;
  const LengthUnit* m_unit = &kMillimetre;
  InputField* m_typed;
  QTableWidget* m_table;
  QLabel* m_found;
  bool m_adding = false;  ///< what is refused now was just typed
};

/// "40 -25", "40; -25" and, with a decimal point, "40, -25"; several points one after the other.
/// InvalidInput for a word that is no number and for an odd number of them.
Result<std::vector<Point>> pointsIn(const std::string& text, const LengthUnit& unit, DecimalMark mark);

}  // namespace cw
