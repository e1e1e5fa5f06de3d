// SPDX-License-Identifier: MIT
#include "domain/rules/neighbours.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "domain/rules/sphere.h"

namespace duskrow::domain {

namespace {

struct Placed {
    double along = 0.0; // the axis
    Direction direction;
    std::size_t at = 0;
};

double width(const std::vector<Direction>& directions, double Direction::*axis)
{
    const auto [least, most] = std::minmax_element(directions.begin(), directions.end(),
        [&](const Direction& a, const Direction& b) { return a.*axis < b.*axis; });
    return (*most).*axis - (*least).*axis;
}

std::vector<Placed> sortedAlongTheWidest(std::span<const GeoPoint> places)
{
    std::vector<Direction> directions;
    directions.reserve(places.size());
    for (const GeoPoint& place : places) directions.push_back(directionOf(place));
    constexpr std::array axes{&Direction::x, &Direction::y, &Direction::z};
    const auto widest = *std::max_element(axes.begin(), axes.end(),
        [&](auto a, auto b) { return width(directions, a) < width(directions, b); });
    std::vector<Placed> sorted;
    sorted.reserve(places.size());
    for (std::size_t i = 0; i < places.size(); ++i)
        sorted.push_back({directions[i].*widest, directions[i], i});
    std::sort(sorted.begin(), sorted.end(),
        [](const Placed& a, const Placed& b) { return std::pair(a.along, a.at) < std::pair(b.along, b.at); });
    return sorted;
}

// The nearest so far, the furthest of them last.
class Nearest {
public:
    Nearest(std::size_t atMost, double furthest) : m_atMost(atMost), m_reach(furthest * furthest) { }

    // Nothing further along the axis can be nearer.
    [[nodiscard]] bool isBeyond(double along) const { return along * along > m_reach; }

    void offer(double squared, std::size_t at)
    {
        if (squared > m_reach) return;
        const std::pair found{squared, at};
        if (m_found.size() == m_atMost && m_found.back() < found) return;
        m_found.insert(std::upper_bound(m_found.begin(), m_found.end(), found), found);
        if (m_found.size() > m_atMost) m_found.pop_back();
        if (m_found.size() == m_atMost) m_reach = m_found.back().first;
    }

    [[nodiscard]] std::vector<Neighbour> take() const
    {
        std::vector<Neighbour> neighbours;
        neighbours.reserve(m_found.size());
        for (const auto& [squared, at] : m_found)
            neighbours.push_back({at, distanceOverChord(std::sqrt(squared))});
        return neighbours;
    }

private:
    std::size_t m_atMost;
    double m_reach; // squared
    std::vector<std::pair<double, std::size_t>> m_found;
};

} // namespace

std::vector<std::vector<Neighbour>> neighboursOf(
    std::span<const GeoPoint> places, std::size_t atMost, Metres within)
{
    std::vector<std::vector<Neighbour>> all(places.size());
    if (places.empty() || atMost == 0) return all;
    const std::vector<Placed> sorted = sortedAlongTheWidest(places);
    const double furthest = chordOf(within);
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const Placed& here = sorted[i];
        Nearest nearest(atMost, furthest);
        for (std::size_t j = i; j > 0 && !nearest.isBeyond(here.along - sorted[j - 1].along); --j)
            nearest.offer(chordSquared(here.direction, sorted[j - 1].direction), sorted[j - 1].at);
        for (std::size_t j = i + 1; j < sorted.size() && !nearest.isBeyond(sorted[j].along - here.along); ++j)
            nearest.offer(chordSquared(here.direction, sorted[j].direction), sorted[j].at);
        all[here.at] = nearest.take();
    }
    return all;
}

} // namespace duskrow::domain
