// SPDX-License-Identifier: MIT
#include "demo/valley.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "demo/names.h"

namespace duskrow::demo {

using namespace duskrow::domain;

namespace {

// Open prairie; the valley that the demo puts there is invented.
constexpr double middleLatitude = 50.93;
constexpr double middleLongitude = -107.72;
constexpr double kmPerDegree = 111.2;

constexpr std::size_t usualTraps = 40;
constexpr std::size_t others = 3; // keepers before the other growers

Spot homeIn(Dice& dice, const Valley& valley, bool inOutbreak)
{
    // The outbreak sits in the south-east corner.
    const double east = inOutbreak ? dice.between(0.55, 0.95) : dice.between(-0.95, 0.45);
    const double north = inOutbreak ? dice.between(-0.95, -0.4) : dice.between(-0.95, 0.95);
    return {east * valley.halfWidthKm, north * valley.halfHeightKm};
}

Keeper makeKeeper(Dice& dice, Instant at, std::uint64_t seed, std::size_t number, Role role)
{
    Keeper keeper;
    keeper.member.id = dice.id(at);
    keeper.member.name = personName(seed, number);
    keeper.member.role = role;
    return keeper;
}

void settleOthers(Valley& valley, Dice& dice, Instant at, std::uint64_t seed, std::size_t traps)
{
    while (valley.keeperOfTrap.size() < traps) {
        const std::size_t number = valley.keepers.size();
        Keeper keeper = makeKeeper(dice, at, seed, number, Role::Grower);
        keeper.inOutbreak = (number - others) % 6 == 1;
        keeper.home = homeIn(dice, valley, keeper.inOutbreak);
        const auto left = static_cast<std::int64_t>(traps - valley.keeperOfTrap.size());
        const std::int64_t own = std::min<std::int64_t>(left, dice.happens(0.4) ? 2 : 1);
        for (std::int64_t i = 0; i < own; ++i) valley.keeperOfTrap.push_back(number);
        valley.keepers.push_back(std::move(keeper));
    }
}

} // namespace

GeoPoint placeOf(Spot spot)
{
    const double latitude = middleLatitude + spot.northKm / kmPerDegree;
    const double alongParallel = kmPerDegree * std::cos(latitude * std::numbers::pi / 180.0);
    const double longitude = middleLongitude + spot.eastKm / alongParallel;
    return {static_cast<std::int32_t>(std::lround(latitude * 1e7)),
        static_cast<std::int32_t>(std::lround(longitude * 1e7))};
}

const District& Valley::districtAt(Spot spot) const
{
    const double east = spot.eastKm / halfWidthKm;
    const double north = spot.northKm / halfHeightKm;
    if (std::abs(east) < 0.35 && std::abs(north) < 0.45) return districts[2];
    if (north >= 0.0) return districts[east < 0.0 ? 0 : 3];
    return districts[east < 0.35 ? 1 : 4];
}

Valley makeValley(std::uint64_t seed, std::size_t traps, Instant firstDay)
{
    Dice dice(seed, 1, 0);
    Valley valley;
    const double wider =
        std::clamp(std::sqrt(static_cast<double>(traps) / static_cast<double>(usualTraps)), 1.0, 6.0);
    valley.halfWidthKm *= wider;
    valley.halfHeightKm *= wider;
    for (const std::string_view name : districtNames) {
        District district;
        district.id = dice.id(firstDay);
        district.name = name;
        valley.districts.push_back(std::move(district));
    }
    constexpr std::array roles{Role::Grower, Role::Agronomist, Role::Coordinator};
    for (std::size_t i = 0; i < others; ++i)
        valley.keepers.push_back(makeKeeper(dice, firstDay, seed, i, roles[i]));
    valley.keepers[Valley::grower].home = {0.3 * valley.halfWidthKm, -0.2 * valley.halfHeightKm};
    valley.keepers[Valley::agronomist].home = {-0.2 * valley.halfWidthKm, 0.1 * valley.halfHeightKm};
    valley.keepers[Valley::grower].typesOwnCounts = true;
    valley.keepers[Valley::agronomist].typesOwnCounts = true;
    for (std::size_t i = 0; i < traps && i < Valley::growersTraps + Valley::agronomistsTraps; ++i)
        valley.keeperOfTrap.push_back(i < Valley::growersTraps ? Valley::grower : Valley::agronomist);
    settleOthers(valley, dice, firstDay, seed, traps);
    return valley;
}

} // namespace duskrow::demo
