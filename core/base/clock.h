#pragma once
#include <chrono>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace cw {

/// A point in time with the local offset in force there. Order and equality are by UTC alone.
struct Moment {
  std::chrono::sys_time<std::chrono::milliseconds> utc{};
  std::chrono::minutes offset{0};

  bool operator==(const Moment& other) const { return utc == other.utc; }
  auto operator<=>(const Moment& other) const { return utc <=> other.utc; }
};

/// RFC 3339 with milliseconds and a numeric offset: "2026-03-04T14:05:06.007+01:00" ("+00:00" for UTC).
std::string rfc3339(const Moment& moment);

/// Reads RFC 3339: upper case T and Z, seconds wanted, fraction of 1 to 9 digits cut to milliseconds,
/// years 1970 to 9999. InvalidInput otherwise (also for 31 February or an offset beyond 23:59).
Result<Moment> parseRfc3339(std::string_view text);

/// Reads a calendar date "YYYY-MM-DD" (ISO 8601). InvalidInput otherwise.
Result<std::chrono::year_month_day> parseDate(std::string_view text);
std::string isoDate(std::chrono::year_month_day date);

/// The local calendar date at that moment.
std::chrono::year_month_day localDate(const Moment& moment);

/// Where the time comes from; tests and the demo bring their own.
class Clock {
 public:
  virtual ~Clock() = default;
  virtual Moment now() = 0;
};

/// System time, UTC offset from localtime_r.
class SystemClock final : public Clock {
 public:
  Moment now() override;
};

/// Stands still until told; each `now()` then moves on by `step`.
class SteppingClock final : public Clock {
 public:
  SteppingClock(Moment start, std::chrono::milliseconds step) : m_now(start), m_step(step) {}
  Moment now() override {
    const Moment answer = m_now;
    m_now.utc += m_step;
    return answer;
  }
  void set(Moment moment) { m_now = moment; }

 private:
  Moment m_now;
  std::chrono::milliseconds m_step;
};

}  // namespace cw
