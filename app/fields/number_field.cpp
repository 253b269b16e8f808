#include "app/fields/number_field.h"

#include <charconv>

#include "core/units/decimal.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr std::size_t kLargestCount = 100000;

Result<std::size_t> wholeNumber(const std::string& word, const std::string& place) {
  std::size_t out = 0;
  const auto [stop, error] = std::from_chars(word.data(), word.data() + word.size(), out);
  if (error == std::errc() && stop == word.data() + word.size() && out <= kLargestCount) return out;
  return fail(ErrorCode::InvalidInput, place, word,
              word.empty() ? Message("nothing is written here")
                           : Message("“%1” is not a whole number", {shown(word)}),
              "write a count, such as 8");
}

}  // namespace

Result<double> NumberField::number() const {
  if (empty())
    return fail(ErrorCode::InvalidInput, fromQt(name()), "", "nothing is written here",
                "write a number, such as 12.5");
  return parseNumber(text(), numberMark(), true)
      .map([](const std::string& digits) { return numberOf(digits); })
      .map_error([this](Error error) { return error.place = fromQt(name()), error; });
}

Result<std::size_t> NumberField::count() const {
  return wholeNumber(text(), fromQt(name()));
}

void NumberField::setNumber(double number) {
  setText(toQt(significant(number, 9)));
}

std::vector<std::string> wordsIn(const std::string& text) {
  std::vector<std::string> out;
  std::string word;
  const auto end = [&] {
    if (!word.empty()) out.push_back(std::exchange(word, {}));
  };
  for (const char each : text) {
    if (each == ' ' || each == ',' || each == ';' || each == '\t')
      end();
    else
      word += each;
  }
  end();
  return out;
}

Result<std::vector<std::size_t>> wholeNumbers(const std::string& text, const std::string& place) {
  std::vector<std::size_t> out;
  for (const std::string& word : wordsIn(text)) {
    CW_TRY(number, wholeNumber(word, place));
    out.push_back(number);
  }
  return out;
}

}  // namespace cw
