#include "core/procedure/spoken_place.h"

#include <algorithm>
#include <charconv>

namespace cw {
namespace {

struct ListName {
  std::string_view list, item;
};

constexpr ListName kItems[] = {{"sources", "source"},
                               {"parts", "part"},
                               {"fasteners", "fastener"},
                               {"specifications", "specification"},
                               {"joints", "joint"},
                               {"positions", "position"},
                               {"steps", "step"},
                               {"warnings", "warning"},
                               {"cautions", "caution"},
                               {"notes", "note"},
                               {"serial_ranges", "serial range"}};

std::string itemOf(std::string_view list) {
  const auto found = std::find_if(std::begin(kItems), std::end(kItems),
                                  [&](const ListName& each) { return each.list == list; });
  return std::string(found == std::end(kItems) ? list : found->item);
}

/// Indices count from 0 in files and from 1 among people; a position's label is a name.
std::string countOf(std::string_view list, std::string_view index) {
  std::size_t number = 0;
  const auto end = index.data() + index.size();
  if (list == "positions" || std::from_chars(index.data(), end, number).ptr != end) return std::string(index);
  return std::to_string(number + 1);
}

/// "steps[2]" as "step 3".
std::string spokenPart(std::string_view part) {
  const std::size_t open = part.find('[');
  if (open == part.npos || open == 0 || part.back() != ']') return std::string(part);
  const std::string_view list = part.substr(0, open);
  return itemOf(list) + " " + countOf(list, part.substr(open + 1, part.size() - open - 2));
}

}  // namespace

std::string spokenPlace(std::string_view place) {
  if (itemOf(place.substr(0, place.find('['))) == place.substr(0, place.find('['))) return std::string(place);
  std::string out;
  while (!place.empty()) {
    const std::size_t close = place.find("]."), point = place.find('.'), open = place.find('[');
    const std::size_t end = std::min(open < point && close != place.npos ? close + 1 : point, place.size());
    out += (out.empty() ? "" : ", ") + spokenPart(place.substr(0, end));
    place.remove_prefix(std::min(end + 1, place.size()));
  }
  return out;
}

}  // namespace cw
