#pragma once
#include "app/fields/input_field.h"

namespace cw {

/// A field for a number whose unit stands in its label, or that has none.
class NumberField final : public InputField {
  Q_OBJECT

 public:
  using InputField::InputField;

  /// InvalidInput with the field's name as place.
  Result<double> number() const;
  /// The same for a whole number from 0 to 100 000.
  Result<std::size_t> count() const;
  void setNumber(double number);
};

/// Whole numbers parted by blanks, commas or semicolons. InvalidInput naming the word that is none.
Result<std::vector<std::size_t>> wholeNumbers(const std::string& text, const std::string& place);

/// Words parted by blanks, commas or semicolons.
std::vector<std::string> wordsIn(const std::string& text);

}  // namespace cw
