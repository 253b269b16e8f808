// Typed quantities: whatever the bytes, the answer is a value that reads back to the letter or one sentence.
#include <cmath>
#include <cstring>

#include "core/units/format.h"
#include "core/units/parse.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

using fuzz::checkRefusal;
using fuzz::require;

void checkNumber(std::string_view typed, DecimalMark mark, bool mayBeNegative) {
  const auto digits = parseNumber(typed, mark, mayBeNegative);
  if (!digits) return checkRefusal(digits.error());
  require(parseNumber(*digits, DecimalMark::Point, mayBeNegative) == *digits, "stored digits read back");
  require(std::isfinite(numberOf(*digits)), "digits are a finite number");
}

template <class Tag>
void checkQuantity(std::string_view typed, DecimalMark mark) {
  const auto stated = parse<Tag>(typed, mark);
  if (!stated) return checkRefusal(stated.error());
  require(statedFromCode<Tag>(stated->digits, stated->unit->code) == *stated, "the file form reads back");
  require(parse<Tag>(codeText(*stated)) == *stated, "the plain form reads back");
  require(parse<Tag>(text(*stated)) == *stated, "the screen form reads back");
}

void checkFormat(std::string_view bytes) {
  double value = 0;
  if (bytes.size() < sizeof value) return;
  std::memcpy(&value, bytes.data(), sizeof value);
  for (int digits = 1; digits <= 17; ++digits)
    require(!significant(value, digits).empty(), "a value has a text");
  if (!std::isfinite(value)) return;
  require(numberOf(significant(value, 17)) == value, "17 digits tell every double apart");
  const std::string hundredths = fixed(value, 2);
  require(hundredths[hundredths.size() - 3] == '.', "two decimals are two decimals");
}

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace cw;
  const std::string_view typed = fuzz::text(data, size);
  for (const DecimalMark mark : {DecimalMark::Point, DecimalMark::Comma}) {
    checkNumber(typed, mark, true);
    checkNumber(typed, mark, false);
    checkQuantity<TorqueTag>(typed, mark);
    checkQuantity<LengthTag>(typed, mark);
    checkQuantity<TemperatureTag>(typed, mark);
  }
  checkFormat(typed);
  return 0;
}
