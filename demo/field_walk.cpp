// SPDX-License-Identifier: MIT
#include "demo/field_walk.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "domain/records/walk.h"

namespace duskrow::demo {

using namespace duskrow::domain;
using std::chrono::days;

namespace {

constexpr double catchToScout = 220; // moths over the season; people look from about here on
constexpr double mothsALarva = 190; // of the trap, for one larva a frame: hit and miss all the same
constexpr double clumping = 1.1; // k of the frames
constexpr std::array<int, 4> stages{69, 71, 75, 79};

Instant momentOf(LocalDay day, int minute)
{
    return Instant{
        std::chrono::sys_days{day.time_since_epoch()} + std::chrono::minutes{minute} - valleyOffset};
}

// Two thirds of a field's larvae are of the middle size in early August.
std::string bySize(std::int64_t larvae, Dice& dice)
{
    std::array<std::int64_t, 3> sizes{0, 0, 0};
    for (std::int64_t i = 0; i < larvae; ++i) {
        const double chance = dice.unit();
        ++sizes.at(chance < 0.15 ? 0 : chance < 0.8 ? 1 : 2);
    }
    return "small:" + std::to_string(sizes[0]) + " medium:" + std::to_string(sizes[1])
        + " large:" + std::to_string(sizes[2]);
}

struct Walker {
    const Common& common;
    const Site& site;
    Uuid author;
    std::vector<Entry> entries = {};

    template <typename R>
    void enter(LocalDay day, int minute, const R& record)
    {
        if (day <= common.today) entries.push_back({day, minute, author, creation(record, site.id)});
    }
};

// A zigzag of steps of some 55 m from the gate, roughly as people walk a field.
GeoPoint stopIn(const Spot& field, int stop)
{
    constexpr double metresADegree = 111'195.0;
    const double east = 60.0 + 45.0 * stop;
    const double north = 60.0 + (stop % 2 == 0 ? 0.0 : 42.0);
    const GeoPoint start = placeOf(field);
    const double across = metresADegree * std::cos(start.latitude() * 3.14159265358979 / 180.0);
    return {start.latE7 + static_cast<std::int32_t>(north / metresADegree * 1e7),
        start.lonE7 + static_cast<std::int32_t>(east / across * 1e7)};
}

} // namespace

std::vector<Entry> fieldWalk(const Story& story, const Common& common, const Site& site, Dice dice)
{
    if (story.wholeCatch < catchToScout || !dice.happens(0.6)) return {};
    Walker walker{common, site, story.keeper->typesOwnCounts ? story.keeper->member.id : common.coordinator};
    const LocalDay day = dayOf(story.year, 7, 29) + days{dice.whole(0, 9)};
    int minute = static_cast<int>(dice.whole(7 * 60, 10 * 60));
    Walk walk;
    walk.id = dice.id(momentOf(day, minute));
    walk.site = site.id;
    walk.season = story.season;
    walk.pest = common.pest;
    walk.protocolVersion = common.protocolVersion;
    walk.day = day;
    walk.atMs = toMs(momentOf(day, minute));
    walk.offsetMin = static_cast<int>(valleyOffset.count());
    walk.stageBbch = dice.oneOf(stages);
    walk.frameCm2 = 2500;
    walk.finished = true;
    walker.enter(day, minute, walk);

    // A field may hold a third or three times what its trap would make one think.
    const double mean = story.wholeCatch / mothsALarva * std::exp(dice.normal(0.0, 0.55));
    const auto frames = dice.whole(6, 14);
    for (int stop = 1; stop <= frames; ++stop) {
        minute += 4;
        Frame frame;
        frame.id = dice.id(momentOf(day, minute));
        frame.walk = walk.id;
        frame.day = day;
        frame.atMs = toMs(momentOf(day, minute));
        frame.offsetMin = walk.offsetMin;
        frame.stop = stop;
        const GeoPoint place = stopIn(story.spot, stop);
        frame.latE7 = place.latE7;
        frame.lonE7 = place.lonE7;
        frame.accuracy = Millimetres{dice.whole(3000, 7000)};
        frame.larvae = Larvae{dice.clumped(mean, clumping)};
        frame.bySize = bySize(frame.larvae->value(), dice);
        frame.sick = Larvae{dice.poisson(0.06 * mean)};
        frame.podsSeen = 20;
        frame.podsDamaged = std::min<std::int64_t>(20, dice.poisson(0.12 * mean));
        walker.enter(day, minute, frame);
    }

    Decision decision;
    decision.id = dice.id(momentOf(day, minute + 6));
    decision.walk = walk.id;
    decision.protocolVersion = common.protocolVersion;
    decision.day = day;
    decision.costSum = std::to_string(dice.whole(11, 15));
    decision.costUnit = "CAD/ac";
    decision.price = std::to_string(dice.whole(11, 15)) + ".50";
    decision.priceUnit = "CAD/bu";
    decision.labelDays = 7;
    decision.cuttingDay = day + days{dice.whole(12, 24)};
    walker.enter(day, minute + 6, decision);
    return std::move(walker.entries);
}

} // namespace duskrow::demo
