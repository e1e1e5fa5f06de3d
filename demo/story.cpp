// SPDX-License-Identifier: MIT
#include "demo/story.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "demo/names.h"

namespace duskrow::demo {

using namespace duskrow::domain;

namespace {

// Several low years, then two or three bad ones; from the present season back.
constexpr std::array cycle{1.25, 1.0, 0.7, 0.5, 0.35, 0.4, 0.9, 1.4};

double wholeCatchOf(Dice& dice, const Keeper& keeper, const SeasonFrame& frame)
{
    const auto ago = static_cast<std::size_t>(frame.yearsAgo);
    if (keeper.inOutbreak && ago == 0) return dice.between(800.0, 1450.0);
    if (keeper.inOutbreak && ago == 1) return dice.between(650.0, 1050.0);
    const double level = 95.0 * cycle[ago % cycle.size()];
    return std::clamp(level * std::exp(dice.normal(0.0, 0.5)), 20.0, 270.0);
}

Spot spotOf(Dice& dice, const Keeper& keeper)
{
    // The crop rotates: another field near home each year. An agronomist's fields lie farther apart.
    const bool isAgronomist = keeper.member.role == Role::Agronomist;
    const double far = isAgronomist ? dice.between(1.0, 13.0) : dice.between(0.5, 3.0);
    const double around = dice.between(0.0, 6.283185307);
    return {keeper.home.eastKm + far * std::cos(around), keeper.home.northKm + far * std::sin(around)};
}

// Most traps meet with nothing; the rates are made up.
Mishaps usualMishaps(Dice& dice)
{
    Mishaps mishaps;
    const auto sometimes = [&](std::optional<int>& at, double chance) {
        if (dice.happens(chance)) at = static_cast<int>(dice.whole(1, 6));
    };
    sometimes(mishaps.fallenAt, 0.03);
    sometimes(mishaps.noAccessAt, 0.03);
    sometimes(mishaps.floodedAt, 0.01);
    sometimes(mishaps.unsureAt, 0.05);
    sometimes(mishaps.aliveAt, 0.03);
    sometimes(mishaps.sprayedAt, 0.08);
    sometimes(mishaps.lureChangedAt, 0.03);
    sometimes(mishaps.lostAt, 0.01);
    mishaps.neverRaised = dice.happens(0.15);
    return mishaps;
}

// The first trap from a number on that stands in the outbreak, or outside it.
std::size_t firstTrap(const Valley& valley, std::size_t from, bool inOutbreak)
{
    while (from < valley.keeperOfTrap.size()
        && valley.keepers[valley.keeperOfTrap[from]].inOutbreak != inOutbreak)
        ++from;
    return from;
}

// What the demo promises to show, on traps far enough apart to be met one by one.
void addPromised(Story& story, const Valley& valley, const SeasonFrame& frame)
{
    const std::size_t trap = story.number;
    const bool isTenfold = frame.yearsAgo == 0 && trap == firstTrap(valley, 17, false);
    if (frame.yearsAgo == 0) story.mishaps.badLure = trap == firstTrap(valley, 0, true);
    if (frame.yearsAgo > 1) return;
    Mishaps promised;
    switch (trap) {
    case 3:
        promised.unsureAt = 2;
        break;
    case 5:
        promised.lent = true;
        break;
    case 7:
        promised.lureChangedAt = 2;
        break;
    case 9:
        promised.noAccessAt = 2;
        break;
    case 16:
        promised.fallenAt = 2;
        break;
    case 21:
        promised.aliveAt = 2;
        break;
    default:
        if (!isTenfold) return;
        promised.tenfoldAt = 4;
    }
    promised.badLure = story.mishaps.badLure;
    story.mishaps = promised;
    story.setDay = seasonStart(frame.year) + std::chrono::days{1}; // in time, so that the visit is there
    story.countLag = 0;
    story.missesWeek = 0.0;
}

// The season of the grower whose phone is shown: one trap to count by the road, one that was forgotten for a
// week and stands too low, one that catches little. This week's counts are still to come.
void tellGrowers(Story& story, const SeasonFrame& frame)
{
    constexpr std::array catches{700.0, 230.0, 90.0};
    constexpr std::array<Spot, 3> offsets{Spot{0.4, 0.2}, Spot{2.6, -1.9}, Spot{-1.1, 1.4}};
    if (frame.yearsAgo > 0) return;
    const std::size_t at = story.number;
    const Spot home = story.keeper->home;
    story.spot = {home.eastKm + offsets[at].eastKm, home.northKm + offsets[at].northKm};
    story.siteName = growersSites[at];
    story.wholeCatch = catches[at];
    story.countLag = 0;
    story.missesWeek = 0.0;
    story.mishaps = {};
    const auto weekStart =
        frame.today - std::chrono::days{std::chrono::weekday{frame.today}.c_encoding()}; // Sunday
    story.notSeenSince = weekStart;
    if (at == 0) story.mishaps.correctedAt = 2;
    if (at == 1) {
        story.notSeenSince = weekStart - std::chrono::days{7};
        story.mishaps.neverRaised = true;
    }
}

// The Monday of the last full week of July: traps come down after that count.
LocalDay lastJulyCount(int year)
{
    const LocalDay last = dayOf(year, 7, 31);
    return last - (std::chrono::weekday{last} - std::chrono::Monday);
}

} // namespace

LocalDay seasonStart(int year)
{
    const LocalDay june = dayOf(year, 6, 1);
    const auto sinceSunday = std::chrono::weekday{june}.c_encoding();
    return june + std::chrono::days{(7 - sinceSunday) % 7};
}

Story storyOf(const Valley& valley, const SeasonFrame& frame, std::size_t trap)
{
    Dice dice(frame.seed, static_cast<std::uint64_t>(frame.year), 2 * trap);
    Story story;
    story.number = trap;
    story.year = frame.year;
    story.season = frame.season;
    story.keeper = &valley.keepers[valley.keeperOfTrap[trap]];
    story.siteName = siteName(frame.seed + static_cast<std::uint64_t>(frame.year), trap);
    story.spot = spotOf(dice, *story.keeper);
    story.wholeCatch = wholeCatchOf(dice, *story.keeper, frame);

    const LocalDay start = seasonStart(frame.year);
    const bool isLate = dice.happens(0.03);
    story.setDay = start + std::chrono::days{isLate ? dice.whole(14, 21) : dice.whole(-4, 3)};
    story.lastCountWeek = lastJulyCount(frame.year) + std::chrono::days{dice.happens(0.25) ? 7 : 0};
    constexpr std::array lags{0, 0, 0, 0, 0, 0, 1, 1, 2, -1};
    story.countLag = dice.oneOf(lags);
    story.missesWeek = dice.happens(0.1) ? 0.25 : 0.05;
    story.bees = dice.between(0.3, 3.5);
    story.crop = {
        dice.between(1000.0, 1300.0), dayOf(frame.year, 6, 28) + std::chrono::days{dice.whole(-4, 4)}};
    story.mishaps = usualMishaps(dice);
    addPromised(story, valley, frame);
    if (trap < Valley::growersTraps) tellGrowers(story, frame);
    story.district = valley.districtAt(story.spot).id;
    return story;
}

} // namespace duskrow::demo
