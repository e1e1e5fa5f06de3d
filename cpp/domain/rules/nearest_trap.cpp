// SPDX-License-Identifier: MIT
#include "domain/rules/nearest_trap.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "domain/rules/geodesy.h"
#include "domain/rules/sphere.h"

namespace duskrow::domain {

namespace {

// A sphere is wrong by at most 0.56 % against WGS84; the margin covers it both ways.
constexpr double sphereMargin = 1.012;

double errorOf(Metres accuracy)
{
    return std::isfinite(accuracy.value()) ? std::max(0.0, accuracy.value()) : 0.0;
}

double roughDistance(const Direction& origin, GeoPoint place)
{
    return distanceOverChord(std::sqrt(chordSquared(origin, directionOf(place)))).value();
}

struct Candidate {
    const TrapPlace* trap;
    double roughMetres;
    Course course;
};

// The ellipsoid costs some microseconds a trap, so the sphere first rules out those that cannot matter.
std::vector<Candidate> worthMeasuring(
    std::span<const TrapPlace> traps, GeoPoint here, double fixError, std::size_t atMost)
{
    const Direction origin = directionOf(here);
    std::vector<Candidate> candidates;
    candidates.reserve(traps.size());
    double largestError = 0.0;
    for (const TrapPlace& trap : traps) {
        candidates.push_back({&trap, roughDistance(origin, trap.place), {}});
        largestError = std::max(largestError, errorOf(trap.accuracy));
    }
    if (candidates.size() <= atMost) return candidates;

    const auto nearer = [](const Candidate& a, const Candidate& b) { return a.roughMetres < b.roughMetres; };
    const auto nth = candidates.begin() + static_cast<std::ptrdiff_t>(atMost);
    std::nth_element(candidates.begin(), nth, candidates.end(), nearer);
    const double nearest = std::min_element(candidates.begin(), nth + 1, nearer)->roughMetres;
    const double within = std::max(nth->roughMetres, nearest + fixError + 2.0 * largestError) * sphereMargin;
    std::erase_if(candidates, [&](const Candidate& candidate) { return candidate.roughMetres > within; });
    return candidates;
}

} // namespace

NearestTraps nearestTraps(
    std::span<const TrapPlace> traps, GeoPoint here, Metres accuracy, std::size_t atMost)
{
    NearestTraps nearest;
    if (traps.empty() || atMost == 0) return nearest;
    const double fixError = errorOf(accuracy);
    std::vector<Candidate> candidates = worthMeasuring(traps, here, fixError, atMost);
    for (Candidate& candidate : candidates) candidate.course = courseBetween(here, candidate.trap->place);
    std::sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
        return std::tie(a.course.distance, a.trap->id) < std::tie(b.course.distance, b.trap->id);
    });

    const Candidate& first = candidates.front();
    for (const Candidate& candidate : candidates) {
        const double error = std::hypot(fixError, errorOf(candidate.trap->accuracy));
        const double apart = candidate.course.distance.value() - first.course.distance.value();
        if (&candidate == &first || apart <= std::hypot(error, errorOf(first.trap->accuracy)))
            ++nearest.notToldApart;
        if (nearest.byDistance.size() == atMost) continue;
        TrapNearby nearby{candidate.trap->id, candidate.course.distance, candidate.course.bearing};
        if (nearby.distance.value() < 2.0 * error) nearby.bearing.reset();
        nearest.byDistance.push_back(nearby);
    }
    return nearest;
}

} // namespace duskrow::domain
