#pragma once
#include <optional>
#include <string>

#include "core/fastener/thread.h"

namespace cw {

/// A diameter's smallest and largest permitted size.
struct Limits {
  Length least;
  Length most;
  bool operator==(const Limits&) const = default;
};

/// Tabulated limits of size of one thread in one tolerance class. Classes 6g and 2A are the bolt's, 6H and
/// 2B the hole's, whose major diameter is not limited.
struct SizeLimits {
  std::string thread;          ///< designation
  std::string toleranceClass;  ///< "6g", "6H", "2B"
  std::optional<Limits> major;
  Limits pitch;
  std::optional<Limits> minor;
  Provenance provenance;
  std::string note;
};

}  // namespace cw
