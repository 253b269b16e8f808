#include "core/base/near_name.h"

#include <algorithm>
#include <numeric>

namespace cw {
namespace {

std::string keyOf(std::string_view text) {
  std::string out;
  for (const char c : text)
    if (c != ' ') out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return out;
}

/// Optimal string alignment distance.
std::size_t distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
  std::iota(last.begin(), last.end(), 0u);
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before = last;
    last = row;
  }
  return last[b.size()];
}

}  // namespace

std::vector<std::string> nearNames(std::string_view written, const std::vector<std::string_view>& known,
                                   std::size_t most) {
  const std::string wanted = keyOf(written).substr(0, 60);
  if (wanted.empty()) return {};
  std::vector<std::pair<std::size_t, std::string_view>> near;
  for (const std::string_view name : known) {
    const std::string candidate = keyOf(name);
    const std::size_t apart = candidate.starts_with(wanted) ? 1 : distance(wanted, candidate);
    if (apart <= std::max<std::size_t>(1, wanted.size() / 3)) near.emplace_back(apart, name);
  }
  std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> out;
  for (const auto& [apart, name] : near)
    if (out.size() < most && std::find(out.begin(), out.end(), name) == out.end()) out.emplace_back(name);
  return out;
}

std::string listed(const std::vector<std::string>& names, std::string_view joiner) {
  std::string out;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) out += i + 1 == names.size() ? " " + std::string(joiner) + " " : ", ";
    out += names[i];
  }
  return out;
}

std::string didYouMean(const std::vector<std::string>& names) {
  return names.empty() ? std::string() : "did you mean " + listed(names, "or");
}

}  // namespace cw
