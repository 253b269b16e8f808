#pragma once
#include <QWidget>
#include <functional>
#include <optional>
#include <variant>

#include "core/pattern/shape.h"
#include "core/units/unit.h"

class QCheckBox;
class QComboBox;
class QVBoxLayout;

namespace cw {

class InputField;
class NumberField;

/// A layout's shape by its parameters. Free positions have none here: they are drawn or typed.
class ShapeForm final : public QWidget {
  Q_OBJECT

 public:
  explicit ShapeForm(QWidget* parent = nullptr);

  void present(const Shape& shape, const LengthUnit& unit);
  /// The shape as typed; nothing while a field cannot be read, which then says why.
  std::optional<Shape> shape();
  /// Says it at the field that the error's place names; false if none is named.
  bool refuse(const Error& error);

  /// A shape of that kind in usual sizes, to begin with.
  static Shape beginning(std::size_t kind);

 signals:
  void edited();
  void kindChosen(int kind);

 private:
  using Slot = std::variant<std::size_t*, Length*, Angle*>;
  struct Parameter {
    const char *name, *label;
    Slot (*slot)(Shape& shape);
  };
  struct Line {
    NumberField* field;
    Slot (*slot)(Shape& shape);
  };
  static const std::vector<Parameter>& parametersOf(std::size_t kind);

  void rebuild();
  void fill();
  void add(QWidget* widget);
  bool readCircles(ConcentricCircles& into);

  Shape m_shape;
  const LengthUnit* m_unit = nullptr;
  QComboBox* m_kind;
  QVBoxLayout* m_column;
  QWidget* m_body = nullptr;
  std::vector<Line> m_lines;
  InputField* m_circles = nullptr;
  QCheckBox* m_anticlockwise = nullptr;
};

}  // namespace cw
