#pragma once
#include <chrono>
#include <map>
#include <string>

#include "core/base/clock.h"
#include "core/base/id.h"

namespace cw {

/// Who gave name and PIN for which job in this process, and when they were last heard of. Lost when it ends:
/// after a restart everybody signs in again.
class Sessions {
 public:
  explicit Sessions(std::chrono::milliseconds idle) : m_idle(idle) {}

  /// Signed in, or acted, now.
  void renew(const Id& job, const std::string& sign, const Moment& now) { m_heard[{job, sign}] = now; }

  /// Signed in and heard of within the idle limit; in the middle of a pass the limit does not count.
  bool alive(const Id& job, const std::string& sign, const Moment& now, bool inPass) const {
    const auto heard = m_heard.find({job, sign});
    return heard != m_heard.end() && (inPass || std::chrono::abs(now.utc - heard->second.utc) <= m_idle);
  }

 private:
  std::chrono::milliseconds m_idle;
  std::map<std::pair<Id, std::string>, Moment> m_heard;
};

}  // namespace cw
