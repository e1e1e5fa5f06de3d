// SPDX-License-Identifier: MIT
#include "domain/rules/path_exact.h"

#include <limits>

namespace duskrow::domain {

std::vector<std::size_t> exactPath(
    const DistanceTable& distances, const std::vector<std::size_t>& order, std::size_t firsts)
{
    constexpr double never = std::numeric_limits<double>::infinity();
    const std::size_t count = order.size();
    if (count == 0) return {};
    const std::size_t sets = std::size_t{1} << count;
    const std::size_t allFirsts = (std::size_t{1} << firsts) - 1;
    const std::size_t end = distances.places() - 1;
    // The shortest way from the start through a set of places that ends at one of them, and where it came
    // from.
    std::vector<double> shortest(sets * count, never);
    std::vector<std::size_t> before(sets * count, count);
    const auto mayVisit = [&](std::size_t place, std::size_t done) {
        return place < firsts || (done & allFirsts) == allFirsts;
    };
    for (std::size_t place = 0; place < count; ++place)
        if (mayVisit(place, 0))
            shortest[(std::size_t{1} << place) * count + place] = distances.at(0, order[place]);
    for (std::size_t done = 1; done < sets; ++done)
        for (std::size_t last = 0; last < count; ++last) {
            const double soFar = shortest[done * count + last];
            if (soFar == never) continue;
            for (std::size_t next = 0; next < count; ++next) {
                const std::size_t bit = std::size_t{1} << next;
                if ((done & bit) != 0 || !mayVisit(next, done)) continue;
                const double length = soFar + distances.at(order[last], order[next]);
                if (length >= shortest[(done | bit) * count + next]) continue;
                shortest[(done | bit) * count + next] = length;
                before[(done | bit) * count + next] = last;
            }
        }
    std::size_t done = sets - 1;
    std::size_t last = 0;
    double best = never;
    for (std::size_t place = 0; place < count; ++place) {
        const double length = shortest[done * count + place] + distances.at(order[place], end);
        if (length >= best) continue;
        best = length;
        last = place;
    }
    std::vector<std::size_t> path(count);
    for (std::size_t i = count; i-- > 0;) {
        path[i] = order[last];
        const std::size_t previous = before[done * count + last];
        done &= ~(std::size_t{1} << last);
        last = previous;
    }
    return path;
}

} // namespace duskrow::domain
