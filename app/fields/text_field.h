#pragma once
#include <functional>

#include "app/fields/input_field.h"

namespace cw {

/// A field for what is neither a name nor a single quantity, such as a tolerance: `check` says what is wrong
/// with it.
class TextField final : public InputField {
 public:
  using Check = std::function<Result<void>(const std::string&, DecimalMark)>;

  TextField(const Words& words, Check check) : InputField(words), m_check(std::move(check)) {}

  std::optional<QString> understood() const override {
    return problem().isEmpty() && numberMark() == DecimalMark::Point ? std::optional(toQt(text()))
           : problem().isEmpty()                                     ? std::optional(pointed())
                                                                     : std::nullopt;
  }
  QString problem() const override {
    if (empty()) return {};
    const auto checked = m_check(text(), numberMark());
    return checked ? QString() : worded(checked.error());
  }

 private:
  QString pointed() const { return toQt(text()).replace(QLatin1Char(','), QLatin1Char('.')); }

  Check m_check;
};

}  // namespace cw
