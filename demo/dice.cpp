// SPDX-License-Identifier: MIT
#include "demo/dice.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace duskrow::demo {

namespace {

std::uint64_t mixed(std::uint64_t value)
{
    value += 0x9E3779B97F4A7C15ULL;
    value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9ULL;
    value = (value ^ (value >> 27)) * 0x94D049BB133111EBULL;
    return value ^ (value >> 31);
}

} // namespace

Dice::Dice(std::uint64_t seed, std::uint64_t part, std::uint64_t number)
    : m_engine(mixed(mixed(mixed(seed) ^ part) ^ number))
{
}

double Dice::unit()
{
    return static_cast<double>(m_engine() >> 11) * 0x1.0p-53;
}

double Dice::between(double low, double high)
{
    return low + (high - low) * unit();
}

std::int64_t Dice::whole(std::int64_t low, std::int64_t high)
{
    const auto span = static_cast<double>(high - low + 1);
    return low + std::min(static_cast<std::int64_t>(unit() * span), high - low);
}

bool Dice::happens(double chance)
{
    return unit() < chance;
}

double Dice::normal(double mean, double deviation)
{
    const double radius = std::sqrt(-2.0 * std::log(1.0 - unit()));
    return mean + deviation * radius * std::cos(2.0 * std::numbers::pi * unit());
}

std::int64_t Dice::poisson(double mean)
{
    if (mean <= 0.0) return 0;
    if (mean > 40.0) return std::max<std::int64_t>(0, std::llround(normal(mean, std::sqrt(mean))));
    const double limit = std::exp(-mean);
    std::int64_t count = 0;
    for (double product = unit(); product > limit; product *= unit()) ++count;
    return count;
}

// Source  the squeeze method of Marsaglia and Tsang (from memory), for shapes of 1 or more
double Dice::gamma(double shape)
{
    const double d = shape - 1.0 / 3.0;
    const double c = 1.0 / std::sqrt(9.0 * d);
    while (true) {
        const double x = normal(0.0, 1.0);
        const double cubed = std::pow(1.0 + c * x, 3.0);
        if (cubed > 0.0 && std::log(1.0 - unit()) < 0.5 * x * x + d - d * cubed + d * std::log(cubed))
            return d * cubed;
    }
}

std::int64_t Dice::clumped(double mean, double k)
{
    if (mean <= 0.0) return 0;
    return poisson(mean * gamma(k) / k);
}

domain::Uuid Dice::id(domain::Instant at)
{
    domain::RandomBytes10 random{};
    for (auto& byte : random) byte = static_cast<std::uint8_t>(m_engine() & 0xFF);
    return domain::uuidFromTime(at, random);
}

} // namespace duskrow::demo
