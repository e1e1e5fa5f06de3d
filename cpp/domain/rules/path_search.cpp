// SPDX-License-Identifier: MIT
#include "domain/rules/path_search.h"

#include <algorithm>
#include <array>

#include "domain/rules/path_exact.h"

namespace duskrow::domain {

namespace {

constexpr std::size_t longestMoved = 3;
constexpr std::size_t mostExact = 16; // beyond that comparing every order takes seconds and much memory

// A part of the path whose places may change places with each other: before or after the last group begins.
struct Group {
    std::size_t first = 1;
    std::size_t last = 0; // included; below `first` when there is none

    [[nodiscard]] std::size_t size() const { return last + 1 - first; }
};

// Numbers that look random and are the same everywhere (splitmix64, public domain).
class Shaker {
public:
    explicit Shaker(std::uint64_t seed) : m_state(seed) { }

    std::size_t below(std::size_t count)
    {
        m_state += 0x9E3779B97F4A7C15U;
        std::uint64_t mixed = m_state;
        mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
        mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
        return static_cast<std::size_t>((mixed ^ (mixed >> 31U)) % count);
    }

private:
    std::uint64_t m_state;
};

// A path from the start to an end that costs nothing to reach (or is the start again), so that every place of
// the path has one before and one behind it.
class Path {
public:
    Path(const DistanceTable& withEnd, std::vector<std::size_t> places, std::array<Group, 2> groups)
        : m_distances(&withEnd), m_places(std::move(places)), m_groups(groups),
          m_least(1e-9 * (1.0 + length()))
    {
    }

    [[nodiscard]] double length() const
    {
        double sum = 0.0;
        for (std::size_t i = 1; i < m_places.size(); ++i) sum += between(i - 1, i);
        return sum;
    }
    [[nodiscard]] const std::vector<std::size_t>& places() const { return m_places; }

    void improve()
    {
        for (bool gains = true; gains;) {
            gains = false;
            for (const Group& group : m_groups) {
                gains = movePieces(group) || gains;
                gains = reverseParts(group) || gains;
            }
        }
    }

    // Two neighbouring parts of one group change places, which neither kind of move undoes at once.
    void shake(Shaker& shaker)
    {
        const bool isLarge = m_groups[0].size() >= 3;
        const bool isOtherLarge = m_groups[1].size() >= 3;
        if (!isLarge && !isOtherLarge) return;
        const std::size_t sum = m_groups[0].size() + m_groups[1].size();
        const bool takesOther = isOtherLarge && (!isLarge || shaker.below(sum) >= m_groups[0].size());
        const Group& group = m_groups[takesOther ? 1 : 0];
        std::array<std::size_t, 3> cuts{};
        do {
            for (std::size_t& cut : cuts) cut = group.first + shaker.below(group.size() + 1);
            std::sort(cuts.begin(), cuts.end());
        } while (cuts[0] == cuts[1] || cuts[1] == cuts[2]);
        std::rotate(at(cuts[0]), at(cuts[1]), at(cuts[2]));
    }

private:
    [[nodiscard]] double between(std::size_t i, std::size_t j) const
    {
        return m_distances->at(m_places[i], m_places[j]);
    }
    std::vector<std::size_t>::iterator at(std::size_t i)
    {
        return m_places.begin() + static_cast<std::ptrdiff_t>(i);
    }

    bool reverseParts(const Group& group)
    {
        bool gains = false;
        for (std::size_t i = group.first; i < group.last; ++i)
            for (std::size_t j = i + 1; j <= group.last; ++j) {
                const double before = between(i - 1, i) + between(j, j + 1);
                if (between(i - 1, j) + between(i, j + 1) >= before - m_least) continue;
                std::reverse(at(i), at(j + 1));
                gains = true;
            }
        return gains;
    }

    bool movePieces(const Group& group)
    {
        bool gains = false;
        for (std::size_t count = 1; count <= std::min(longestMoved, group.size()); ++count)
            for (std::size_t i = group.first; i + count - 1 <= group.last; ++i)
                gains = movePiece(group, i, count) || gains;
        return gains;
    }

    // Takes the piece that begins at i to the first gap of its group where the path gets shorter.
    bool movePiece(const Group& group, std::size_t i, std::size_t count)
    {
        const std::size_t j = i + count - 1;
        const double freed = between(i - 1, i) + between(j, j + 1) - between(i - 1, j + 1);
        for (std::size_t gap = group.first - 1; gap <= group.last; ++gap) {
            if (gap + 1 >= i && gap <= j) continue; // where it stands
            const double opened = between(gap, gap + 1);
            const double asIs = between(gap, i) + between(j, gap + 1) - opened;
            const double turned = between(gap, j) + between(i, gap + 1) - opened;
            if (std::min(asIs, turned) >= freed - m_least) continue;
            if (turned < asIs) std::reverse(at(i), at(j + 1));
            if (gap > j)
                std::rotate(at(i), at(j + 1), at(gap + 1));
            else
                std::rotate(at(gap + 1), at(i), at(j + 1));
            return true;
        }
        return false;
    }

    const DistanceTable* m_distances;
    std::vector<std::size_t> m_places;
    std::array<Group, 2> m_groups;
    double m_least; // a gain below this is rounding
};

DistanceTable withEnd(const DistanceTable& distances, PathEnd end)
{
    const std::size_t places = distances.places();
    DistanceTable wider(places + 1);
    for (std::size_t a = 0; a < places; ++a) {
        for (std::size_t b = a + 1; b < places; ++b) wider.set(a, b, distances.at(a, b));
        wider.set(a, places, end == PathEnd::AtStart ? distances.at(a, 0) : 0.0);
    }
    return wider;
}

// Start and end included.
std::vector<std::size_t> nearestNext(
    const DistanceTable& distances, const std::vector<std::size_t>& order, std::size_t firsts)
{
    std::vector<std::size_t> path{0};
    for (const auto& [from, to] : {std::pair(std::size_t{0}, firsts), std::pair(firsts, order.size())}) {
        std::vector<std::size_t> left(order.begin() + static_cast<std::ptrdiff_t>(from),
            order.begin() + static_cast<std::ptrdiff_t>(to));
        while (!left.empty()) {
            const auto nearest =
                std::min_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) {
                    return distances.at(path.back(), a) < distances.at(path.back(), b);
                });
            path.push_back(*nearest);
            left.erase(nearest);
        }
    }
    path.push_back(distances.places() - 1);
    return path;
}

} // namespace

FoundPath shortPath(
    const DistanceTable& distances, const std::vector<bool>& isLast, const PathSettings& settings)
{
    FoundPath found;
    if (distances.places() < 2) return {{}, 0.0, 0.0, true};
    const DistanceTable table = withEnd(distances, settings.end);
    std::vector<std::size_t> order;
    for (std::size_t place = 1; place < distances.places(); ++place) order.push_back(place);
    const auto border = std::stable_partition(
        order.begin(), order.end(), [&](std::size_t place) { return isLast.empty() || !isLast[place]; });
    const auto firsts = static_cast<std::size_t>(border - order.begin());
    const std::array groups{Group{1, firsts}, Group{firsts + 1, order.size()}};

    Path best(table, nearestNext(table, order, firsts), groups);
    found.nearestLength = best.length();
    if (order.size() <= std::min(settings.exactUpTo, mostExact)) {
        found.isShortest = true;
        std::vector<std::size_t> shortest{0};
        for (const std::size_t place : exactPath(table, order, firsts)) shortest.push_back(place);
        shortest.push_back(distances.places());
        best = Path(table, std::move(shortest), groups);
    } else {
        best.improve();
        Shaker shaker(settings.seed);
        for (std::size_t i = 0; i < settings.restarts; ++i) {
            Path shaken = best;
            shaken.shake(shaker);
            shaken.improve();
            if (shaken.length() < best.length()) best = std::move(shaken);
        }
    }
    found.length = best.length();
    found.order.assign(best.places().begin() + 1, best.places().end() - 1);
    return found;
}

} // namespace duskrow::domain
