// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "domain/rules/path_search.h"

namespace duskrow::domain {

// The shortest path by comparing every order (Held and Karp), for a handful of places; see shortPath.
//
// distances  with the end as one more place behind the others, reached last
// order      the places but start and end, those that may come before the last group standing first
// firsts     how many of them those are
std::vector<std::size_t> exactPath(
    const DistanceTable& distances, const std::vector<std::size_t>& order, std::size_t firsts);

} // namespace duskrow::domain
