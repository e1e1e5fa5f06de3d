// SPDX-License-Identifier: MIT
#include "domain/rules/visiting_order.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <string>
#include <tuple>

#include "domain/rules/geodesy.h"
#include "domain/rules/local_plane.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t mostWithRestarts = 150;

constexpr double radians(double degrees)
{
    return degrees * std::numbers::pi / 180.0;
}

// Stops by place, so that the order they came in leaves no trace.
std::vector<std::size_t> byPlace(std::span<const RoundStop> stops)
{
    std::vector<std::size_t> sorted(stops.size());
    std::iota(sorted.begin(), sorted.end(), std::size_t{0});
    const auto key = [&](std::size_t i) {
        return std::tuple(stops[i].place.latE7, stops[i].place.lonE7, stops[i].isInfested, i);
    };
    std::sort(sorted.begin(), sorted.end(), [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
    return sorted;
}

} // namespace

Metres roundDistance(GeoPoint a, GeoPoint b, RoundMetric metric)
{
    if (metric == RoundMetric::StraightLine) return courseBetween(a, b).distance;
    const double middle = (a.latitude() + b.latitude()) / 2.0;
    const EarthRadii radii = earthRadii(middle);
    const double east = radii.eastward.value() * std::cos(radians(middle))
        * radians(longitudeDifference(a.longitude(), b.longitude()));
    const double north = radii.northward.value() * radians(b.latitude() - a.latitude());
    return Metres{std::abs(east) + std::abs(north)};
}

Result<Round> visitingOrder(GeoPoint from, std::span<const RoundStop> stops, const RoundSettings& settings)
{
    if (stops.size() > mostRoundStops)
        return Error{ErrorCode::OutOfRange, {"stops", "0", std::to_string(mostRoundStops)}};
    const std::vector<std::size_t> sorted = byPlace(stops);
    DistanceTable distances(stops.size() + 1);
    std::vector<bool> isLast(stops.size() + 1, false);
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const RoundStop& stop = stops[sorted[i]];
        isLast[i + 1] = settings.infestedLast && stop.isInfested;
        distances.set(0, i + 1, roundDistance(from, stop.place, settings.metric).value());
        for (std::size_t j = 0; j < i; ++j)
            distances.set(
                j + 1, i + 1, roundDistance(stops[sorted[j]].place, stop.place, settings.metric).value());
    }
    PathSettings search{.end = settings.end, .restarts = settings.restarts, .seed = settings.seed};
    if (stops.size() > mostWithRestarts) search.restarts = 0;
    const FoundPath path = shortPath(distances, isLast, search);

    Round round{{}, Metres{path.length}, Metres{path.nearestLength}, path.isShortest};
    GeoPoint here = from;
    for (const std::size_t place : path.order) {
        const std::size_t stop = sorted[place - 1];
        round.legs.push_back({stop, roundDistance(here, stops[stop].place, settings.metric),
            courseBetween(here, stops[stop].place).bearing});
        here = stops[stop].place;
    }
    return round;
}

} // namespace duskrow::domain
