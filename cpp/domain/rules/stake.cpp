// SPDX-License-Identifier: MIT
#include "domain/rules/stake.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace duskrow::domain {

namespace {

constexpr double furthestDay = 60.0;
constexpr std::int64_t leastClearance = 200;
constexpr std::int64_t step = 50;
// A kilometre: no crop and no stake is as high, and sums of such heights stay small.
constexpr std::int64_t heightLimit = 1'000'000;

std::int64_t bounded(Millimetres height)
{
    return std::clamp(height.value(), -heightLimit, heightLimit);
}

// The next whole number, unless the figure is a whole number but for the rounding of its division.
double ceiling(double figure)
{
    constexpr double rounding = 1e-9;
    return std::ceil(figure - rounding);
}

std::int64_t roundedUp(double height)
{
    return static_cast<std::int64_t>(ceiling(height / static_cast<double>(step))) * step;
}

// One height a day, in the order of days.
std::vector<CanopyHeight> byDay(std::span<const CanopyHeight> heights)
{
    std::vector<CanopyHeight> sorted(heights.begin(), heights.end());
    std::stable_sort(sorted.begin(), sorted.end(),
        [](const CanopyHeight& a, const CanopyHeight& b) { return a.day < b.day; });
    std::vector<CanopyHeight> days;
    for (const CanopyHeight& height : sorted) {
        if (!days.empty() && days.back().day == height.day)
            days.back() = height;
        else
            days.push_back(height);
    }
    return days;
}

} // namespace

Clearance clearanceOf(Millimetres entrance, Millimetres canopy)
{
    const Millimetres height{bounded(entrance) - bounded(canopy)};
    if (height.value() > 0) return {height, EntrancePosition::Above};
    if (height.value() < 0) return {height, EntrancePosition::Below};
    return {height, EntrancePosition::AtCanopy};
}

std::optional<MillimetresPerDay> canopyGrowth(std::span<const CanopyHeight> heights)
{
    const std::vector<CanopyHeight> days = byDay(heights);
    if (days.size() < 2) return std::nullopt;
    const CanopyHeight& before = days[days.size() - 2];
    const CanopyHeight& last = days.back();
    const auto grown = static_cast<double>(bounded(last.canopy) - bounded(before.canopy));
    return MillimetresPerDay{grown / static_cast<double>((last.day - before.day).count())};
}

std::optional<LocalDay> dayCropReaches(Millimetres entrance, std::span<const CanopyHeight> heights)
{
    const auto growth = canopyGrowth(heights);
    if (!growth || growth->value() <= 0.0) return std::nullopt;
    const CanopyHeight last = byDay(heights).back();
    const Clearance clearance = clearanceOf(entrance, last.canopy);
    if (clearance.position != EntrancePosition::Above) return std::nullopt;
    const double days = ceiling(static_cast<double>(clearance.height.value()) / growth->value());
    if (days > furthestDay) return std::nullopt;
    return last.day + std::chrono::days{static_cast<int>(days)};
}

std::optional<RaiseSuggestion> suggestRaise(Millimetres entrance, Millimetres canopy,
    std::optional<MillimetresPerDay> growth, Nights interval, StakeRange stake)
{
    const double grown = growth ? growth->value() * static_cast<double>(interval.value()) : 0.0;
    const double over =
        std::clamp(grown, static_cast<double>(leastClearance), static_cast<double>(heightLimit));
    const double asked = static_cast<double>(bounded(canopy)) + over;
    if (static_cast<double>(bounded(entrance)) >= asked) return std::nullopt;
    const std::int64_t lowest = bounded(stake.lowest);
    const std::int64_t highest = std::max(bounded(stake.highest), bounded(entrance));
    const std::int64_t target = std::max(roundedUp(asked), lowest);
    return RaiseSuggestion{Millimetres{std::min(target, highest)}, static_cast<double>(highest) < asked};
}

} // namespace duskrow::domain
