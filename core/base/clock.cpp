#include "core/base/clock.h"

#include <fmt/format.h>

#include <ctime>

namespace cw {
namespace {

using namespace std::chrono;

bool digits(std::string_view text, std::size_t from, std::size_t count, int& out) {
  if (from + count > text.size()) return false;
  out = 0;
  for (std::size_t i = from; i < from + count; ++i) {
    if (text[i] < '0' || text[i] > '9') return false;
    out = out * 10 + (text[i] - '0');
  }
  return true;
}

bool readDate(std::string_view text, year_month_day& out) {
  int y = 0, m = 0, d = 0;
  if (!digits(text, 0, 4, y) || !digits(text, 5, 2, m) || !digits(text, 8, 2, d) || text[4] != '-' ||
      text[7] != '-')
    return false;
  out = year{y} / month{static_cast<unsigned>(m)} / day{static_cast<unsigned>(d)};
  return out.ok() && y >= 1970;
}

/// "Z" or "±hh:mm" from `at` to the end.
bool readOffset(std::string_view text, std::size_t at, minutes& out) {
  if (text.substr(at) == "Z") {
    out = minutes{0};
    return true;
  }
  int hour = 0, minute = 0;
  if (text.size() != at + 6 || (text[at] != '+' && text[at] != '-') || text[at + 3] != ':' ||
      !digits(text, at + 1, 2, hour) || !digits(text, at + 4, 2, minute) || hour > 23 || minute > 59)
    return false;
  out = minutes{(text[at] == '-' ? -1 : 1) * (hour * 60 + minute)};
  return true;
}

bool readMoment(std::string_view text, Moment& out) {
  year_month_day date;
  int hour = 0, minute = 0, second = 0;
  if (text.size() < 20 || !readDate(text.substr(0, 10), date) || text[10] != 'T' || text[13] != ':' ||
      text[16] != ':' || !digits(text, 11, 2, hour) || !digits(text, 14, 2, minute) ||
      !digits(text, 17, 2, second) || hour > 23 || minute > 59 || second > 59)
    return false;
  std::size_t at = 19;
  int fraction = 0;
  if (text[at] == '.') {
    std::size_t end = at + 1;
    while (end < text.size() && text[end] >= '0' && text[end] <= '9') ++end;
    if (end == at + 1 || end > at + 10) return false;
    for (std::size_t i = 0; i < 3; ++i)
      fraction = fraction * 10 + (at + 1 + i < end ? text[at + 1 + i] - '0' : 0);
    at = end;
  }
  if (at >= text.size() || !readOffset(text, at, out.offset)) return false;
  out.utc =
      sys_days{date} + hours{hour} + minutes{minute} + seconds{second} + milliseconds{fraction} - out.offset;
  return true;
}

}  // namespace

std::string rfc3339(const Moment& moment) {
  const auto local = moment.utc + moment.offset;
  const auto day = floor<days>(local);
  const year_month_day date{day};
  const hh_mm_ss time{local - day};
  const auto away = abs(moment.offset).count();
  return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}.{:03}{}{:02}:{:02}", static_cast<int>(date.year()),
                     static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                     time.hours().count(), time.minutes().count(), time.seconds().count(),
                     time.subseconds().count(), moment.offset.count() < 0 ? '-' : '+', away / 60, away % 60);
}

Result<Moment> parseRfc3339(std::string_view text) {
  Moment moment;
  if (readMoment(text, moment)) return moment;
  return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a time", {shown(text)}},
              "write date, time and offset as in 2026-03-04T14:05:06+01:00");
}

Result<year_month_day> parseDate(std::string_view text) {
  year_month_day date;
  if (text.size() == 10 && readDate(text, date)) return date;
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
