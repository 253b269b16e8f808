#include "core/base/clock.h"

#include <fmt/format.h>

#include <ctime>
#include <optional>

namespace cw {
namespace {

using namespace std::chrono;

/// Reads fields of fixed width from the left. The first that is wrong makes `sound()` false for good.
class FieldReader {
 public:
  explicit FieldReader(std::string_view text) : m_rest(text) {}

  /// The next `width` digits, as a number of at most `most`.
  int number(std::size_t width, int most) {
    int value = 0;
    for (std::size_t i = 0; i < width; ++i) value = value * 10 + digit();
    m_sound = m_sound && value <= most;
    return value;
  }
  void expect(char c) { m_sound = take(c) && m_sound; }
  bool take(char c) {
    if (!m_rest.starts_with(c)) return false;
    m_rest.remove_prefix(1);
    return true;
  }
  bool atDigit() const { return !m_rest.empty() && m_rest[0] >= '0' && m_rest[0] <= '9'; }
  int digit() {
    m_sound = m_sound && atDigit();
    if (!m_sound) return 0;
    const int value = m_rest[0] - '0';
    m_rest.remove_prefix(1);
    return value;
  }
  bool sound() const { return m_sound; }
  bool done() const { return m_sound && m_rest.empty(); }

 private:
  std::string_view m_rest;
  bool m_sound = true;
};

year_month_day readDate(FieldReader& in) {
  const year y{in.number(4, 9999)};
  in.expect('-');
  const month m{static_cast<unsigned>(in.number(2, 12))};
  in.expect('-');
  return y / m / day{static_cast<unsigned>(in.number(2, 31))};
}

bool isKnownDate(year_month_day date) {
  return date.ok() && date.year() >= year{1970};
}

/// Nothing, or '.' and 1 to 9 digits, of which three count.
milliseconds readFraction(FieldReader& in) {
  if (!in.take('.')) return {};
  int value = 100 * in.digit();
  for (int place = 2, worth = 10; place <= 9 && in.atDigit(); ++place, worth /= 10)
    value += worth * in.digit();
  return milliseconds{value};
}

minutes readOffset(FieldReader& in) {
  if (in.take('Z')) return {};
  const int sign = in.take('-') ? -1 : 1;
  if (sign > 0) in.expect('+');
  const hours hour{in.number(2, 23)};
  in.expect(':');
  return sign * (hour + minutes{in.number(2, 59)});
}

std::optional<Moment> readMoment(std::string_view text) {
  FieldReader in(text);
  const year_month_day date = readDate(in);
  in.expect('T');
  const hours hour{in.number(2, 23)};
  in.expect(':');
  const minutes minute{in.number(2, 59)};
  in.expect(':');
  const seconds second{in.number(2, 59)};
  const milliseconds fraction = readFraction(in);
  const minutes offset = readOffset(in);
  if (!in.done() || !isKnownDate(date)) return std::nullopt;
  return Moment{sys_days{date} + hour + minute + second + fraction - offset, offset};
}

}  // namespace

std::string rfc3339(const Moment& moment) {
  const auto local = moment.utc + moment.offset;
  const auto today = floor<days>(local);
  const hh_mm_ss time{local - today};
  const auto away = abs(moment.offset).count();
  return fmt::format("{}T{:02}:{:02}:{:02}.{:03}{}{:02}:{:02}", isoDate(year_month_day{today}),
                     time.hours().count(), time.minutes().count(), time.seconds().count(),
                     time.subseconds().count(), moment.offset.count() < 0 ? '-' : '+', away / 60, away % 60);
}

Result<Moment> parseRfc3339(std::string_view text) {
  if (const auto moment = readMoment(text)) return *moment;
  return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a time", {shown(text)}},
              "write date, time and offset as in 2026-03-04T14:05:06+01:00");
}

Result<year_month_day> parseDate(std::string_view text) {
  FieldReader in(text);
  const year_month_day date = readDate(in);
  if (in.done() && isKnownDate(date)) return date;
  return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a date", {shown(text)}},
              "write year, month and day as in 2026-03-04");
}

std::string isoDate(year_month_day date) {
  return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                     static_cast<unsigned>(date.day()));
}

year_month_day localDate(const Moment& moment) {
  return year_month_day{floor<days>(moment.utc + moment.offset)};
}

Moment SystemClock::now() {
  Moment moment;
  moment.utc = time_point_cast<milliseconds>(system_clock::now());
  const std::time_t seconds = system_clock::to_time_t(moment.utc);
  std::tm local{};
  if (localtime_r(&seconds, &local) != nullptr) moment.offset = minutes{local.tm_gmtoff / 60};
  return moment;
}

}  // namespace cw
