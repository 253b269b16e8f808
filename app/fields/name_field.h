#pragma once
#include <functional>
#include <vector>

#include "app/fields/input_field.h"

namespace cw {

/// A field for a name out of a list: it offers what fits while one types, by name and by what else a thing is
/// called, and knows what is meant by `resolve`.
class NameField final : public InputField {
 public:
  struct Choice {
    QString name;
    QString also;  ///< other names and a remark; searched too
  };
  /// The name as the list has it, or why there is none.
  using Resolve = std::function<Result<QString>(const std::string&, DecimalMark)>;

  NameField(const Words& words, const std::vector<Choice>& choices, Resolve resolve);

  std::optional<QString> understood() const override;
  QString problem() const override;

 private:
  Resolve m_resolve;
};

}  // namespace cw
