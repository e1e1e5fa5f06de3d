// SPDX-License-Identifier: MIT
#include "tool/commands.h"

#include <array>

namespace duskrow::tool {

namespace {

constexpr std::array commandTable{
    Command{"demo", "Make a store and fill it with an invented district", declareDemo},
    Command{"season", "What the traps of a season caught so far, and what it means", declareSeason},
    Command{"due", "What is due at which trap, and why", declareDue},
    Command{
        "region", "What the traps of each district caught, week by week, and between them", declareRegion},
    Command{"bulletin", "Publish a week of a region: page, table, map and archive, no field to be told",
        declareBulletin},
    Command{"flags", "Which records of a season to look at again, and why", declareFlags},
    Command{"round", "A suggestion for the order of the stops that are due", declareRound},
    Command{"degree-days", "The warmth of a table of daily temperatures, day by day", declareDegreeDays},
    Command{"flight", "Where a flight stands and where it goes, from counts, with its ranges", declareFlight},
    Command{
        "calendar", "What happens when at a site: flight, eggs, scouting, larvae and crop", declareCalendar},
    Command{"threshold", "The larvae per square metre at which control pays, worked out", declareThreshold},
    Command{"band", "The band of a whole season's catch, and what it means", declareBand},
    Command{"protocol", "Check a protocol file: what it says, or what is wrong with it", declareProtocol},
    Command{"frames", "How dense the larvae of a field are, from counted frames", declareFrames},
    Command{"plan-frames", "When a scouting walk may stop, and how often it errs", declarePlanFrames},
    Command{"export", "Write what a store holds as files for other programs", declareExport},
    Command{"import", "Take in counts of past years or other people from a table", declareImport},
    Command{
        "temperatures", "Take in daily temperatures of a weather station from a table", declareTemperatures},
    Command{
        "check", "Whether a store is sound: the file, the log and the tables folded from it", declareCheck},
    Command{"programme", "Begin a programme, invite, join, and see who takes part", declareProgramme},
    Command{"exchange", "Exchange records with others, by folder, hub or carried file", declareExchange},
    Command{"differences", "Where people differ, and what was kept aside", declareDifferences},
    Command{"settle", "Say what a difference comes to, as a coordinator", declareSettle},
};

} // namespace

std::span<const Command> commands()
{
    return commandTable;
}

} // namespace duskrow::tool
