#pragma once
#include <string_view>
#include <vector>

namespace cw {

/// The bytes of a text file of resources/ that was built in, by its path there
/// ("library/threads_metric.csv"). Empty if there is no such file. Defined in a file the build makes
/// (cmake/EmbedResources.cmake).
std::string_view resource(std::string_view path);

/// Paths of the built-in files whose path starts with `folder`, in alphabetical order.
std::vector<std::string_view> resourcesBelow(std::string_view folder);

}  // namespace cw
