// SPDX-License-Identifier: MIT
#include "domain/protocol/section_readers.h"

namespace duskrow::domain {

namespace {

using std::chrono::days;
using std::chrono::month_day;

std::vector<ProtocolCrop> readCrops(Reading& reading, const LocatedJson& file)
{
    std::vector<ProtocolCrop> crops;
    for (const LocatedJson& node : reading.identified(file, "crops")) {
        ProtocolCrop crop{reading.id(node), reading.localText(node, "name"), {}};
        for (const LocatedJson& stage : reading.identifiedIfAny(node, "canopy_heights"))
            crop.canopyHeights.push_back({reading.id(stage), reading.localText(stage, "name"),
                reading.rangeOf<Millimetres>(stage, "from_mm", "to_mm")});
        if (node.find("growth_scale")) crop.growthScale = reading.localText(node, "growth_scale");
        for (const LocatedJson& stage : reading.identifiedIfAny(node, "growth_stages"))
            crop.growthStages.push_back({reading.id(stage), reading.value<BbchStage>(stage, "bbch"),
                reading.localText(stage, "name"), reading.sourceOf(stage)});
        crops.push_back(std::move(crop));
    }
    return crops;
}

std::vector<TrapType> readTrapTypes(Reading& reading, const LocatedJson& file)
{
    std::vector<TrapType> types;
    for (const LocatedJson& node : reading.identified(file, "trap_types"))
        types.push_back({reading.id(node), reading.localText(node, "name"),
            reading.value<TrapShape>(node, "shape"), reading.boolean(node, "killing_strip"),
            reading.boolean(node, "sticky_liner"), reading.remarkIfAny(node, "remark")});
    return types;
}

LureAdvice readLure(Reading& reading, const LocatedJson& node)
{
    LureAdvice lure;
    lure.catches = reading.figure<CatchOf>(node, "catches");
    lure.perTrap = reading.figureIfAny<int>(node, "per_trap");
    lure.life = reading.range<days>(node, "life_days");
    lure.handling = reading.statementsIfAny(node, "handling");
    lure.storage = reading.statementsIfAny(node, "storage");
    if (!node.find("shelf_life")) return lure;
    for (const LocatedJson& shelf : reading.list(node, "shelf_life").items)
        lure.shelfLife.push_back({reading.value<DegreesCelsius>(shelf, "at_most_c"),
            reading.value<std::chrono::months>(shelf, "months"), reading.sourceOf(shelf),
            reading.noteOf(shelf)});
    return lure;
}

HeightAdvice readHeight(Reading& reading, const LocatedJson& node)
{
    return {reading.figure<HeightRule>(node, "rule"), reading.figure<Millimetres>(node, "entrance_mm"),
        reading.range<Millimetres>(node, "stake_mm"),
        reading.figureIfAny<Millimetres>(node, "least_clearance_mm")};
}

std::vector<PlacementAdvice> readPlacement(Reading& reading, const LocatedJson& file)
{
    std::vector<PlacementAdvice> placement;
    for (const LocatedJson& node : reading.identifiedIfAny(file, "placement"))
        placement.push_back({reading.id(node), reading.value<PlacementRelation>(node, "relation"),
            reading.figure<Metres>(node, "distance_m"), reading.localText(node, "text")});
    return placement;
}

SeasonPlan readSeason(Reading& reading, const LocatedJson& node)
{
    SeasonPlan season;
    season.startsOnOrAfter = reading.figure<month_day>(node, "starts_on_or_after");
    season.weekStarts = reading.figure<std::chrono::weekday>(node, "week_starts");
    season.weeks = reading.figure<std::chrono::weeks>(node, "weeks");
    season.setUp = reading.rangeIfAny<month_day>(node, "set_up");
    season.firstCount = reading.rangeIfAny<month_day>(node, "first_count");
    season.takeDown = reading.rangeIfAny<month_day>(node, "take_down");
    season.tooLateFrom = reading.figureIfAny<month_day>(node, "too_late_from");
    season.firstMothsAfter = reading.rangeIfAny<days>(node, "first_moths_after_days");
    season.visitInterval = reading.figure<days>(node, "visit_interval_days");
    season.usualPeak = reading.rangeIfAny<month_day>(node, "usual_peak");
    if (season.weeks.value == std::chrono::weeks{0})
        reading.refuse(node, "weeks", "a season lasts a week or more");
    if (season.visitInterval.value == days{0})
        reading.refuse(node, "visit_interval_days", "visits are a day apart or more");
    return season;
}

} // namespace

void readTrapping(Reading& reading, const LocatedJson& file, Protocol& protocol)
{
    protocol.crops = readCrops(reading, file);
    if (protocol.crops.empty()) reading.refuse(file, "crops", "a protocol names at least one crop");
    protocol.otherHosts = reading.remarkIfAny(file, "other_hosts");
    protocol.trapTypes = readTrapTypes(reading, file);
    if (protocol.trapTypes.empty())
        reading.refuse(file, "trap_types", "a protocol names at least one trap type");
    protocol.trapsPerField = reading.figureIfAny<int>(file, "traps_per_field");
    if (file.find("lure")) protocol.lure = readLure(reading, reading.object(file, "lure"));
    if (file.find("killing_strip")) {
        const LocatedJson& strip = reading.object(file, "killing_strip");
        protocol.killingStrip =
            StripAdvice{reading.range<days>(strip, "life_days"), reading.statementsIfAny(strip, "handling")};
    }
    if (file.find("height")) protocol.height = readHeight(reading, reading.object(file, "height"));
    protocol.placement = readPlacement(reading, file);
    protocol.season = readSeason(reading, reading.object(file, "season"));
}

} // namespace duskrow::domain
