// SPDX-License-Identifier: MIT
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace duskrow::domain {

// Distances between places, the same both ways. Place 0 is the start.
class DistanceTable {
public:
    explicit DistanceTable(std::size_t places) : m_places(places), m_distances(places * places, 0.0) { }

    void set(std::size_t a, std::size_t b, double distance)
    {
        m_distances[a * m_places + b] = distance;
        m_distances[b * m_places + a] = distance;
    }
    [[nodiscard]] double at(std::size_t a, std::size_t b) const { return m_distances[a * m_places + b]; }
    [[nodiscard]] std::size_t places() const { return m_places; }

private:
    std::size_t m_places;
    std::vector<double> m_distances;
};

enum class PathEnd { Anywhere, AtStart };

struct PathSettings {
    PathEnd end = PathEnd::Anywhere;
    std::size_t exactUpTo = 12; // places besides the start, 16 at most; the work grows as 2^n n^2
    std::size_t restarts = 0; // of the local search from a shaken path
    std::uint64_t seed = 1; // of the shaking: the same seed, the same path
};

struct FoundPath {
    std::vector<std::size_t> order; // every place but the start, once
    double length = 0.0; // the way back included where it ends at the start
    double nearestLength = 0.0; // of always going to the nearest place next; never shorter
    bool isShortest = false; // proven by comparing every order
};

// A short way from the start through every place: the nearest place next, then reversing parts of the path
// (2-opt) and moving up to three places elsewhere, either way round (Or-opt), until neither gains. Ties go to
// the place of the lower number, so that the same table gives the same path.
//
// isLast  places to be left until all others are done; empty for none, else one entry for each place
// Source  2-opt and Or-opt: standard; from memory, Croes 1958 and Or 1976. Comparing every order: Held and
// Karp
//         1962, from memory.
FoundPath shortPath(
    const DistanceTable& distances, const std::vector<bool>& isLast = {}, const PathSettings& settings = {});

} // namespace duskrow::domain
