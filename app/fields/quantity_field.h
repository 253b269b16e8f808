#pragma once
#include "app/fields/input_field.h"
#include "core/units/format.h"
#include "core/units/kind.h"

namespace cw {

/// A field for a number with its unit. A bare number is taken in the unit that was typed there last, and the
/// field says so; where no unit was ever typed it is refused.
template <class Tag>
class QuantityField final : public InputField {
 public:
  /// `usual`: the unit of a bare number until another is typed; nullptr for none.
  explicit QuantityField(const Words& words, const Unit<Tag>* usual = nullptr)
      : InputField(words), m_usual(usual) {}

  /// The error's place is the field's name. InvalidInput if it is empty.
  Result<Stated<Tag>> stated() const {
    const std::string typed = text();
    const Unit<Tag>* unit = rememberedUnit();
    if (unit != nullptr)
      if (const auto digits = parseNumber(typed, numberMark(), kKindOf<Tag>.mayBeNegative))
        return statedFromCode<Tag>(*digits, unit->code);
    return parse<Tag>(typed, numberMark()).map_error([this](Error error) {
      return error.place = fromQt(name()), error;
    });
  }
  /// Nothing if the field is empty.
  Result<std::optional<Stated<Tag>>> statedIfAny() const {
    if (empty()) return std::optional<Stated<Tag>>();
    return stated().map([](const Stated<Tag>& found) { return std::optional(found); });
  }

  std::optional<QString> understood() const override {
    if (empty()) return QString();
    const auto found = stated();
    if (!found) return std::nullopt;
    Settings().setFigureUnit(name(), toQt(found->unit->code));
    return toQt(cw::text(*found));
  }
  QString problem() const override {
    if (empty()) return {};
    const auto found = stated();
    return found ? QString() : worded(found.error());
  }
  QString remark() const override {
    const auto found = stated();
    const bool bare = found && parseNumber(text(), numberMark(), kKindOf<Tag>.mayBeNegative).has_value();
    return bare ? tr("Taken as %1, the unit last used here.").arg(toQt(cw::text(*found))) : QString();
  }

 private:
  const Unit<Tag>* rememberedUnit() const {
    const Unit<Tag>* last = unitWithCode<Tag>(fromQt(Settings().figureUnit(name())));
    return last != nullptr ? last : m_usual;
  }

  const Unit<Tag>* m_usual;
};

using TorqueField = QuantityField<TorqueTag>;
using LengthField = QuantityField<LengthTag>;

}  // namespace cw
