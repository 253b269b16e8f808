#pragma once
#include <QWidget>

#include "core/pattern/layout.h"

class QCheckBox;
class QComboBox;
class QVBoxLayout;

namespace cw {

class InputField;
class NumberField;
class PointTable;
class ShapeForm;

/// Everything a layout is described by: shape, unit, what is left out, labels, view, outline, groups. What
/// cannot be taken is said beside its field, and the layout stays as it was.
class LayoutForm final : public QWidget {
  Q_OBJECT

 public:
  explicit LayoutForm(QWidget* parent = nullptr);

  void present(const Layout& layout);
  /// Says at its field what stands against a layout; false if it is about none.
  bool refuse(const Error& error);
  PointTable* points() const { return m_points; }

 signals:
  /// A layout that `positions` takes; or one of no free positions yet.
  void edited(const cw::Layout& layout);
  void outlineWanted();  ///< the outline is to be drawn corner by corner

 private:
  template <class Widget>
  Widget* add(Widget* widget, const QString& heading = {});
  void addLabels();
  void addView();
  void addOutline();
  void read();
  void offer(const Layout& layout);
  void chooseKind(int kind);
  void chooseUnit(int unit);
  bool readGroups(Layout& into);
  bool readNumbers(InputField* field, std::vector<std::size_t>& into);
  bool readOutline(Layout& into);
  bool readCorners(Layout& into);

  Layout m_layout;
  QVBoxLayout* m_column;
  QComboBox *m_unit, *m_labels, *m_outline;
  ShapeForm* m_shape;
  PointTable* m_points;
  InputField *m_own, *m_leftOut, *m_groups, *m_corners;
  NumberField *m_rotation, *m_diameter;
  QCheckBox* m_mirrored;
};

}  // namespace cw
