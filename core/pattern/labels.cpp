#include "core/pattern/labels.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace cw {
namespace {

std::string letters(std::size_t number) {
  std::string out;
  for (; number > 0; number = (number - 1) / 26)
    out.insert(out.begin(), static_cast<char>('A' + (number - 1) % 26));
  return out;
}

std::string clockTime(const Point& place) {
  constexpr long kMinutes = 12 * 60;
  const double turn = std::atan2(place.x.si(), place.y.si()) / (2 * kPi);
  const long minute = (std::lround(turn * kMinutes) + kMinutes) % kMinutes;
  const long hour = minute / 60 == 0 ? 12 : minute / 60;
  return minute % 60 == 0 ? std::to_string(hour) : fmt::format("{}:{:02}", hour, minute % 60);
}

Result<void> checkDistinct(const std::vector<std::string>& labels) {
  std::map<std::string, std::size_t> first;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    if (labels[i].empty())
      return fail(ErrorCode::OutOfRange, fmt::format("labels[{}]", i), "", "the label is empty",
                  "write what stands on the part");
    const auto [there, isNew] = first.emplace(labels[i], i);
    if (!isNew)
      return fail(ErrorCode::OutOfRange, "labels", labels[i],
                  {"positions %1 and %2 have one label, “%3”",
                   {std::to_string(there->second + 1), std::to_string(i + 1), labels[i]}},
                  "give every position a label of its own");
  }
  return {};
}

}  // namespace

Result<std::vector<std::string>> labelsFor(const Labels& labels, const std::vector<Point>& places) {
  std::vector<std::string> out;
  switch (labels.style) {
    case LabelStyle::Numbers:
      for (std::size_t i = 0; i < places.size(); ++i) out.push_back(std::to_string(i + 1));
      break;
    case LabelStyle::Letters:
      for (std::size_t i = 0; i < places.size(); ++i) out.push_back(letters(i + 1));
      break;
    case LabelStyle::Clock:
      for (const Point& place : places) out.push_back(clockTime(place));
      break;
    case LabelStyle::Own:
      out = labels.own;
      break;
  }
  if (out.size() != places.size())
    return fail(ErrorCode::OutOfRange, "labels", std::to_string(out.size()),
                {"%1 labels for %2 positions", {std::to_string(out.size()), std::to_string(places.size())}},
                "give one label for each position");
  CW_CHECK(checkDistinct(out));
  return out;
}

}  // namespace cw
