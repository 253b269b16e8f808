#include "core/procedure/serials.h"

#include <algorithm>
#include <tuple>

#include "core/procedure/serial_number.h"

namespace cw {
namespace {

Result<void> checkEnd(std::string_view field, const std::string& end) {
  if (end.empty()) return {};
  const auto number = serialNumber(end);
  if (number && number->after.empty() && end.back() >= '0' && end.back() <= '9') return {};
  return fail(ErrorCode::InvalidInput, std::string(field), end, {"“%1” does not end in digits", {shown(end)}},
              "write a serial number as on the plate");
}

SerialFit judgeEnd(const std::string& end, const SerialNumber& serial, bool isLowest) {
  if (end.empty()) return SerialFit::Fits;
  const auto limit = serialNumber(end);
  if (!limit) return SerialFit::NotJudged;
  const std::string &wanted = limit->before, &found = serial.before;
  if (!wanted.empty() && wanted != found)
    return wanted.starts_with(found) || found.starts_with(wanted) ? SerialFit::NotJudged : SerialFit::Outside;
  if (serial.after != limit->after) return SerialFit::NotJudged;
  const auto order = compareDigits(serial.digits, limit->digits);
  return (isLowest ? order >= 0 : order <= 0) ? SerialFit::Fits : SerialFit::Outside;
}

SerialFit judgeRange(const SerialRange& range, const SerialNumber& serial) {
  const SerialFit low = judgeEnd(range.from, serial, true), high = judgeEnd(range.to, serial, false);
  for (const SerialFit worse : {SerialFit::NotJudged, SerialFit::Outside})
    if (low == worse || high == worse) return worse;
  return SerialFit::Fits;
}

SerialFit judgeAll(const std::vector<SerialRange>& ranges, const SerialNumber& serial) {
  SerialFit out = SerialFit::Outside;
  for (const SerialRange& range : ranges) {
    const SerialFit fit = judgeRange(range, serial);
    if (fit == SerialFit::Fits) return fit;
    if (fit == SerialFit::NotJudged) out = fit;
  }
  return out;
}

bool isForAll(const std::vector<SerialRange>& ranges) {
  return std::find(ranges.begin(), ranges.end(), SerialRange{}) != ranges.end();
}

using Limits = std::tuple<std::string, std::string, std::string>;

Limits limitsOf(const SerialRange& range) {
  const auto from = serialNumber(range.from), to = serialNumber(range.to);
  return {from ? from->before : to ? to->before : "", from ? from->digits : "", to ? to->digits : ""};
}

std::vector<Limits> limitsOf(const std::vector<SerialRange>& ranges) {
  std::vector<Limits> out;
  for (const SerialRange& range : ranges) out.push_back(limitsOf(range));
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

std::string textOf(const SerialRange& range) {
  if (range.from == range.to) return range.from.empty() ? "…" : range.from;
  return (range.from.empty() ? "…" : range.from) + "–" + (range.to.empty() ? "…" : range.to);
}

bool saysNothing(const std::string& text) {
  return text.find_first_not_of(' ') == text.npos;
}

SerialVerdict serialVerdict(SerialFit fit, std::initializer_list<std::string> wantedAndFound) {
  switch (fit) {
    case SerialFit::Fits:
      return {fit, {"This sheet is for serial numbers %1, and the machine's is %2.", wantedAndFound}};
    case SerialFit::Outside:
      return {fit, {"This sheet is for serial numbers %1; the machine's is %2.", wantedAndFound}};
    case SerialFit::NotJudged:
      break;
  }
  return {
      fit,
      {"This sheet is for serial numbers %1; whether %2 is among them cannot be judged.", wantedAndFound}};
}

}  // namespace

Result<void> checkSerialRange(const SerialRange& range) {
  if (range.from.empty() && range.to.empty())
    return fail(ErrorCode::InvalidInput, "", "", "this range has no end",
                "write its “from”, its “to”, or both");
  CW_CHECK(checkEnd("from", range.from));
  CW_CHECK(checkEnd("to", range.to));
  if (range.from.empty() || range.to.empty()) return {};
  const auto from = serialNumber(range.from), to = serialNumber(range.to);
  if (from->before != to->before)
    return fail(ErrorCode::InvalidInput, "to", range.to,
                {"“%1” and “%2” do not begin alike", {shown(range.from), shown(range.to)}},
                "write the same before the digits of both");
  if (compareDigits(from->digits, to->digits) > 0)
    return fail(ErrorCode::OutOfRange, "to", range.to,
                {"%1 is less than %2", {shown(range.to), shown(range.from)}}, "write the lower number first");
  return {};
}

bool sameSerials(const std::vector<SerialRange>& a, const std::vector<SerialRange>& b) {
  return limitsOf(a) == limitsOf(b);
}

std::string serialsText(const Sheet& sheet) {
  if (!sheet.serials.empty()) return sheet.serials;
  std::string out;
  for (const SerialRange& range : sheet.serialRanges) out += (out.empty() ? "" : ", ") + textOf(range);
  return out;
}

SerialVerdict serialFit(const Sheet& sheet, const std::string& serial) {
  const std::string wanted = serialsText(sheet);
  if (saysNothing(wanted)) return {SerialFit::Fits, "The sheet names no serial numbers, so it is for all."};
  const auto ranges =
      sheet.serialRanges.empty() ? serialRangesIn(sheet.serials) : std::optional(sheet.serialRanges);
  if (!ranges)
    return {SerialFit::NotJudged,
            {"Which serial numbers this sheet is for cannot be judged; in its words: %1.", {shown(wanted)}}};
  if (isForAll(*ranges)) return {SerialFit::Fits, "This sheet is for all serial numbers."};
  if (saysNothing(serial))
    return {SerialFit::NotJudged,
            {"This sheet is for serial numbers %1; the machine's is not known.", {shown(wanted)}}};
  const auto number = serialNumber(serial);
  return serialVerdict(number ? judgeAll(*ranges, *number) : SerialFit::NotJudged,
                       {shown(wanted), shown(serial)});
}

}  // namespace cw
