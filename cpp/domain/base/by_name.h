// SPDX-License-Identifier: MIT
#pragma once

#include <boost/container/flat_map.hpp>
#include <functional>
#include <string>

namespace duskrow::domain {

// In the order of the names, and in one piece of memory: records have a dozen fields, and there are many.
template <typename T>
using ByName = boost::container::flat_map<std::string, T, std::less<>>;

} // namespace duskrow::domain
