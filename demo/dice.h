// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>
#include <random>

#include "domain/base/time.h"
#include "domain/base/uuid.h"

namespace duskrow::demo {

// Chance that is the same on every machine: the distributions of the standard library are not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) { }
    // A stream of its own for a part of the whole, so that one part can grow without moving the others.
    Dice(std::uint64_t seed, std::uint64_t part, std::uint64_t number);

    double unit(); // 0 up to, not including, 1
    double between(double low, double high);
    std::int64_t whole(std::int64_t low, std::int64_t high); // both included
    bool happens(double chance);
    double normal(double mean, double deviation);
    std::int64_t poisson(double mean);
    // Counts that vary more than chance alone: the variance is mean + mean squared / k.
    std::int64_t clumped(double mean, double k);

    domain::Uuid id(domain::Instant at);

    template <typename List>
    const auto& oneOf(const List& list)
    {
        return list[static_cast<std::size_t>(whole(0, static_cast<std::int64_t>(list.size()) - 1))];
    }

private:
    double gamma(double shape);

    std::mt19937_64 m_engine;
};

} // namespace duskrow::demo
