// SPDX-License-Identifier: MIT
#include "domain/rules/fix_average.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <iterator>
#include <vector>

#include "domain/rules/local_plane.h"

namespace duskrow::domain {

namespace {

constexpr double furthestFromBest = 3.0;
// A receiver that claims less than a centimetre claims too much, and its weight would swallow the others.
constexpr double finestAccuracy = 0.01;
constexpr std::size_t settledFixes = 10;
constexpr std::chrono::seconds settledTime{30};
constexpr Metres settledAccuracy{5.0};

bool knowsAccuracy(const Fix& fix)
{
    return std::isfinite(fix.accuracy.value()) && fix.accuracy.value() > 0.0;
}

double accuracyOf(const Fix& fix)
{
    return std::max(fix.accuracy.value(), finestAccuracy);
}

double weightOf(const Fix& fix)
{
    return 1.0 / (accuracyOf(fix) * accuracyOf(fix));
}

std::vector<Fix> worthUsing(std::span<const Fix> fixes)
{
    std::vector<Fix> known;
    std::copy_if(fixes.begin(), fixes.end(), std::back_inserter(known), knowsAccuracy);
    if (known.empty()) return known;
    double best = accuracyOf(known.front());
    for (const Fix& fix : known) best = std::min(best, accuracyOf(fix));
    std::erase_if(known, [&](const Fix& fix) { return accuracyOf(fix) > furthestFromBest * best; });
    return known;
}

} // namespace

std::optional<FixAverage> averageFixes(std::span<const Fix> fixes)
{
    const std::vector<Fix> used = worthUsing(fixes);
    if (used.empty()) return std::nullopt;

    // The plane is linear in both angles, so its mean is the mean of the angles from one origin.
    const GeoPoint origin = used.front().place;
    double weights = 0.0;
    double north = 0.0;
    double east = 0.0;
    double best = accuracyOf(used.front());
    Instant first = used.front().at;
    Instant last = used.front().at;
    for (const Fix& fix : used) {
        const double weight = weightOf(fix);
        weights += weight;
        north += weight * (fix.place.latitude() - origin.latitude());
        east += weight * longitudeDifference(origin.longitude(), fix.place.longitude());
        best = std::min(best, accuracyOf(fix));
        first = std::min(first, fix.at);
        last = std::max(last, fix.at);
    }

    FixAverage average;
    average.latitude = origin.latitude() + north / weights;
    average.longitude = longitudeDifference(0.0, origin.longitude() + east / weights);
    average.place = toGeoPoint(average.latitude, average.longitude);
    double squares = 0.0;
    for (const Fix& fix : used) {
        const PlaneOffset offset = offsetFrom(fix.place, average.latitude, average.longitude);
        squares +=
            weightOf(fix) * (offset.eastMetres * offset.eastMetres + offset.northMetres * offset.northMetres);
    }
    average.spread = Metres{std::sqrt(squares / weights)};
    average.accuracy = used.size() == 1 ? Metres{best} : std::max(Metres{best / 2.0}, average.spread);
    average.used = used.size();
    average.leftOut = fixes.size() - used.size();
    average.duration = last - first;
    return average;
}

bool isSettled(const FixAverage& average)
{
    return average.used >= settledFixes && average.duration >= settledTime
        && average.accuracy <= settledAccuracy;
}

} // namespace duskrow::domain
